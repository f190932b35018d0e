package fairgrain.bending;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * A board on two simple supports, turned round: the size at which its sag after years is a given part of its span.
 *
 * <p>t = L (5 p m c (1 + k)/(32 E))^(1/3), L = t (32 E/(5 p m c (1 + k)))^(1/3), p = 32 E t³/(5 m c (1 + k) L³)
 *
 * <p>for a sag of w: L = (32 E t³ w/(5 p c (1 + k)))^(1/4); for a stress of f: t = L √(3 p/(4 f))
 *
 * <p><b>Source</b> {@code own}, sag of the simple beam solved for each size.
 *
 * <p><b>Holds for</b> the same pressure all over. The pressure holds the board's own weight, so that a thickness has to be asked
 * for two or three times over. c is a model factor, 1.05 for a plain shelf on four pins.
 */
public final class SizeForSag {
    public static final Citation SOURCE =
            Citation.of("own", "sag of the simple beam solved for each size", Basis.DERIVED);

    private SizeForSag() {}

    /**
     * Least thickness for a sag of L/m.
     *
     * @param span L [m]
     * @param pressure p, own weight included [Pa]
     * @param elasticity E, along the span [Pa]
     * @param limit m, span by sag [-]
     * @param factor c (1 + k), model factor times final by first sag [-]
     * @return t [m]
     */
    public static double thickness(double span, double pressure, double elasticity, double limit, double factor) {
        return span(span)
                * Math.cbrt(5 * pressure(pressure) * limit(limit) * factor(factor) / (32 * stiff(elasticity)));
    }

    /**
     * Longest span for a sag of L/m.
     *
     * @param thickness t [m]
     * @param pressure p, own weight included [Pa]
     * @param elasticity E, along the span [Pa]
     * @param limit m, span by sag [-]
     * @param factor c (1 + k), model factor times final by first sag [-]
     * @return L [m]
     */
    public static double span(double thickness, double pressure, double elasticity, double limit, double factor) {
        double p = Require.positive("pressure", pressure(pressure), "Pa");
        return thick(thickness) * Math.cbrt(32 * stiff(elasticity) / (5 * p * limit(limit) * factor(factor)));
    }

    /**
     * Longest span for a sag of so many metres.
     *
     * @param thickness t [m]
     * @param pressure p, own weight included [Pa]
     * @param elasticity E, along the span [Pa]
     * @param sag w [m]
     * @param factor c (1 + k), model factor times final by first sag [-]
     * @return L [m]
     */
    public static double spanForSag(double thickness, double pressure, double elasticity, double sag, double factor) {
        double p = Require.positive("pressure", pressure(pressure), "Pa");
        double t = thick(thickness);
        double w = Require.between("sag", sag, 0, 1, "m");
        return Math.sqrt(Math.sqrt(32 * stiff(elasticity) * t * t * t * w / (5 * p * factor(factor))));
    }

    /**
     * Largest pressure for a sag of L/m.
     *
     * @param span L [m]
     * @param thickness t [m]
     * @param elasticity E, along the span [Pa]
     * @param limit m, span by sag [-]
     * @param factor c (1 + k), model factor times final by first sag [-]
     * @return p, own weight included [Pa]
     */
    public static double pressure(double span, double thickness, double elasticity, double limit, double factor) {
        double r = thick(thickness) / span(span);
        return 32 * stiff(elasticity) * r * r * r / (5 * limit(limit) * factor(factor));
    }

    /**
     * Least thickness for a stress.
     *
     * @param span L [m]
     * @param pressure p, own weight included [Pa]
     * @param stress f, what the board may bear [Pa]
     * @return t [m]
     */
    public static double thicknessForStress(double span, double pressure, double stress) {
        double f = Require.between("stress", stress, 1e3, 1e10, "Pa");
        return span(span) * Math.sqrt(3 * pressure(pressure) / (4 * f));
    }

    private static double span(double span) {
        return Require.between("span", span, 0.01, 100, "m");
    }

    private static double thick(double thickness) {
        return Require.between("thickness", thickness, 1e-4, 1, "m");
    }

    private static double pressure(double pressure) {
        return Require.between("pressure", pressure, 0, 1e5, "Pa");
    }

    private static double stiff(double elasticity) {
        return Require.between("modulus of elasticity", elasticity, 1e7, 1e12, "Pa");
    }

    private static double limit(double limit) {
        return Require.between("span by sag", limit, 10, 10_000, "(ratio)");
    }

    private static double factor(double factor) {
        return Require.between("model factor times final by first sag", factor, 1, 20, "(ratio)");
    }
}
