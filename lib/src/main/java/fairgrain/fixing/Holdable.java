package fairgrain.fixing;

import fairgrain.finding.Evidence;

/**
 * What a part stands across its grain while it is held from shrinking.
 *
 * @param elasticity across the grain [Pa]
 * @param limit the most tension that it may be under [Pa]
 */
record Holdable(double elasticity, double limit, Evidence evidence) {}
