package fairgrain.hanging;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.List;
import java.util.Optional;

/**
 * Keyhole plates, hooks or brackets on a case, with values of their maker for one of them as it is fixed to such a case.
 *
 * @param name what their maker calls them
 * @param at their places from the left end of the case
 * @param height above its lower edge
 * @param down what one carries downward
 * @param out what one carries away from the wall; empty if the maker gives none
 * @param given what these values are
 * @param factor what they are divided by
 */
public record Hangers(
        String name,
        List<Length> at,
        Length height,
        Force down,
        Optional<Force> out,
        DeclaredScrew.Given given,
        double factor) {
    public static final Citation SOURCE = Citation.of("maker", "declared values of a hanger", Basis.DECLARED);
    /** 4 on a mean of tests; 1.5 by 1.5 on a characteristic value. */
    public static final Citation FACTORS = Citation.of(
            "own", "divisors of hangers: 4 on a mean, 1.5 by 1.5 on characteristic values", Basis.JUDGEMENT);

    public static final Limits FACTOR = new Limits("divisor of the hangers' values", 1, 20, "(a ratio)");

    public Hangers {
        at = at.stream().sorted().distinct().toList();
        if (at.size() < 2) {
            throw new IllegalArgumentException("a case hangs on two hangers at least, side by side");
        }
        Row.HEIGHT.check(height);
        DeclaredScrew.VALUE.check(down);
        out.ifPresent(DeclaredScrew.VALUE::check);
        FACTOR.check(factor);
        if (factor < divisor(given) * (1 - 1e-9)) {
            throw new IllegalArgumentException("the factor of " + given.word() + " values of hangers must be at least "
                    + divisor(given) + ", but was " + factor);
        }
    }

    /** What such a value is divided by, unless a larger divisor is entered. */
    public static double divisor(DeclaredScrew.Given given) {
        return switch (given) {
            case ULTIMATE -> 4;
            case ALLOWABLE -> 1;
            case CHARACTERISTIC -> 1.5 * 1.5;
        };
    }

    Evidence evidence() {
        return Evidence.of(SOURCE, FACTORS);
    }

    public Hangers at(List<Length> others) {
        return new Hangers(name, others, height, down, out, given, factor);
    }
}
