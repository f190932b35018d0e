package fairgrain.moisture;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.special.Erf;

/**
 * How far a slab has gone on its way, on average, after the air around it changed at once.
 *
 * <p>E = 1 − Σ 2 Bi² exp(−β_n² Fo)/(β_n² (β_n² + Bi² + Bi)), β tan β = Bi, Fo = D t/a², Bi = S a/D
 *
 * <p>while the middle has not noticed: E = (exp(X²) erfc X − 1 + 2 X/√π)/Bi, X = Bi √Fo; with no surface resistance E =
 * 2 √(Fo/π)
 *
 * <p><b>Source</b> {@code crank1975}, pp. 47-60; the series was read in the manual of a program that quotes it. The
 * form for short times is the half-space one, recalled.
 *
 * <p><b>Holds for</b> a slab that starts even, with constant D. a is half the thickness with both faces in the air, the
 * whole thickness with one face sealed.
 */
public final class SlabUptake {
    public static final Citation SOURCE = Citation.of("crank1975", "pp. 47-60", Basis.SECOND_HAND);
    public static final Citation SHORT_TIMES =
            Citation.of("crank1975", "half-space with surface resistance", Basis.MEMORY);

    /** Up to here the two halves do not feel each other: exp(−1/Fo) is 10⁻¹⁵. */
    private static final double SHORT = 0.03;

    /** Below this X the short form is a small difference of large numbers. */
    private static final double FAINT = 1e-3;

    private static final double NEGLIGIBLE = 1e-17;

    private SlabUptake() {}

    /**
     * Fo, time on the slab's own scale.
     *
     * @param diffusivity D [m²/s]
     * @param time t [s]
     * @param depth a, half the thickness, or the whole if one face is sealed [m]
     * @return Fo [-]
     */
    public static double fourierNumber(double diffusivity, double time, double depth) {
        double d = diffusivity(diffusivity);
        double t = Require.between("time", time, 0, 1e11, "s");
        double a = depth(depth);
        return d * t / (a * a);
    }

    /**
     * Bi, resistance of the slab over that of its surface.
     *
     * @param surface S, surface coefficient; may be infinite [m/s]
     * @param depth a, half the thickness, or the whole if one face is sealed [m]
     * @param diffusivity D [m²/s]
     * @return Bi [-]
     */
    public static double biotNumber(double surface, double depth, double diffusivity) {
        double s = Require.between("surface coefficient", surface, 1e-14, Double.POSITIVE_INFINITY, "m/s");
        return s * depth(depth) / diffusivity(diffusivity);
    }

    /**
     * Share of the change that the mean over the thickness has made.
     *
     * @param fourier Fo [-]
     * @param biot Bi; may be infinite [-]
     * @return E, 0 at the start, 1 in the end [-]
     */
    public static double fraction(double fourier, double biot) {
        double fo = Require.notNegative("Fourier number", fourier, "(D t/a^2)");
        double bi = SlabRoots.biot(biot);
        return fo <= SHORT ? atFirst(fo, bi) : series(fo, bi);
    }

    /**
     * The Fourier number at which the mean has made a share of the change.
     *
     * @param fraction E [-]
     * @param biot Bi; may be infinite [-]
     * @return Fo [-]
     */
    public static double fourierAt(double fraction, double biot) {
        double wanted = Require.between("share of the change", fraction, 0, 0.999999, "(1 is never reached)");
        double slowest = SlabRoots.root(0, biot);
        // the rest dies away at least as fast as the slowest shape
        double late = (1 - Math.log(1 - wanted)) / (slowest * slowest);
        return new BrentSolver(1e-14, 1e-13 * late, 1e-15).solve(200, fo -> fraction(fo, biot) - wanted, 0, late);
    }

    /**
     * Time in which the mean makes a share of the change.
     *
     * @param fraction E [-]
     * @param depth a, half the thickness, or the whole if one face is sealed [m]
     * @param diffusivity D [m²/s]
     * @param surface S, surface coefficient; may be infinite [m/s]
     * @return t [s]
     */
    public static double time(double fraction, double depth, double diffusivity, double surface) {
        double fo = fourierAt(fraction, biotNumber(surface, depth, diffusivity));
        return fo * depth * depth / diffusivity;
    }

    /**
     * Time in which the mean goes half the way.
     *
     * @param depth a, half the thickness, or the whole if one face is sealed [m]
     * @param diffusivity D [m²/s]
     * @param surface S, surface coefficient; may be infinite [m/s]
     * @return t [s]
     */
    public static double halfTime(double depth, double diffusivity, double surface) {
        return time(0.5, depth, diffusivity, surface);
    }

    private static double series(double fo, double bi) {
        double rest = 0;
        for (int n = 0; ; n++) {
            double b2 = SlabRoots.root(n, bi);
            b2 *= b2;
            double decay = Math.exp(-b2 * fo);
            // 2 Bi^2/(b2 + Bi^2 + Bi), so written that it tends to 2 for Bi without end
            rest += 2 / (b2 / (bi * bi) + 1 + 1 / bi) / b2 * decay;
            if (decay < NEGLIGIBLE) {
                return 1 - rest;
            }
        }
    }

    private static double atFirst(double fo, double bi) {
        double root = Math.sqrt(fo);
        if (bi == Double.POSITIVE_INFINITY) {
            return 2 * root / Math.sqrt(Math.PI);
        }
        double x = bi * root;
        if (x < FAINT) {
            return bi * fo * (1 - 4 * x / (3 * Math.sqrt(Math.PI)) + x * x / 2);
        }
        return 2 * root / Math.sqrt(Math.PI) - (1 - scaledErfc(x)) / bi;
    }

    /** exp(x²) erfc x, which tends to 1/(x √π). */
    private static double scaledErfc(double x) {
        if (x < 5) {
            return Math.exp(x * x) * Erf.erfc(x);
        }
        double sum = 1;
        double term = 1;
        for (int n = 1; n <= 12; n++) {
            term *= -(2 * n - 1) / (2 * x * x);
            sum += term;
        }
        return sum / (x * Math.sqrt(Math.PI));
    }

    static double diffusivity(double diffusivity) {
        return Require.between("diffusivity", diffusivity, 1e-14, 1e-7, "m^2/s");
    }

    static double depth(double depth) {
        return Require.between("depth", depth, 1e-5, 1, "m");
    }
}
