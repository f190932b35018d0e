/** Reads the log of a room hygrometer, however long, into days and months, and says what was wrong in it. */
@NullMarked
package fairgrain.hygrometer;

import org.jspecify.annotations.NullMarked;
