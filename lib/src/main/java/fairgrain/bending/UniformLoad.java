package fairgrain.bending;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * A beam carrying the same load all along its length.
 *
 * <p>δ = 5 w L⁴ / (384 E I), M = w L² / 8, R = w L / 2 on two simple supports
 *
 * <p><b>Source</b> {@code gtr190}, equation 9-2 and Table 9-1.
 *
 * <p><b>Holds for</b> small deflections and one section all along. Left out: shear, which adds to the sag of short deep
 * beams, creep, and bending across the width: a shelf on four pins sags up to 6 % more at its worst point.
 */
public final class UniformLoad {
    public static final Citation SOURCE = Citation.of("gtr190", "equation 9-2 and Table 9-1", Basis.READ);

    private UniformLoad() {}

    /** How the two ends are held. */
    public enum Ends {
        /** Free to turn, held in height. */
        SIMPLE(BeamCoefficients.UNIFORM_SIMPLE, 1.0 / 8),
        /** Held in height and slope. */
        CLAMPED(BeamCoefficients.UNIFORM_CLAMPED, 1.0 / 12),
        /** One end held in height and slope, the other free. */
        CANTILEVER(BeamCoefficients.UNIFORM_CANTILEVER, 1.0 / 2);

        private final BeamCoefficients coefficients;
        private final double moment;

        Ends(BeamCoefficients coefficients, double moment) {
            this.coefficients = coefficients;
            this.moment = moment;
        }

        /** The row of the handbook's table. */
        public BeamCoefficients coefficients() {
            return coefficients;
        }
    }

    /**
     * Deflection at mid-span on two simple supports.
     *
     * @param loadPerLength w, load per length of beam, own weight included [N/m]
     * @param span L, distance between supports [m]
     * @param elasticity E, modulus of elasticity along the beam [Pa]
     * @param secondMoment I, second moment of area of the section [m⁴]
     * @return δ, downwards [m]
     */
    public static double deflection(double loadPerLength, double span, double elasticity, double secondMoment) {
        return deflection(Ends.SIMPLE, loadPerLength, span, elasticity, secondMoment);
    }

    /**
     * Largest deflection: at mid-span, or at the free end of a cantilever.
     *
     * @param ends how the ends are held [-]
     * @param loadPerLength w, load per length of beam, own weight included [N/m]
     * @param span L, distance between supports, or length of the cantilever [m]
     * @param elasticity E, modulus of elasticity along the beam [Pa]
     * @param secondMoment I, second moment of area of the section [m⁴]
     * @return δ, downwards [m]
     */
    public static double deflection(
            Ends ends, double loadPerLength, double span, double elasticity, double secondMoment) {
        double w = Require.between("load per length", loadPerLength, 0, 1e6, "N/m");
        double l = Require.between("span", span, 0.01, 100, "m");
        return ends.coefficients.deflection(w * l, l, elasticity, secondMoment);
    }

    /**
     * What shear adds to the deflection.
     *
     * @param ends how the ends are held [-]
     * @param loadPerLength w, load per length of beam, own weight included [N/m]
     * @param span L, distance between supports, or length of the cantilever [m]
     * @param shearModulus G, shear modulus of the plane in which the beam bends [Pa]
     * @param shearArea A′, shear area of the section [m²]
     * @return shear deflection, downwards [m]
     */
    public static double shearDeflection(
            Ends ends, double loadPerLength, double span, double shearModulus, double shearArea) {
        double w = Require.between("load per length", loadPerLength, 0, 1e6, "N/m");
        double l = Require.between("span", span, 0.01, 100, "m");
        double g = Require.between("shear modulus", shearModulus, 1e5, 1e12, "Pa");
        double a = Require.between("shear area", shearArea, 1e-8, 10, "m^2");
        return ends.coefficients.shear() * w * l * l / (g * a);
    }

    /**
     * Largest bending moment: at mid-span, or at the clamped ends, where it hogs.
     *
     * @param ends how the ends are held [-]
     * @param loadPerLength w, load per length of beam, own weight included [N/m]
     * @param span L, distance between supports, or length of the cantilever [m]
     * @return size of M [N·m]
     */
    public static double largestMoment(Ends ends, double loadPerLength, double span) {
        double w = Require.between("load per length", loadPerLength, 0, 1e6, "N/m");
        double l = Require.between("span", span, 0.01, 100, "m");
        return ends.moment * w * l * l;
    }

    /**
     * Reaction of each of two supports.
     *
     * @param loadPerLength w, load per length of beam, own weight included [N/m]
     * @param span L, distance between supports [m]
     * @return R, upwards [N]
     */
    public static double reaction(double loadPerLength, double span) {
        double w = Require.between("load per length", loadPerLength, 0, 1e6, "N/m");
        double l = Require.between("span", span, 0.01, 100, "m");
        return w * l / 2;
    }

    /**
     * How far the ends of a sagging beam on two simple supports draw together.
     *
     * <p>u = 1/2 ∫ (slope)² dx = 2.486 δ²/L
     *
     * @param deflection δ, sag at mid-span [m]
     * @param span L, distance between supports [m]
     * @return u, loss of length between the supports [m]
     */
    public static double chordShortening(double deflection, double span) {
        double d = Require.between("deflection", deflection, 0, 10, "m");
        double l = Require.between("span", span, 0.01, 100, "m");
        // 1/2 of the integral of the squared slope of 16/5 (x - 2 x^3 + x^4), which is 1 at x = 1/2
        return 256.0 / 50 * (17.0 / 35) * d * d / l;
    }
}
