package fairgrain.clearance;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import org.jspecify.annotations.Nullable;

/**
 * The gap, or the overlap, that is wanted all year.
 *
 * @param least never less than this
 * @param most never more than this; null where it may be any
 * @param evidence where the two come from
 */
public record Reveal(Length least, @Nullable Length most, Evidence evidence) {
    public static final Limits LEAST = new Limits("least gap", 0, 0.03, "m");
    public static final Limits MOST = new Limits("widest gap", 0.0005, 0.05, "m");

    /** What a door still needs when all is swollen. */
    public static final Length USUAL_LEAST = Length.mm(0.5);

    /** The widest gap that the trade leaves at a door or a drawer front. */
    public static final Length USUAL_MOST = Length.inches(1 / 8.0);

    static final Citation STILL_FREE = Citation.of("own", "half a millimetre free at the damp end", Basis.JUDGEMENT);
    static final Citation TRADE =
            Citation.of("common-practice", "door gaps from 1/16 in to 1/8 in", Basis.COMMON_PRACTICE);

    /** Half a millimetre at the damp end and an eighth of an inch at the dry end. */
    public static final Reveal USUAL = new Reveal(USUAL_LEAST, USUAL_MOST, Evidence.of(STILL_FREE, TRADE));

    public Reveal {
        LEAST.check(least);
        if (most != null) {
            MOST.check(most);
            if (least.compareTo(most) >= 0) {
                throw new IllegalArgumentException("the least gap must be less than the widest");
            }
        }
    }

    /** As the maker wants it. */
    public static Reveal entered(Length least, @Nullable Length most) {
        return new Reveal(
                least, most, Evidence.of(Citation.of("maker", "the gap that is wanted all year", Basis.ENTERED)));
    }

    Reveal most(Length other) {
        return new Reveal(least, other, evidence);
    }
}
