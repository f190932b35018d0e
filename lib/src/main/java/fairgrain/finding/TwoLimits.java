package fairgrain.finding;

import fairgrain.quantity.Dimension;

/**
 * A limit that everybody keeps to and a farther one that nobody passes. Up to the first it holds, beyond the second it fails, and between
 * them it is close.
 *
 * @param sure nobody doubts it up to here
 * @param most nobody goes beyond this
 */
public record TwoLimits(double sure, double most) {
    private static final double CLOSE = 1 / 1.10; // where a check begins to be close

    /** How much of the limits is used: 1 at the most; where it begins to be close, at the sure one. */
    public double used(double value) {
        if (value <= sure) {
            return value / sure * CLOSE;
        }
        return value <= most ? CLOSE + (value - sure) / (most - sure) * (1 - CLOSE) : value / most;
    }

    /** How much of the two limits a value uses, as a check. */
    public Check check(String what, double value) {
        return Check.of(what + ": how much of its limits is used", used(value), 1, Dimension.RATIO);
    }
}
