package fairgrain.shelf;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** The greatest or the least size at which a margin is still there, on the shop's steps. The margin may only change its sign once. */
final class HoldingSize {
    private static final int MOST_TRIES = 200;

    private final DoubleUnaryOperator margin;
    private final double least;
    private final double most;
    private final double step;

    /**
     * A search.
     *
     * @param margin zero or more where the size holds
     * @param step sizes are whole steps
     */
    HoldingSize(DoubleUnaryOperator margin, double least, double most, double step) {
        this.margin = margin;
        this.least = least;
        this.most = most;
        this.step = step;
    }

    /** The greatest that holds, where less always holds if more does; rounded down. */
    OptionalDouble greatest() {
        if (margin.applyAsDouble(least) < 0) {
            return OptionalDouble.empty();
        }
        double root = margin.applyAsDouble(most) >= 0 ? most : root();
        return rounded(Math.floor((root + accuracy()) / step) * step, -step);
    }

    /** The least that holds, where more always holds if less does; rounded up. */
    OptionalDouble least() {
        if (margin.applyAsDouble(most) < 0) {
            return OptionalDouble.empty();
        }
        double root = margin.applyAsDouble(least) >= 0 ? least : root();
        return rounded(Math.ceil((root - accuracy()) / step) * step, step);
    }

    /** A size on a step, or the next one if the root was found a hair too far. */
    private OptionalDouble rounded(double size, double next) {
        double held = allowed(size) && margin.applyAsDouble(size) >= 0 ? size : size + next;
        return allowed(held) && margin.applyAsDouble(held) >= 0 ? OptionalDouble.of(held) : OptionalDouble.empty();
    }

    private boolean allowed(double size) {
        return size >= least && size <= most;
    }

    private double root() {
        return new BrentSolver(accuracy()).solve(MOST_TRIES, margin::applyAsDouble, least, most);
    }

    private double accuracy() {
        return step / 1000;
    }
}
