/** A whole piece: its parts, and the review that asks every question of it. */
@NullMarked
package fairgrain.design;

import org.jspecify.annotations.NullMarked;
