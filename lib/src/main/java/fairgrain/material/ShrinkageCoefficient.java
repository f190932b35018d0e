package fairgrain.material;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * The handbook's coefficient of dimensional change, derived from total shrinkage.
 *
 * <p>C = (s/M<sub>S</sub>) / (1 − s (M<sub>S</sub> − 10)/M<sub>S</sub>), M<sub>S</sub> in percent: the straight line's change per 1 %, referred to the size at 10 %
 *
 * <p><b>Source</b> {@code gtr190}, Table 13-5, wording of its footnote from memory, logic borne out by its cells.
 *
 * <p><b>Holds for</b> a straight line from M<sub>S</sub> to oven dry. The library moves wood along curves. The
 * coefficient is here to be held against the printed table, and as the least slope of {@link BentCurve}.
 */
public final class ShrinkageCoefficient {
    public static final Citation SOURCE = Citation.of("gtr190", "Table 13-5", Basis.MEMORY);

    private static final double REFERENCE = 10; // %, the moisture content that the coefficient refers to
    private static final double PERCENT = 100;

    private ShrinkageCoefficient() {}

    /**
     * Coefficient from shrinkage.
     *
     * @param shrinkage s, total, green to oven-dry [fraction]
     * @param start M_S, moisture content where shrinkage starts [fraction]
     * @return C [1/%]
     */
    public static double of(double shrinkage, double start) {
        double s = Require.between("shrinkage", shrinkage, 0, 0.3, "(a fraction)");
        double ms = Require.between("start of shrinkage", start, 0.15, 0.4, "(a fraction)") * PERCENT;
        return s / ms / (1 - s * (ms - REFERENCE) / ms);
    }

    /**
     * Shrinkage from coefficient.
     *
     * @param coefficient C [1/%]
     * @param start M_S, moisture content where shrinkage starts [fraction]
     * @return s, total, green to oven-dry [fraction]
     */
    public static double shrinkage(double coefficient, double start) {
        double c = Require.between("coefficient", coefficient, 0, 0.02, "per 1 %");
        double ms = Require.between("start of shrinkage", start, 0.15, 0.4, "(a fraction)") * PERCENT;
        return c * ms / (1 + c * (ms - REFERENCE));
    }
}
