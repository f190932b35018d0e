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
 * A screw with values of its maker, which stand in place of the formulas: for one screw of the length that is used.
 *
 * @param diameter nominal
 * @param withdrawal pull that its thread holds in the wall
 * @param sideways load along the wall
 * @param pullThrough pull that its head holds in the rail; empty if the maker gives none
 * @param given what the maker's values are
 * @param factor what they are divided by
 * @param leastGravity they hold for wood at least so dense
 * @param edge least distance from the edge of a stud by its maker; empty if none is given, then 2.5 diameters are asked for
 * @param acrossGap the sideways value holds with so much between rail and stud
 */
public record DeclaredScrew(
        String name,
        Length diameter,
        Force withdrawal,
        Force sideways,
        Optional<Force> pullThrough,
        Given given,
        double factor,
        double leastGravity,
        Optional<Length> edge,
        Length acrossGap)
        implements HangingScrew {
    public static final Citation SOURCE = Citation.of("maker", "declared values of a screw", Basis.DECLARED);
    /** 5.5 on a mean of tests is that of wood screws; 1.3 · 1.5/0.6 on a characteristic value is that of a load that stays. */
    public static final Citation FACTORS = Citation.of("own", "divisors of declared values", Basis.JUDGEMENT);

    public static final Limits DIAMETER = new Limits("screw diameter", 0.002, 0.02, "m");
    public static final Limits VALUE = new Limits("declared value", 10, 50_000, "N");
    public static final Limits FACTOR = new Limits("divisor of the declared values", 1, 20, "(a ratio)");

    public static final Limits EDGE = new Limits("edge distance of the screw", 0.003, 0.1, "m");

    /** What a maker's value is, and the least it is divided by. */
    public enum Given {
        ULTIMATE("ultimate", 5.5),
        ALLOWABLE("allowable", 1),
        CHARACTERISTIC("characteristic", 1.3 * 1.5 / 0.6);

        private final String word;
        private final double divisor;

        Given(String word, double divisor) {
            this.word = word;
            this.divisor = divisor;
        }

        public String word() {
            return word;
        }

        /** What such a value is divided by for a load that stays, unless a larger divisor is entered. */
        public double divisor() {
            return divisor;
        }
    }

    public DeclaredScrew {
        DIAMETER.check(diameter);
        VALUE.check(withdrawal);
        VALUE.check(sideways);
        pullThrough.ifPresent(VALUE::check);
        FACTOR.check(factor);
        edge.ifPresent(EDGE::check);
        new Limits("specific gravity that the values are for", 0.2, 1, "(a ratio)").check(leastGravity);
        new Limits("gap that the sideways value is for", 0, 0.1, "m").check(acrossGap);
        if (factor < given.divisor() * (1 - 1e-9)) {
            throw new IllegalArgumentException("the factor of " + given.word() + " values must be at least "
                    + Math.ceil(given.divisor() * 100) / 100 + ", but was " + factor);
        }
    }

    @Override
    public boolean lag() {
        return false;
    }

    @Override
    public List<Length> shopLengths() {
        return List.of();
    }

    @Override
    public Evidence evidence() {
        return Evidence.of(SOURCE, FACTORS);
    }
}
