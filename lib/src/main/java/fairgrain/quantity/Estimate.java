package fairgrain.quantity;

/**
 * A number that is not known exactly.
 *
 * @param expected what to expect, SI
 * @param sd standard deviation, SI
 */
public record Estimate(double expected, double sd) {
    public Estimate {
        Require.finite("expected value", expected, "(SI)");
        Require.notNegative("standard deviation", sd, "(SI)");
    }

    /** The value so many standard deviations from what is expected. */
    public double at(double deviations) {
        return expected + deviations * sd;
    }
}
