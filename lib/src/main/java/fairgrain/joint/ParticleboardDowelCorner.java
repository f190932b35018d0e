package fairgrain.joint;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Bending moment of a case corner in particleboard with one dowel.
 *
 * <p>closing M = 460.4 D^0.452 E^1.140; opening M = 614.6 D^0.591 E^1.180, in in·lbf with D and E in inches
 *
 * <p><b>Source</b> {@code zhang1993}, abstract. The unit of the moment was read as in·lbf.
 *
 * <p><b>Holds for</b> D 1/4 to 3/8 in, E 1/4 to 5/8 in in the face of the one board and 1 in or more in the edge of the other.
 */
public final class ParticleboardDowelCorner {
    public static final Citation SOURCE = Citation.of("zhang1993", "abstract", Basis.READ);

    private static final double METRES_PER_INCH = 0.0254;
    private static final double INCH_POUND = 4.4482216152605 * METRES_PER_INCH; // N·m

    private ParticleboardDowelCorner() {}

    /**
     * A load that closes the corner.
     *
     * @param diameter D, of the dowel [m]
     * @param embedment E, in the face of the board [m]
     * @return mean M [N·m]
     */
    public static double closing(double diameter, double embedment) {
        return 460.4 * Math.pow(inches(diameter), 0.452) * Math.pow(depth(embedment), 1.140) * INCH_POUND;
    }

    /**
     * A load that opens the corner.
     *
     * @param diameter D, of the dowel [m]
     * @param embedment E, in the face of the board [m]
     * @return mean M [N·m]
     */
    public static double opening(double diameter, double embedment) {
        return 614.6 * Math.pow(inches(diameter), 0.591) * Math.pow(depth(embedment), 1.180) * INCH_POUND;
    }

    private static double inches(double diameter) {
        return Require.between("diameter of the dowel", diameter, 0.0063, 0.0096, "m") / METRES_PER_INCH;
    }

    private static double depth(double embedment) {
        return Require.between("depth of the dowel in the face", embedment, 0.0063, 0.0159, "m") / METRES_PER_INCH;
    }
}
