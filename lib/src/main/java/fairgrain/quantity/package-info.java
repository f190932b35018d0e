/** Numbers with their units: value types, limits, and how a shop reads, rounds and writes them. Nothing here knows wood. */
@NullMarked
package fairgrain.quantity;

import org.jspecify.annotations.NullMarked;
