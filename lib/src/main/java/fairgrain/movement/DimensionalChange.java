package fairgrain.movement;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Change of a dimension across the grain between two moisture contents, in the handbook's two forms.
 *
 * <p>ΔD = D<sub>I</sub> C (M<sub>F</sub> − M<sub>I</sub>) with a coefficient per 1 % that refers to 10 % moisture content, and ΔD = D<sub>I</sub>
 * (M<sub>F</sub> − M<sub>I</sub>) / (M<sub>S</sub> 100/S − M<sub>S</sub> + M<sub>I</sub>) with the total shrinkage S in percent from
 * M<sub>S</sub>, where shrinkage starts, to oven dry.
 *
 * <p><b>Source</b> {@code gtr190}, eq. 13-2: read. The image of eq. 13-3 could not be read; its conditions were, and it is the only form
 * that gives the printed coefficients back.
 *
 * <p><b>Holds for</b> the first form from 6 to 14 % moisture content; the second whenever both ends lie at or below
 * M<sub>S</sub>. Both are averages over many boards; one board differs (see the coefficient of variation in the wood table).
 * The handbook says that the straight line understates the change by about a twentieth.
 */
public final class DimensionalChange {
    public static final Citation SOURCE = Citation.of("gtr190", "eq. 13-2", Basis.READ);

    /** The second form. */
    public static final Citation SECOND_FORM = Citation.of("gtr190", "eq. 13-3", Basis.MEMORY);

    private static final double POINTS = 100; // the printed forms take moisture and shrinkage in percent

    private DimensionalChange() {}

    /**
     * The first form.
     *
     * @param dimension D_I, the dimension at the start [m]
     * @param coefficient C_T or C_R, change per 1 % of moisture content [1/%]
     * @param from M_I, moisture content at the start [fraction]
     * @param to M_F, moisture content at the end [fraction]
     * @return ΔD, above zero where the wood swells [m]
     */
    public static double byCoefficient(double dimension, double coefficient, double from, double to) {
        double d = Require.between("dimension", dimension, 0, 10, "m");
        double c = Require.between("dimensional change coefficient", coefficient, 0, 0.02, "per 1 %");
        double mI = Require.between("moisture content at the start", from, 0, 0.3, "(a fraction)");
        double mF = Require.between("moisture content at the end", to, 0, 0.3, "(a fraction)");
        return d * c * (mF - mI) * POINTS;
    }

    /**
     * The second form.
     *
     * @param dimension D_I, the dimension at the start [m]
     * @param shrinkage S, total shrinkage from green to oven dry [fraction]
     * @param start M_S, moisture content where shrinkage starts [fraction]
     * @param from M_I, moisture content at the start, at most M_S [fraction]
     * @param to M_F, moisture content at the end, at most M_S [fraction]
     * @return ΔD, above zero where the wood swells [m]
     */
    public static double byShrinkage(double dimension, double shrinkage, double start, double from, double to) {
        double d = Require.between("dimension", dimension, 0, 10, "m");
        double s = Require.between("shrinkage", shrinkage, 1e-6, 0.3, "(a fraction)");
        double mS = Require.between("start of shrinkage", start, 0.1, 0.4, "(a fraction)");
        double mI = Require.between("moisture content at the start", from, 0, mS, "(a fraction)");
        double mF = Require.between("moisture content at the end", to, 0, mS, "(a fraction)");
        return d * (mF - mI) / (mS / s - mS + mI);
    }
}
