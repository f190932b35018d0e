package fairgrain.finding;

import fairgrain.quantity.Dimension;
import fairgrain.quantity.Require;

/**
 * What is asked of a part against what it can give. Both may be zero or below (a panel that will only shrink, a gap already
 * used up); NaN is refused.
 *
 * @param what what is compared, in the maker's words
 * @param demand what is asked, SI
 * @param capacity what can be given, SI
 * @param dimension of both
 * @param required how many times the demand the capacity must be, 1 or more
 */
public record Check(String what, double demand, double capacity, Dimension dimension, double required) {
    private static final double MOST = 100;
    private static final double CLOSE = 1.10; // within a tenth of the limit

    public Check {
        boolean sound = Double.isFinite(demand) && Double.isFinite(capacity) && required >= 1 && required <= MOST;
        if (!sound) { // only who is refused needs the names put together
            Require.finite("demand of " + what, demand, "SI");
            Require.finite("capacity of " + what, capacity, "SI");
            Require.between("required factor of " + what, required, 1, MOST, "(a ratio)");
        }
    }

    /** A check whose limit holds the safety already. */
    public static Check of(String what, double demand, double capacity, Dimension dimension) {
        return new Check(what, demand, capacity, dimension, 1);
    }

    /** Zero or more when it holds; smooth in demand and capacity, so that a search and a sensitivity can use it. */
    public double margin() {
        return capacity - (demand > 0 ? required * demand : demand);
    }

    /** Capacity over demand; without end where nothing is asked. */
    public double factor() {
        if (demand > 0) {
            return Math.max(0, capacity) / demand;
        }
        return margin() >= 0 ? Double.POSITIVE_INFINITY : 0;
    }

    public boolean holds() {
        return margin() >= 0;
    }

    public Verdict verdict() {
        if (!holds()) {
            return Verdict.FAILS;
        }
        return factor() < required * CLOSE ? Verdict.CLOSE : Verdict.HOLDS;
    }
}
