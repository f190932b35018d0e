package fairgrain.hygrometer;

/**
 * Stretches of a log without a reading that were too long to bridge.
 *
 * @param hours of all together
 * @param longestHours of the longest
 */
public record Gaps(long count, double hours, double longestHours) {
    static final Gaps NONE = new Gaps(0, 0, 0);

    Gaps and(double more) {
        return new Gaps(count + 1, hours + more, Math.max(longestHours, more));
    }
}
