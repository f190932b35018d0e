package fairgrain.shelf;

import java.util.OptionalInt;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;

/**
 * The last whole step that holds, where fewer steps always hold if more do. What is used of the limits goes nearly with a power of the size;
 * that leads to the neighbourhood in a few tries, and the true question is then asked until it holds.
 *
 * @param use the greatest part of a limit that is used, 1 where it just holds; never more than the true question makes it
 * @param power of the size, about; below zero where more of it helps
 * @param holds the question itself
 */
record ShopSteps(IntToDoubleFunction use, double power, IntPredicate holds) {
    private static final int GUESSES = 8; // then by halving

    /** The greatest step from one to another that holds; the search begins at a third one. */
    OptionalInt greatest(int from, int to, int start) {
        for (int step = likely(from, to, start); step >= from; step--) {
            if (holds.test(step)) {
                return OptionalInt.of(step);
            }
        }
        return OptionalInt.empty();
    }

    /** The least step from one to another that holds, where more steps always hold if fewer do. */
    OptionalInt least(int from, int to, int start) {
        OptionalInt mirrored =
                new ShopSteps(n -> use.applyAsDouble(-n), power, n -> holds.test(-n)).greatest(-to, -from, -start);
        return mirrored.isEmpty() ? mirrored : OptionalInt.of(-mirrored.getAsInt());
    }

    /** The greatest step that uses no more than the limits; one below the first if none does. */
    private int likely(int from, int to, int start) {
        int in = from - 1;
        int out = to + 1;
        int step = start;
        int last = 0;
        double lastUse = 0;
        double slope = power;
        for (int tries = 0; out - in > 1; tries++) {
            step = Math.min(Math.max(step, in + 1), out - 1);
            double now = use.applyAsDouble(step);
            if (now <= 1) {
                in = step;
            } else {
                out = step;
            }
            double found = Math.log(now / lastUse) / Math.log((double) step / last);
            slope = tries > 0 && Double.isFinite(found) && found != 0 ? found : slope;
            double guess = Math.floor(step * Math.pow(now, -1 / slope));
            last = step;
            lastUse = now;
            boolean lost = Double.isNaN(guess) || tries > GUESSES;
            step = lost ? (in + out) >> 1 : (int) Math.min(Math.max(guess, in + 1.0), out - 1.0);
        }
        return in;
    }
}
