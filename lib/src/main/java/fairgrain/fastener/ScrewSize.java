package fairgrain.fastener;

import fairgrain.finding.Evidence;

/**
 * A screw as the formulas see it.
 *
 * @param name as makers call it
 * @param diameter D, nominal [m]
 * @param root D_r, at the bottom of the thread [m]
 * @param head across the head [m]
 * @param bendingYield of its steel [Pa]
 * @param threadShare part of its length that is threaded [-]
 */
public record ScrewSize(
        String name,
        double diameter,
        double root,
        double head,
        double bendingYield,
        double threadShare,
        Evidence evidence) {}
