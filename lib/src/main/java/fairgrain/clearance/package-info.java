/** Gaps: how wide a panel may be cut, how much room a board needs, what touches and what slips out over the year. */
@NullMarked
package fairgrain.clearance;

import org.jspecify.annotations.NullMarked;
