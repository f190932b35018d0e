package fairgrain.clearance;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.UnitSystem;

/**
 * How the size of a piece follows from its opening and the gaps left around it: pieces × size + gaps × gap = opening + beyond.
 *
 * @param opening as measured
 * @param beyond what the pieces cover beyond the opening by a fixed overlap; 0 for pieces inside it
 * @param gaps how many gaps lie in a row; below zero for overlaps
 * @param pieces how many pieces lie in a row
 * @param says the size, in the maker's words
 */
public record Fitted(Length opening, Length beyond, int gaps, int pieces, String says) {
    public static final Limits OPENING = new Limits("opening", 0.02, 4, "m");

    private static final Length FINE_INCHES = Length.inches(1 / 64.0);
    private static final Length FINE_MILLIMETRES = Length.mm(0.2);

    public Fitted {
        OPENING.check(opening);
    }

    /** The size of each piece. */
    Length size(Length gap) {
        return opening.plus(beyond).minus(gap.times(gaps)).times(1.0 / pieces);
    }

    /** The gap that pieces of this size leave. */
    Length gap(Length size) {
        return opening.plus(beyond).minus(size.times(pieces)).times(1.0 / gaps);
    }

    /** Finer than boards are cut to: an edge is planed to its gap. */
    static ShopRule fine(ShopRule rule) {
        return new ShopRule(rule.system(), rule.system() == UnitSystem.INCHES ? FINE_INCHES : FINE_MILLIMETRES);
    }
}
