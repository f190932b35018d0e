package fairgrain.movement;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * How much two parts that are joined would come to differ in size if nothing held them, over that size.
 *
 * <p>ε = | C<sub>a</sub> ΔM<sub>a</sub> − C<sub>b</sub> ΔM<sub>b</sub> |, or with the sizes themselves ε = | r<sub>a</sub> −
 * r<sub>b</sub> |.
 *
 * <p><b>Source</b> {@code own}, difference of two free movements: subtraction.
 *
 * <p><b>Holds for</b> parts that lie side by side, each free to take the moisture of its place.
 */
public final class MismatchStrain {
    public static final Citation SOURCE = Citation.of("own", "difference of two free movements", Basis.DERIVED);

    private static final double POINTS = 100; // the coefficients are per 1 %

    private MismatchStrain() {}

    /**
     * From coefficients.
     *
     * @param coefficientA C_a, change per 1 % of moisture content; about 0 along the grain [1/%]
     * @param changeA ΔM_a, change of its moisture content [fraction]
     * @param coefficientB C_b, the same of the other part [1/%]
     * @param changeB ΔM_b, change of its moisture content [fraction]
     * @return ε [ratio]
     */
    public static double byCoefficients(double coefficientA, double changeA, double coefficientB, double changeB) {
        double ca = Require.between("coefficient of the one", coefficientA, 0, 0.02, "per 1 %");
        double dMa = Require.between("moisture change of the one", changeA, -0.3, 0.3, "(a fraction)");
        double cb = Require.between("coefficient of the other", coefficientB, 0, 0.02, "per 1 %");
        double dMb = Require.between("moisture change of the other", changeB, -0.3, 0.3, "(a fraction)");
        return Math.abs(ca * dMa - cb * dMb) * POINTS;
    }

    /**
     * From sizes.
     *
     * @param ratioA r_a, size then over size now of the one [ratio]
     * @param ratioB r_b, the same of the other [ratio]
     * @return ε [ratio]
     */
    public static double byRatios(double ratioA, double ratioB) {
        double ra = Require.between("size of the one", ratioA, 0.5, 2, "times its size now");
        double rb = Require.between("size of the other", ratioB, 0.5, 2, "times its size now");
        return Math.abs(ra - rb);
    }
}
