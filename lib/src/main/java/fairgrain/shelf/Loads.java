package fairgrain.shelf;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a shelf carries.
 *
 * @param spread what stands evenly along it
 * @param filled the part on which that stands, from the left end support; null if all of it
 * @param row the edge that it stands flush with; null if it is spread over the depth
 * @param things single things
 * @param hand a force on the front edge at mid-span, for minutes: somebody leans on it; null if not asked
 */
public record Loads(
        ShelfLoad spread,
        @Nullable Filled filled,
        @Nullable Row row,
        List<Thing> things,
        @Nullable Force hand) {
    public static final Limits HAND = new Limits("force on the front edge", 0, 2000, "N");

    private static final Citation ENTERED = Citation.of("maker", "single things on the shelf", Basis.ENTERED);

    /** From where to where the shelf is filled, from its left end support. */
    public record Filled(Length from, Length to) {
        public Filled {
            if (!(to.metres() > from.metres())) {
                throw new IllegalArgumentException("the filled part must end to the right of where it begins");
            }
        }
    }

    /** Spread over the depth. */
    public Loads(ShelfLoad spread, @Nullable Filled filled, List<Thing> things, @Nullable Force hand) {
        this(spread, filled, null, things, hand);
    }

    public Loads {
        things = List.copyOf(things);
        if (hand != null) {
            HAND.check(hand);
        }
    }

    /** The same all along. */
    public static Loads even(ShelfLoad spread) {
        return new Loads(spread, null, null, List.of(), null);
    }

    /** Refuses what is off the shelf. */
    void on(Section section, Supports supports) {
        things.forEach(thing -> thing.on(section, supports));
        if (row != null) {
            row.on(section);
        }
        if (filled != null) {
            double from = 0 - supports.left().metres();
            double to = supports.span().plus(supports.right()).metres();
            if (!(filled.from().metres() >= from - 1e-9 && filled.to().metres() <= to + 1e-9)) {
                throw new IllegalArgumentException(
                        "the filled part is off the shelf, which reaches from " + from + " to " + to + " m");
            }
        }
    }

    /** Whether it is the same all along and nothing more. */
    boolean isEven() {
        return filled == null && things.isEmpty();
    }

    /** Whether it is the same all over. */
    boolean isPlain() {
        return isEven() && row == null;
    }

    /** All single things together [kg]. */
    public double thingsMass() {
        return things.stream().mapToDouble(thing -> thing.mass().kilograms()).sum();
    }

    /** So many times as much, spread and single things alike; a hand stays as strong. */
    public Loads times(double factor) {
        return new Loads(
                spread.times(factor),
                filled,
                row,
                things.stream().map(thing -> thing.times(factor)).toList(),
                hand);
    }

    Loads spread(ShelfLoad other) {
        return new Loads(other, filled, row, things, hand);
    }

    /** The same on another span, with every place along it moved in proportion. */
    Loads span(double by, double span) {
        return new Loads(
                spread,
                filled == null
                        ? null
                        : new Filled(filled.from().times(by), filled.to().times(by)),
                row,
                things.stream().map(thing -> thing.span(by, span)).toList(),
                hand);
    }

    Evidence evidence() {
        return things.isEmpty() ? spread.evidence() : spread.evidence().and(ENTERED);
    }
}
