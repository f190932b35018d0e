/** Where the wood lay and where it will live: everything that yields the moisture of the day of cutting and of the two ends of the year. */
@NullMarked
package fairgrain.place;

import org.jspecify.annotations.NullMarked;
