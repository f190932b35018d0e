/** How beams and plates bend, how hard they are stressed and how they go on sagging; all numbers are SI base units. */
@NullMarked
package fairgrain.bending;

import org.jspecify.annotations.NullMarked;
