package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * The divisor that turns a yield load into a reference value for ten years.
 *
 * <p>D &lt; 1/4 in: R_d = K_D. D ≥ 1/4 in: R_d = 4 K_θ (Im, Is), 3.6 K_θ (II), 3.2 K_θ (IIIm, IIIs, IV). D ≥ 1/4 in
 * with a root under 1/4 in: R_d = K_D K_θ. K_D = 2.2 up to 0.17 in, then 10 d + 0.5; K_θ = 1 + 0.25 θ/90°
 *
 * <p><b>Source</b> {@code nds2018}, Table 12.3.1B. From memory; borne out by every reproduced cell of the lateral
 * tables.
 *
 * <p><b>Holds for</b> D nominal and d the diameter used in the yield equations, which for wood and lag screws is the
 * root. θ is the largest angle between load and grain in either member: 90° for a horizontal rail on a stud. One worked
 * example of the code's publisher takes K_D from the nominal diameter instead; it is kept as a known exception.
 */
public final class ReductionTerm {
    public static final Citation SOURCE = Citation.of("nds2018", "Table 12.3.1B", Basis.MEMORY);

    private static final double SMALL_DIVISOR = 2.2;
    private static final double SMALL_LIMIT_IN = 0.17;

    private ReductionTerm() {}

    /**
     * R_d.
     *
     * @param nominalDiameter D [m]
     * @param yieldDiameter d, in the yield equations: the root of a screw [m]
     * @param angle θ, largest angle between load and grain in either member [rad]
     * @param mode way of yielding [-]
     * @return R_d [-]
     */
    public static double divisor(double nominalDiameter, double yieldDiameter, double angle, YieldMode mode) {
        double d = Ranges.diameter("diameter in the yield equations", yieldDiameter);
        Require.between("nominal diameter", nominalDiameter, d, 0.05, "m, no less than the root");
        double kTheta = angleFactor(angle);
        if (DowelBearing.isSmall(nominalDiameter)) {
            return diameterFactor(d);
        }
        if (DowelBearing.isSmall(d)) {
            return diameterFactor(d) * kTheta;
        }
        return mode.largeScrewDivisor() * kTheta;
    }

    /**
     * K_D.
     *
     * @param yieldDiameter d, under 1/4 in [m]
     * @return K_D [-]
     */
    public static double diameterFactor(double yieldDiameter) {
        double d = Require.between("diameter under a quarter inch", yieldDiameter, 0.001, 0.00635, "m");
        if (InchPound.atMost(d, SMALL_LIMIT_IN)) {
            return SMALL_DIVISOR;
        }
        return 10 * d / InchPound.METRES_PER_INCH + 0.5;
    }

    /**
     * K_θ.
     *
     * @param angle θ, largest angle between load and grain in either member [rad]
     * @return K_θ [-]
     */
    public static double angleFactor(double angle) {
        return 1 + 0.25 * Math.toDegrees(Ranges.angle("angle between load and grain", angle)) / 90;
    }
}
