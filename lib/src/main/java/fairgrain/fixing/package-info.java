/** How parts that move differently are fixed to each other: slots, glue across the grain, what being held does to wood, boards held flat. */
@NullMarked
package fairgrain.fixing;

import org.jspecify.annotations.NullMarked;
