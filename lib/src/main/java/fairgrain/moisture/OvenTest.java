package fairgrain.moisture;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Moisture content of an offcut from two weighings, before and after drying in an oven.
 *
 * <p>M = (m_wet − m_dry)/m_dry; its uncertainty u(M) = (u/m_dry) √(1 + (m_wet/m_dry)²)
 *
 * <p><b>Source</b> {@code gtr190}, equation 4-1, the definition of moisture content. The uncertainty is the usual rule
 * for two independent weighings.
 *
 * <p><b>Holds for</b> a piece of full cross-section, 25 mm along the grain, 500 mm or more from the end of the board
 * and free of knots, dried until it loses no more. Resinous woods lose more than water.
 */
public final class OvenTest {
    public static final Citation SOURCE = Citation.of("gtr190", "equation 4-1", Basis.MEMORY);
    public static final Citation UNCERTAINTY = Citation.of("own", "two independent weighings", Basis.DERIVED);

    private OvenTest() {}

    /**
     * Moisture content.
     *
     * @param wetMass m_wet, before drying [kg]
     * @param dryMass m_dry, after drying [kg]
     * @return M, fraction of the oven-dry mass [-]
     */
    public static double moisture(double wetMass, double dryMass) {
        double dry = Require.between("dry mass", dryMass, 1e-4, 100, "kg");
        // three times its dry mass is as wet as wood gets
        double wet = Require.between("wet mass", wetMass, dry, 4 * dry, "kg");
        return (wet - dry) / dry;
    }

    /**
     * Uncertainty of the moisture content from that of the scale.
     *
     * @param wetMass m_wet, before drying [kg]
     * @param dryMass m_dry, after drying [kg]
     * @param weighing u, uncertainty of one weighing [kg]
     * @return u(M), fraction of the oven-dry mass [-]
     */
    public static double uncertainty(double wetMass, double dryMass, double weighing) {
        double ratio = 1 + moisture(wetMass, dryMass);
        double u = Require.between("uncertainty of one weighing", weighing, 0, dryMass, "kg");
        return u / dryMass * Math.sqrt(1 + ratio * ratio);
    }
}
