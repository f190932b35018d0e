package fairgrain.moisture;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;
import org.apache.commons.math3.complex.Complex;

/**
 * A slab whose two faces differ, or live in different air that rises and falls evenly: how its mean follows, and how much damper
 * one face is than the other.
 *
 * <p>u = P cosh(q x)/cosh z + Q sinh(q x)/sinh z, q = (1 + i)/δ, z = q t/2, with c = q D tanh z, s = q D coth z and (1 + c/S₁) P − (1
 * + s/S₁) Q = A₁, (1 + c/S₂) P + (1 + s/S₂) Q = A₂; mean P tanh z/z, difference of the faces 6 Q (coth z/z − 1/z²). In air that stays:
 * difference (M₂ − M₁) (t/D)/(t/D + 1/S₁ + 1/S₂)
 *
 * <p><b>Source</b> {@code own}, closed form for a slab with two unlike faces. With like faces it is the form of {@link
 * PeriodicResponse}; {@link SlabSimulation} steps to the same.
 *
 * <p><b>Holds for</b> constant D, long after the start. The difference is that of the straight line with the same first moment as the
 * moisture across the slab: it is what cups a board. Air at both faces rises and falls together.
 */
public final class TwoFaces {
    public static final Citation SOURCE =
            Citation.of("own", "closed form for a slab with two unlike faces", Basis.DERIVED);

    private TwoFaces() {}

    /**
     * Swing of the mean, both faces in the same air.
     *
     * @param thickness t, from face to face [m]
     * @param diffusivity D [m²/s]
     * @param front S₁, surface coefficient of the front; may be infinite [m/s]
     * @param back S₂, surface coefficient of the back; may be infinite [m/s]
     * @param period of the swing [s]
     * @return amplitude [-] and lag [s]
     */
    public static Swing mean(double thickness, double diffusivity, double front, double back, double period) {
        Waves waves = Waves.of(thickness, diffusivity, front, back, 1, 1, period);
        Complex mean = waves.even.multiply(waves.tanh).divide(waves.z);
        // where the slab follows at once, rounding can leave a phase just below zero
        return new Swing(Math.min(1, mean.abs()), Math.max(0, -mean.getArgument()) * period / (2 * Math.PI));
    }

    /**
     * Amplitude of the difference between the faces.
     *
     * @param thickness t, from face to face [m]
     * @param diffusivity D [m²/s]
     * @param front S₁, surface coefficient of the front; may be infinite [m/s]
     * @param back S₂, surface coefficient of the back; may be infinite [m/s]
     * @param frontAir A₁, half the swing of what wood settles at in the air at the front, as a fraction [-]
     * @param backAir A₂, the same at the back [-]
     * @param period of the swing [s]
     * @return half the swing of the difference, as a fraction [-]
     */
    public static double difference(
            double thickness,
            double diffusivity,
            double front,
            double back,
            double frontAir,
            double backAir,
            double period) {
        Waves waves = Waves.of(thickness, diffusivity, front, back, frontAir, backAir, period);
        Complex z = waves.z;
        Complex shape = Complex.ONE.divide(waves.tanh.multiply(z)).subtract(Complex.ONE.divide(z.multiply(z)));
        return 6 * waves.odd.multiply(shape).abs();
    }

    /**
     * Difference between the faces in air that stays as it is.
     *
     * @param thickness t, from face to face [m]
     * @param diffusivity D [m²/s]
     * @param front S₁, surface coefficient of the front; may be infinite [m/s]
     * @param back S₂, surface coefficient of the back; may be infinite [m/s]
     * @param frontAir M₁, what wood settles at in the air at the front, as a fraction [-]
     * @param backAir M₂, the same at the back [-]
     * @return difference, above zero where the back is damper, as a fraction [-]
     */
    public static double steadyDifference(
            double thickness, double diffusivity, double front, double back, double frontAir, double backAir) {
        double inside = thickness(thickness) / SlabUptake.diffusivity(diffusivity);
        double m1 = air("moisture content of the air at the front", frontAir);
        double m2 = air("moisture content of the air at the back", backAir);
        return (m2 - m1) * inside / (inside + resistance(front) + resistance(back));
    }

    private static double thickness(double thickness) {
        return Require.between("thickness", thickness, 1e-4, 1, "m");
    }

    private static double resistance(double surface) {
        return 1 / Require.between("surface coefficient", surface, 1e-14, Double.POSITIVE_INFINITY, "m/s");
    }

    private static double air(String name, double moisture) {
        return Require.between(name, moisture, 0, 1, "(fraction; 8 % is 0.08)");
    }

    /** P and Q, and what they share. */
    private record Waves(Complex z, Complex tanh, Complex even, Complex odd) {
        static Waves of(
                double thickness,
                double diffusivity,
                double front,
                double back,
                double frontAir,
                double backAir,
                double period) {
            double delta = PeriodicResponse.penetrationDepth(diffusivity, period);
            double half = thickness(thickness) / 2 / delta;
            Complex z = new Complex(half, half);
            Complex decay2 = z.multiply(-2).exp();
            Complex tanh = Complex.ONE.subtract(decay2).divide(decay2.add(1));
            Complex conductance = new Complex(diffusivity / delta, diffusivity / delta); // q D
            Complex c = conductance.multiply(tanh);
            Complex s = conductance.divide(tanh);
            Complex c1 = c.multiply(resistance(front)).add(1);
            Complex s1 = s.multiply(resistance(front)).add(1);
            Complex c2 = c.multiply(resistance(back)).add(1);
            Complex s2 = s.multiply(resistance(back)).add(1);
            double a1 = air("swing of the air at the front", frontAir);
            double a2 = air("swing of the air at the back", backAir);
            Complex determinant = c1.multiply(s2).add(s1.multiply(c2));
            Complex even = s2.multiply(a1).add(s1.multiply(a2)).divide(determinant);
            Complex odd = c1.multiply(a2).subtract(c2.multiply(a1)).divide(determinant);
            return new Waves(z, tanh, even, odd);
        }
    }
}
