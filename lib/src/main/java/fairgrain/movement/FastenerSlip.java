package fairgrain.movement;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * What two fixings that give a little take off the strain between them.
 *
 * <p>ε′ = max(0, ε − 2 u / W), and so W = 2 u / (ε − ε<sub>y</sub>) is the width at which ε<sub>y</sub> is left.
 *
 * <p><b>Source</b> {@code own}, two outermost fixings that slip: geometry.
 *
 * <p><b>Holds for</b> the outermost fixings of a row, each giving u towards the middle. A screw tight in its hole gives by crushing the
 * wood beside it, one in a wider round hole by half the difference of the diameters.
 */
public final class FastenerSlip {
    public static final Citation SOURCE = Citation.of("own", "two outermost fixings that slip", Basis.DERIVED);

    /** How far a tight screw gives. */
    public static final Citation TIGHT_SCREW = Citation.of("own", "a tight screw gives 0.5 mm", Basis.JUDGEMENT);

    /** Of a tight screw, in millimetres. */
    public static final double TIGHT_SCREW_MM = 0.5;

    private FastenerSlip() {}

    /**
     * Strain that is left in the wood.
     *
     * @param strain ε, between the parts if nothing held them [ratio]
     * @param width W, between the outermost fixings [m]
     * @param slip u, of each fixing [m]
     * @return ε′ [ratio]
     */
    public static double strainLeft(double strain, double width, double slip) {
        double e = Require.between("strain", strain, 0, 0.5, "(a ratio)");
        double w = Require.between("width between the outermost fixings", width, 0.001, 6, "m");
        double u = Require.between("slip of a fixing", slip, 0, 0.02, "m");
        return Math.max(0, e - 2 * u / w);
    }

    /**
     * The width at which so much strain is left; without end where the strain is no more than that.
     *
     * @param strain ε, between the parts if nothing held them [ratio]
     * @param allowed ε_y, that may be left [ratio]
     * @param slip u, of each fixing [m]
     * @return W [m]
     */
    public static double safeWidth(double strain, double allowed, double slip) {
        double e = Require.between("strain", strain, 0, 0.5, "(a ratio)");
        double y = Require.between("strain allowed", allowed, 0, 0.1, "(a ratio)");
        double u = Require.between("slip of a fixing", slip, 0, 0.02, "m");
        return e <= y ? Double.POSITIVE_INFINITY : 2 * u / (e - y);
    }

    /**
     * Slip of a screw in a wider round hole, set in its middle.
     *
     * @param hole diameter of the hole [m]
     * @param screw diameter of the screw [m]
     * @return u [m]
     */
    public static double ofHole(double hole, double screw) {
        double d = Require.between("screw diameter", screw, 0.001, 0.02, "m");
        double h = Require.between("hole diameter", hole, d, d + 0.04, "m");
        return (h - d) / 2;
    }
}
