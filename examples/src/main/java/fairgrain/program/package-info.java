/** The program: it only adapts files, arguments and the console to the library. */
@NullMarked
package fairgrain.program;

import org.jspecify.annotations.NullMarked;
