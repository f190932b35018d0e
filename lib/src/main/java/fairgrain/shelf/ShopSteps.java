package fairgrain.shelf;

import java.util.OptionalInt;
import java.util.function.IntPredicate;

/**
 * The last whole step that holds, where fewer steps always hold if more do. A cheap guess finds the neighbourhood by halving, and the true
 * question is then asked step by step until it turns.
 *
 * @param likely a guess, off by little
 * @param holds the question itself
 */
record ShopSteps(IntPredicate likely, IntPredicate holds) {
    /** The greatest step from one to another that holds. */
    OptionalInt greatest(int from, int to) {
        if (from > to) {
            return OptionalInt.empty();
        }
        int in = from - 1;
        int out = to + 1;
        while (out - in > 1) {
            int middle = (in + out) >> 1;
            if (likely.test(middle)) {
                in = middle;
            } else {
                out = middle;
            }
        }
        int step = Math.max(from, in);
        if (holds.test(step)) {
            while (step < to && holds.test(step + 1)) {
                step++;
            }
            return OptionalInt.of(step);
        }
        while (step > from) {
            step--;
            if (holds.test(step)) {
                return OptionalInt.of(step);
            }
        }
        return OptionalInt.empty();
    }

    /** The least step from one to another that holds, where more steps always hold if fewer do. */
    OptionalInt least(int from, int to) {
        OptionalInt mirrored = new ShopSteps(n -> likely.test(-n), n -> holds.test(-n)).greatest(-to, -from);
        return mirrored.isEmpty() ? mirrored : OptionalInt.of(-mirrored.getAsInt());
    }
}
