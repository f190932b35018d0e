/**
 * What one screw holds, and how a pull and a weight are shared between screws, rows and studs: textbook mechanics, SI
 * doubles in and out, no verdicts.
 */
@NullMarked
package fairgrain.fastener;

import org.jspecify.annotations.NullMarked;
