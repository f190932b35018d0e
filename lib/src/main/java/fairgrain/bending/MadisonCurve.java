package fairgrain.bending;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * The stress that wood stands for a time, by its strength in a test of a few minutes.
 *
 * <p>SL = 18.3 + 108.4 t^−0.0464 % (t in s); older line SL = 90.4 − 6.3 log₁₀ t % (t in h)
 *
 * <p><b>Source</b> {@code wood1951}, the Madison curve.
 *
 * <p><b>Source</b> {@code wood1947}, straight line in the logarithm of time.
 *
 * <p><b>Holds for</b> small clear bending specimens of solid wood in a steady climate, and as a mean. Not for panels, glued joints or glass.
 */
public final class MadisonCurve {
    public static final Citation SOURCE = Citation.of("wood1951", "the Madison curve", Basis.SECOND_HAND);
    public static final Citation LINE_SOURCE =
            Citation.of("wood1947", "straight line in the logarithm of time", Basis.SECOND_HAND);

    private static final double SECONDS_PER_HOUR = 3600;

    private MadisonCurve() {}

    /**
     * Stress that is stood for a time.
     *
     * @param time t, under load [s]
     * @return SL, by the strength in a short test [-]
     */
    public static double stressLevel(double time) {
        double t = time(time);
        return (18.3 + 108.4 * Math.pow(t, -0.0464)) / 100;
    }

    /**
     * The same by the older line.
     *
     * @param time t, under load [s]
     * @return SL, by the strength in a short test [-]
     */
    public static double stressLevelOfTheLine(double time) {
        double hours = time(time) / SECONDS_PER_HOUR;
        return (90.4 - 6.3 * Math.log10(hours)) / 100;
    }

    private static double time(double time) {
        return Require.between("time under load", time, 1, 1e10, "s");
    }
}
