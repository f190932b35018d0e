package fairgrain.moisture;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * The lowest and highest humidity of a month, as a small hygrometer keeps them, drawn in to what a board feels of them.
 *
 * <p>h_low = m − s r/2, h_high = m + s r/2, with m the middle of the two readings, r the range between them, s = 1/2
 *
 * <p><b>Source</b> {@code own}, half of the range of a month.
 *
 * <p><b>Holds for</b> boards of 19 mm (3/4 in) and more. Extremes last hours or days, and a bare 19 mm board follows
 * less than half of any swing that comes and goes within two weeks, even at the fast end of its diffusivity (see
 * {@link PeriodicResponse}). Thinner parts: use the readings as they are.
 */
public final class MinMaxReading {
    public static final Citation SOURCE = Citation.of("own", "half of the range of a month", Basis.JUDGEMENT);

    /** s. */
    private static final double SHARE = 0.5;

    private MinMaxReading() {}

    /**
     * Dry side of what a board feels of a month.
     *
     * @param lowest humidity reading of the month, as a fraction [-]
     * @param highest humidity reading of the month, as a fraction [-]
     * @return h_low, as a fraction [-]
     */
    public static double low(double lowest, double highest) {
        return middle(lowest, highest) - SHARE * (highest - lowest) / 2;
    }

    /**
     * Damp side of what a board feels of a month.
     *
     * @param lowest humidity reading of the month, as a fraction [-]
     * @param highest humidity reading of the month, as a fraction [-]
     * @return h_high, as a fraction [-]
     */
    public static double high(double lowest, double highest) {
        return middle(lowest, highest) + SHARE * (highest - lowest) / 2;
    }

    /**
     * Middle of the two readings, taken for the mean of the month.
     *
     * @param lowest humidity reading of the month, as a fraction [-]
     * @param highest humidity reading of the month, as a fraction [-]
     * @return m, as a fraction [-]
     */
    public static double middle(double lowest, double highest) {
        double low = Require.between("lowest humidity", lowest, 0, 1, "(fraction; 45 % is 0.45)");
        double high = Require.between("highest humidity", highest, low, 1, "(fraction; not below the lowest)");
        return (low + high) / 2;
    }
}
