package fairgrain.bending;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * A beam whose two ends are held by equal turning springs: neither free to turn nor clamped.
 *
 * <p>β = k L / (E I), f = β / (β + 2)
 *
 * <p>uniform load: δ = w L⁴ (5 − 4 f) / (384 E I), M_end = f w L² / 12
 *
 * <p>load at mid-span: δ = P L³ (4 − 3 f) / (192 E I), M_end = f P L / 8
 *
 * <p><b>Source</b> {@code own}, semi-rigid ends, from the slope of the simple beam and the spring.
 *
 * <p><b>Holds for</b> equal ends that do not sink. f is 0 for pins, loose housings and cleats; no measured k of a housed shelf was
 * found. Left out: shear.
 */
public final class SemiRigidEnds {
    public static final Citation SOURCE =
            Citation.of("own", "semi-rigid ends, from the slope of the simple beam and the spring", Basis.DERIVED);

    private SemiRigidEnds() {}

    /**
     * How near to clamped the ends are.
     *
     * @param turningStiffness k, moment of an end by the angle it turns [N·m/rad]
     * @param span L, distance between supports [m]
     * @param elasticity E, modulus of elasticity along the beam [Pa]
     * @param secondMoment I, second moment of area of the section [m⁴]
     * @return f, 0 for free to turn and 1 for clamped [-]
     */
    public static double fixity(double turningStiffness, double span, double elasticity, double secondMoment) {
        double k = Require.notNegative("turning stiffness", turningStiffness, "N m/rad");
        double l = Require.between("span", span, 0.01, 100, "m");
        double e = Require.between("modulus of elasticity", elasticity, 1e7, 1e12, "Pa");
        double i = Require.between("second moment of area", secondMoment, 1e-14, 1, "m^4");
        double beta = k * l / (e * i);
        return beta / (beta + 2);
    }

    /**
     * Turning stiffness of an end of known fixity.
     *
     * @param fixity f, below 1 [-]
     * @param span L, distance between supports [m]
     * @param elasticity E, modulus of elasticity along the beam [Pa]
     * @param secondMoment I, second moment of area of the section [m⁴]
     * @return k [N·m/rad]
     */
    public static double turningStiffness(double fixity, double span, double elasticity, double secondMoment) {
        double f = Require.between("fixity", fixity, 0, 0.999999, "(0 free to turn, 1 clamped)");
        double l = Require.between("span", span, 0.01, 100, "m");
        double e = Require.between("modulus of elasticity", elasticity, 1e7, 1e12, "Pa");
        double i = Require.between("second moment of area", secondMoment, 1e-14, 1, "m^4");
        return 2 * f / (1 - f) * e * i / l;
    }

    /**
     * Deflection at mid-span under a uniform load.
     *
     * @param fixity f [-]
     * @param loadPerLength w, load per length of beam, own weight included [N/m]
     * @param span L, distance between supports [m]
     * @param elasticity E, modulus of elasticity along the beam [Pa]
     * @param secondMoment I, second moment of area of the section [m⁴]
     * @return δ, downwards [m]
     */
    public static double deflection(
            double fixity, double loadPerLength, double span, double elasticity, double secondMoment) {
        double f = fixity(fixity);
        return (5 - 4 * f) / 5 * UniformLoad.deflection(loadPerLength, span, elasticity, secondMoment);
    }

    /**
     * Moment at each end under a uniform load.
     *
     * @param fixity f [-]
     * @param loadPerLength w, load per length of beam, own weight included [N/m]
     * @param span L, distance between supports [m]
     * @return M_end, hogging [N·m]
     */
    public static double endMoment(double fixity, double loadPerLength, double span) {
        return fixity(fixity) * UniformLoad.largestMoment(UniformLoad.Ends.CLAMPED, loadPerLength, span);
    }

    /**
     * Deflection at mid-span under a load there.
     *
     * @param fixity f [-]
     * @param load P [N]
     * @param span L, distance between supports [m]
     * @param elasticity E, modulus of elasticity along the beam [Pa]
     * @param secondMoment I, second moment of area of the section [m⁴]
     * @return δ, downwards [m]
     */
    public static double centreLoadDeflection(
            double fixity, double load, double span, double elasticity, double secondMoment) {
        double f = fixity(fixity);
        return (4 - 3 * f) / 4 * BeamCoefficients.CENTRE_SIMPLE.deflection(load, span, elasticity, secondMoment);
    }

    /**
     * Moment at each end under a load at mid-span.
     *
     * @param fixity f [-]
     * @param load P [N]
     * @param span L, distance between supports [m]
     * @return M_end, hogging [N·m]
     */
    public static double centreLoadEndMoment(double fixity, double load, double span) {
        double p = Require.between("load", load, 0, 1e6, "N");
        double l = Require.between("span", span, 0.01, 100, "m");
        return fixity(fixity) * p * l / 8;
    }

    private static double fixity(double fixity) {
        return Require.between("fixity", fixity, 0, 1, "(0 free to turn, 1 clamped)");
    }
}
