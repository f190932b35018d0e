/** How much wood changes in size with its moisture: the printed equations, in SI doubles. */
@NullMarked
package fairgrain.movement;

import org.jspecify.annotations.NullMarked;
