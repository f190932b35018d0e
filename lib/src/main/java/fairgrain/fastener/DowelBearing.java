package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * Bearing strength of the wood or the steel beside a screw that is loaded sideways.
 *
 * <p>D &lt; 1/4 in: F = 16 600 G^1.84 in any direction. D ≥ 1/4 in: F∥ = 11 200 G, F⊥ = 6 100 G^1.45 / √D, between them
 * F = F∥ F⊥ / (F∥ sin²θ + F⊥ cos²θ); in psi with D in inches
 *
 * <p><b>Source</b> {@code nds2018}, Table 12.3.3 and equation 12.3-11. From memory; the values of the printed species
 * table are met. Steel: {@code nds2018}, notes to Table 12K.
 *
 * <p><b>Holds for</b> G on oven-dry mass and volume, and the nominal diameter D. The printed tables of fastener values
 * round F to the nearest 50 psi; {@link #roundedToFiftyPsi} does the same where a table is to be met. Left out:
 * particleboard and MDF.
 */
public final class DowelBearing {
    public static final Citation SOURCE = Citation.of("nds2018", "Table 12.3.3 and equation 12.3-11", Basis.MEMORY);
    public static final Citation STEEL_SOURCE = Citation.of("nds2018", "notes to Table 12K", Basis.MEMORY);

    /** From this diameter on the direction of the grain matters. [in] */
    static final double QUARTER_INCH = 0.25;

    private static final double SMALL_PSI = 16_600;
    private static final double ALONG_PSI = 11_200;
    private static final double ACROSS_PSI = 6_100;
    private static final double TABLE_STEP_PSI = 50;
    private static final double COLD_FORMED = 1.375;
    private static final double HOT_ROLLED = 1.5;

    private DowelBearing() {}

    /**
     * The strength for a screw of any size, loaded at an angle to the grain.
     *
     * @param specificGravity G, oven-dry mass on oven-dry volume [-]
     * @param diameter D, nominal [m]
     * @param angle θ, between load and grain; without effect below 1/4 in [rad]
     * @return F [Pa]
     */
    public static double wood(double specificGravity, double diameter, double angle) {
        if (isSmall(diameter)) {
            Ranges.angle("angle to the grain", angle);
            return small(specificGravity);
        }
        return atAngle(along(specificGravity), across(specificGravity, diameter), angle);
    }

    /**
     * The strength beside a screw under 1/4 in.
     *
     * @param specificGravity G, oven-dry mass on oven-dry volume [-]
     * @return F, in any direction [Pa]
     */
    public static double small(double specificGravity) {
        return SMALL_PSI * Math.pow(Ranges.gravity(specificGravity), 1.84) * InchPound.PA_PER_PSI;
    }

    /**
     * The strength along the grain beside a screw of 1/4 in or more.
     *
     * @param specificGravity G, oven-dry mass on oven-dry volume [-]
     * @return F∥ [Pa]
     */
    public static double along(double specificGravity) {
        return ALONG_PSI * Ranges.gravity(specificGravity) * InchPound.PA_PER_PSI;
    }

    /**
     * The strength across the grain beside a screw of 1/4 in or more.
     *
     * @param specificGravity G, oven-dry mass on oven-dry volume [-]
     * @param diameter D, nominal [m]
     * @return F⊥ [Pa]
     */
    public static double across(double specificGravity, double diameter) {
        double g = Ranges.gravity(specificGravity);
        double d = Ranges.diameter("screw diameter", diameter) / InchPound.METRES_PER_INCH;
        return ACROSS_PSI * Math.pow(g, 1.45) / Math.sqrt(d) * InchPound.PA_PER_PSI;
    }

    /**
     * The strength at an angle to the grain (Hankinson).
     *
     * @param along F∥ [Pa]
     * @param across F⊥ [Pa]
     * @param angle θ, between load and grain [rad]
     * @return F [Pa]
     */
    public static double atAngle(double along, double across, double angle) {
        double f0 = Ranges.strength("bearing strength along the grain", along);
        double f90 = Ranges.strength("bearing strength across the grain", across);
        double sin = Math.sin(Ranges.angle("angle to the grain", angle));
        double cos = Math.cos(angle);
        return f0 * f90 / (f0 * sin * sin + f90 * cos * cos);
    }

    /**
     * As the printed tables of fastener values take it.
     *
     * @param strength F [Pa]
     * @return F to the nearest 50 psi [Pa]
     */
    public static double roundedToFiftyPsi(double strength) {
        double psi = Ranges.strength("bearing strength", strength) / InchPound.PA_PER_PSI;
        return Math.round(psi / TABLE_STEP_PSI) * TABLE_STEP_PSI * InchPound.PA_PER_PSI;
    }

    /**
     * Cold-formed sheet, such as a steel stud: 1.375 F_u.
     *
     * @param tensileStrength F_u [Pa]
     * @return F [Pa]
     */
    public static double coldFormedSteel(double tensileStrength) {
        return COLD_FORMED * Ranges.strength("tensile strength of the steel", tensileStrength);
    }

    /**
     * Hot-rolled plate: 1.5 F_u.
     *
     * @param tensileStrength F_u [Pa]
     * @return F [Pa]
     */
    public static double hotRolledSteel(double tensileStrength) {
        return HOT_ROLLED * Ranges.strength("tensile strength of the steel", tensileStrength);
    }

    static boolean isSmall(double diameter) {
        return !InchPound.atLeast(Ranges.diameter("screw diameter", diameter), QUARTER_INCH);
    }
}
