/** Short programs that use the library by itself, one idea each: change the numbers at the top and run them again. */
@NullMarked
package fairgrain.examples;

import org.jspecify.annotations.NullMarked;
