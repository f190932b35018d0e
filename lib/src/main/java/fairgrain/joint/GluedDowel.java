package fairgrain.joint;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * Pull on a glued dowel in one member, and the moment of two of them.
 *
 * <p>bond F = τ_b π D L, no more than f_t π D²/4; regression F = 1.190 D L^0.89 (0.95 S₁ + S₂), in N with D and L in mm and
 * strengths in MPa; two dowels M = F s, with the longer arm M = F (s + e/2)
 *
 * <p><b>Source</b> {@code podlena}, bond strengths of dowels 3.0 to 8.6 MPa. The regression: {@code eckelman1971}, form from memory.
 *
 * <p><b>Holds for</b> plain or grooved hardwood dowels 6 to 13 mm thick, PVA glue, side or end grain, L up to about 4 D. The bond
 * stress of 4.0 MPa is a choice below the middle of the tests, 3.0 for damp places. The regression is the best case only: its
 * tables for glue, fit and surface were not found, so all three are taken as 1.
 */
public final class GluedDowel {
    public static final Citation SOURCE = Citation.of("podlena", "bond strengths of dowels 3.0 to 8.6 MPa", Basis.READ);
    public static final Citation CHOICE_SOURCE = Citation.of("own", "4.0 MPa of bond, 3.0 in damp", Basis.JUDGEMENT);
    public static final Citation REGRESSION_SOURCE = Citation.of("eckelman1971", "form from memory", Basis.MEMORY);

    /** Bond stress that is taken. [Pa] */
    public static final double BOND = 4.0e6;
    /** The same in damp places, or where glue was wiped off dry. [Pa] */
    public static final double BOND_DAMP = 3.0e6;

    private static final double TENSION = 50e6; // Pa along the grain of a dowel; judgement, well below a sound beech
    private static final double REGRESSION = 1.190;

    private GluedDowel() {}

    /**
     * Pull by bond stress.
     *
     * @param bond τ_b [Pa]
     * @param diameter D [m]
     * @param depth L, in the member [m]
     * @return F [N]
     */
    public static double pull(double bond, double diameter, double depth) {
        double d = Sizes.length("diameter of the dowel", diameter);
        double l = Sizes.length("depth of the dowel", depth);
        return Math.min(Sizes.stress("bond stress", bond) * Math.PI * d * l, TENSION * Math.PI * d * d / 4);
    }

    /**
     * Best case, by the regression.
     *
     * @param member S₁, shear strength of the member [Pa]
     * @param dowel S₂, shear strength of the dowel [Pa]
     * @param diameter D [m]
     * @param depth L, in the member [m]
     * @return F [N]
     */
    public static double bestPull(double member, double dowel, double diameter, double depth) {
        double d = Sizes.length("diameter of the dowel", diameter) * 1000;
        double l = Sizes.length("depth of the dowel", depth) * 1000;
        double s1 = Sizes.stress("shear strength of the member", member) / 1e6;
        double s2 = Sizes.stress("shear strength of the dowel", dowel) / 1e6;
        return REGRESSION * d * Math.pow(l, 0.89) * (0.95 * s1 + s2);
    }

    /**
     * Moment of two dowels, the compression taken at the second one: the safe arm.
     *
     * @param pull F, of one dowel [N]
     * @param spacing s, from dowel to dowel along the width of the rail [m]
     * @return M [N·m]
     */
    public static double moment(double pull, double spacing) {
        return Sizes.force("pull of a dowel", pull) * Sizes.length("spacing of the dowels", spacing);
    }

    /**
     * The same with the compression halfway to the edge of the rail: what tests may reach.
     *
     * @param pull F, of one dowel [N]
     * @param spacing s, from dowel to dowel along the width of the rail [m]
     * @param toEdge e, from the outer dowel to the edge of the rail [m]
     * @return M [N·m]
     */
    public static double mostMoment(double pull, double spacing, double toEdge) {
        return Sizes.force("pull of a dowel", pull)
                * (Sizes.length("spacing of the dowels", spacing)
                        + Sizes.length("distance of a dowel to the edge", toEdge) / 2);
    }
}
