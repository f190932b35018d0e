/** Hanging: what a cabinet weighs, how it pulls at its screws, and whether these screws hold in these studs. */
@NullMarked
package fairgrain.hanging;

import org.jspecify.annotations.NullMarked;
