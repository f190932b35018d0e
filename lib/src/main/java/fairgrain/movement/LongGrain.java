package fairgrain.movement;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Change of a length along the grain between two moisture contents.
 *
 * <p>r = (1 − S (1 − M<sub>2</sub>/M<sub>0</sub>)) / (1 − S (1 − M<sub>1</sub>/M<sub>0</sub>)), a straight line from 30 % down.
 *
 * <p><b>Source</b> {@code gtr190}, p. 4-5: shrinkage along the grain is 0.1 to 0.2 % from green to oven-dry in most woods.
 *
 * <p><b>Holds for</b> boards whose grain runs along them. Left out: reaction wood and wood near the pith, which may reach 2 %.
 */
public final class LongGrain {
    public static final Citation SOURCE = Citation.of("gtr190", "p. 4-5", Basis.SECOND_HAND);

    /** The least of ordinary wood, green to oven-dry, in percent as printed. */
    public static final double LEAST_PERCENT = 0.1;

    /** The most of ordinary wood. */
    public static final double MOST_PERCENT = 0.2;

    private static final double START = 0.30; // where shrinkage begins

    private LongGrain() {}

    /**
     * Length at one moisture content over that at another.
     *
     * @param percent S, shrinkage along the grain from green to oven-dry [%]
     * @param from M_1, moisture content at the start [fraction]
     * @param to M_2, moisture content at the end [fraction]
     * @return r, above 1 where the wood grows longer [ratio]
     */
    public static double ratio(double percent, double from, double to) {
        double s = Require.between("shrinkage along the grain", percent, 0, 3, "%") / 100;
        double m1 = Require.between("moisture content at the start", from, 0, 2, "(a fraction)");
        double m2 = Require.between("moisture content at the end", to, 0, 2, "(a fraction)");
        return size(s, m2) / size(s, m1);
    }

    private static double size(double shrinkage, double moisture) {
        return 1 - shrinkage * (1 - Math.min(moisture, START) / START);
    }
}
