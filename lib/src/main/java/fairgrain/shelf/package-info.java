/** Shelves: how far one sags on the day and after years, and whether it is strong enough for what stands on it. */
@NullMarked
package fairgrain.shelf;

import org.jspecify.annotations.NullMarked;
