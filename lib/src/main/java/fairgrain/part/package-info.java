/** The parts of a piece as a maker measures them, and the setting they are made for. */
@NullMarked
package fairgrain.part;

import org.jspecify.annotations.NullMarked;
