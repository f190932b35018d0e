/** Doors: their frames out of square, their hinges and the screws of those. */
@NullMarked
package fairgrain.door;

import org.jspecify.annotations.NullMarked;
