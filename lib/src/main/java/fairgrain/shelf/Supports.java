package fairgrain.shelf;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How a shelf is held.
 *
 * @param ends how its ends are held
 * @param span from one end support to the other
 * @param pinsIn from the front edge to the front pins, and from the back edge to the rear ones; null if not said
 * @param back what holds its back edge
 * @param middle further supports under the whole depth, each from the left end support
 * @param brackets supports under single spots
 * @param left overhang beyond the left end support
 * @param right overhang beyond the right end support
 * @param bearing what the ends lie on; null if not said
 */
public record Supports(
        Support ends,
        Length span,
        @Nullable Length pinsIn,
        BackEdge back,
        List<Length> middle,
        List<Bracket> brackets,
        Length left,
        Length right,
        @Nullable Bearing bearing) {
    public static final Limits OVERHANG = new Limits("overhang", 0, 1, "m");
    public static final Limits PLACE = new Limits("place of the support", 0, 3, "m");

    private static final double NEAREST = 0.05; // m between two supports

    public Supports {
        ShelfSag.SPAN.check(span);
        OVERHANG.check(left);
        OVERHANG.check(right);
        middle = middle.stream().sorted().toList();
        brackets = List.copyOf(brackets);
        double before = 0;
        for (Length at : middle) {
            if (!(at.metres() >= before + NEAREST && at.metres() <= span.metres() - NEAREST)) {
                throw new IllegalArgumentException("a middle support must stand between the end supports, at least "
                        + NEAREST + " m from the next one, but is at " + at.metres() + " m of "
                        + span.metres() + " m");
            }
            before = at.metres();
        }
        for (Bracket bracket : brackets) {
            if (!(bracket.at().metres() >= NEAREST && bracket.at().metres() <= span.metres() - NEAREST)) {
                throw new IllegalArgumentException("a bracket must stand between the end supports, but is at "
                        + bracket.at().metres() + " m of " + span.metres() + " m");
            }
        }
        boolean across = back != BackEdge.FREE || !brackets.isEmpty();
        if (across && (left.metres() > 0 || right.metres() > 0)) {
            throw new IllegalArgumentException(
                    "an overhanging shelf with a held back edge or brackets is in no model here; leave the overhang"
                            + " out");
        }
        if (!brackets.isEmpty() && !middle.isEmpty()) {
            throw new IllegalArgumentException(
                    "a shelf with middle supports and brackets is in no model here; enter each bay as a shelf");
        }
    }

    /** Two ends, no more. */
    public static Supports at(Support ends, Length span) {
        return new Supports(ends, span, null, BackEdge.FREE, List.of(), List.of(), Length.ZERO, Length.ZERO, null);
    }

    /** Whether the shelf lies on its two ends only. */
    boolean isPlain() {
        return back == BackEdge.FREE && middle.isEmpty() && brackets.isEmpty() && overhang() == 0;
    }

    /** The longer overhang [m]. */
    double overhang() {
        return Math.max(left.metres(), right.metres());
    }

    /** Length of the board over all supports [m]. */
    public double length() {
        return left.metres() + span.metres() + right.metres();
    }

    /** Ends and middle supports, from the left end support [m]. */
    List<Double> stands() {
        List<Double> all = new ArrayList<>();
        all.add(0.0);
        middle.forEach(at -> all.add(at.metres()));
        all.add(span.metres());
        return all;
    }

    /** Longest distance between two neighbouring supports [m]. */
    double longestBay() {
        List<Double> stands = stands();
        double longest = 0;
        for (int i = 1; i < stands.size(); i++) {
            longest = Math.max(longest, stands.get(i) - stands.get(i - 1));
        }
        return longest;
    }

    /** The same on another span, with every place along it moved in proportion. */
    Supports span(Length other) {
        double by = other.metres() / span.metres();
        return new Supports(
                ends,
                other,
                pinsIn,
                back,
                middle.stream().map(at -> at.times(by)).toList(),
                brackets.stream()
                        .map(b -> new Bracket(b.at().times(by), b.fromFront()))
                        .toList(),
                left,
                right,
                bearing);
    }

    Supports middle(List<Length> other) {
        return new Supports(ends, span, pinsIn, back, other, brackets, left, right, bearing);
    }
}
