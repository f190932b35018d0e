/** Line drawings in millimetres of paper, each with words for whoever cannot see it, and how they are written as SVG. */
@NullMarked
package fairgrain.drawing;

import org.jspecify.annotations.NullMarked;
