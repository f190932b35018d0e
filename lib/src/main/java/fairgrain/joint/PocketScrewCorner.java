package fairgrain.joint;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * Moment of a frame corner on two pocket screws, butt glue counted as nothing.
 *
 * <p>M = F cos 15° s, at most F cos 15° (s + e/2); the plug of rail wood under a head F ≤ 2 τ a d_h
 *
 * <p><b>Source</b> {@code own}, withdrawal of a slanting screw.
 *
 * <p><b>Holds for</b> screws at 15° to the face of the rail, their thread in the edge of the stile, side grain. No equation from
 * tests was found in print, and what makers of such screws say contradicts an independent test: so this is a bounded estimate,
 * and the finding says so.
 */
public final class PocketScrewCorner {
    public static final Citation SOURCE = Citation.of("own", "withdrawal of a slanting screw", Basis.JUDGEMENT);

    /** Between the screw and the face of the rail. [rad] */
    public static final double SLANT = Math.toRadians(15);

    private PocketScrewCorner() {}

    /**
     * With the safe arm.
     *
     * @param pull F, of one screw [N]
     * @param spacing s, from screw to screw along the width of the rail [m]
     * @return M [N·m]
     */
    public static double moment(double pull, double spacing) {
        return Sizes.force("pull of a screw", pull) * Math.cos(SLANT) * Sizes.length("spacing of the screws", spacing);
    }

    /**
     * With the longer arm: an upper value.
     *
     * @param pull F, of one screw [N]
     * @param spacing s, from screw to screw along the width of the rail [m]
     * @param toEdge e, from the outer screw to the edge of the rail [m]
     * @return M [N·m]
     */
    public static double mostMoment(double pull, double spacing, double toEdge) {
        return moment(pull, spacing)
                + Sizes.force("pull of a screw", pull)
                        * Math.cos(SLANT)
                        * Sizes.length("distance of a screw to the edge", toEdge)
                        / 2;
    }

    /**
     * Pull at which the head tears a plug out of the end of the rail.
     *
     * @param shear τ, of the rail along its grain [Pa]
     * @param wood a, from the floor of the pocket to the end of the rail [m]
     * @param head d_h, across the head [m]
     * @return F [N]
     */
    public static double plug(double shear, double wood, double head) {
        return 2
                * Sizes.stress("shear strength of the rail", shear)
                * Sizes.length("wood under the head", wood)
                * Sizes.length("head of the screw", head);
    }
}
