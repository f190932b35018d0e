package fairgrain.moisture;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;
import org.apache.commons.math3.complex.Complex;

/**
 * A slab in air whose moisture rises and falls evenly, by the year or by the day.
 *
 * <p>z = (1 + i) a/δ, δ = √(2 D/ω), N = 1 + z tanh z/Bi; mean over the thickness (tanh z/z)/N, face 1/N, middle (1/cosh
 * z)/N
 *
 * <p><b>Source</b> {@code own}, closed form for a periodic surface; confirmed by an independent time-stepping program.
 *
 * <p><b>Holds for</b> constant D, long after the start. a is half the thickness with both faces in the air, the whole
 * thickness with one face sealed; the middle is then the sealed face. Moisture stands for what wood settles at in that
 * air.
 */
public final class PeriodicResponse {
    public static final Citation SOURCE = Citation.of("own", "closed form for a periodic surface", Basis.DERIVED);

    /** Of the Gregorian calendar [s]. */
    public static final double YEAR = 365.2425 * 86400;

    /** [s]. */
    public static final double DAY = 86400;

    private PeriodicResponse() {}

    /**
     * Depth at which a swing has died to 37 %.
     *
     * @param diffusivity D [m²/s]
     * @param period of the swing [s]
     * @return δ [m]
     */
    public static double penetrationDepth(double diffusivity, double period) {
        double omega = 2 * Math.PI / Require.between("period", period, 60, 1e10, "s");
        return Math.sqrt(2 * SlabUptake.diffusivity(diffusivity) / omega);
    }

    /**
     * Swing of the mean over the thickness, which is what moves the width.
     *
     * @param depth a, half the thickness, or the whole if one face is sealed [m]
     * @param diffusivity D [m²/s]
     * @param surface S, surface coefficient; may be infinite [m/s]
     * @param period of the swing [s]
     * @return amplitude [-] and lag [s]
     */
    public static Swing mean(double depth, double diffusivity, double surface, double period) {
        Response to = Response.of(depth, diffusivity, surface, period);
        Complex response = to.tanh.divide(to.z).divide(to.atFace);
        return to.swing(response.abs(), -response.getArgument());
    }

    /**
     * Swing of the face.
     *
     * @param depth a, half the thickness, or the whole if one face is sealed [m]
     * @param diffusivity D [m²/s]
     * @param surface S, surface coefficient; may be infinite [m/s]
     * @param period of the swing [s]
     * @return amplitude [-] and lag [s]
     */
    public static Swing face(double depth, double diffusivity, double surface, double period) {
        Response to = Response.of(depth, diffusivity, surface, period);
        return to.swing(1 / to.atFace.abs(), to.atFace.getArgument());
    }

    /**
     * Swing of the middle, or of the sealed face.
     *
     * @param depth a, half the thickness, or the whole if one face is sealed [m]
     * @param diffusivity D [m²/s]
     * @param surface S, surface coefficient; may be infinite [m/s]
     * @param period of the swing [s]
     * @return amplitude [-] and lag, which may be more than a period [s]
     */
    public static Swing middle(double depth, double diffusivity, double surface, double period) {
        Response to = Response.of(depth, diffusivity, surface, period);
        double q = to.z.getReal();
        // 1/cosh z without overflow
        Complex response =
                to.decay.multiply(2).divide(to.decay.multiply(to.decay).add(1));
        // the argument of cosh z is q give or take less than half a turn, and so is found past the first turn too
        double wrapped = Math.atan2(Math.tanh(q) * Math.sin(q), Math.cos(q));
        double phase = wrapped + 2 * Math.PI * Math.rint((q - wrapped) / (2 * Math.PI));
        return to.swing(response.abs() / to.atFace.abs(), phase + to.atFace.getArgument());
    }

    /** What the three responses share. */
    private record Response(double omega, Complex z, Complex decay, Complex tanh, Complex atFace) {
        static Response of(double depth, double diffusivity, double surface, double period) {
            double q = SlabUptake.depth(depth) / penetrationDepth(diffusivity, period);
            double biot = SlabUptake.biotNumber(surface, depth, diffusivity);
            Complex z = new Complex(q, q);
            Complex decay = z.negate().exp();
            Complex decay2 = decay.multiply(decay);
            Complex tanh = Complex.ONE.subtract(decay2).divide(decay2.add(1));
            return new Response(
                    2 * Math.PI / period,
                    z,
                    decay,
                    tanh,
                    z.multiply(tanh).divide(biot).add(1));
        }

        Swing swing(double amplitude, double phase) {
            // where the slab follows at once, rounding can leave a phase just below zero
            return new Swing(amplitude, Math.max(0, phase) / omega);
        }
    }
}
