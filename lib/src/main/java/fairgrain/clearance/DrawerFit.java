package fairgrain.clearance;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Question;
import fairgrain.part.Board;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A drawer and its opening. Front and sides lie with the grain along them, so they move in height; across the opening only the
 * thickness of the sides moves.
 *
 * @param part the drawer, as the maker calls it
 * @param front what an inset front is made of; null where the front lies over the opening
 * @param side what the sides are made of; null if not said
 * @param width of the opening
 * @param height of the opening
 * @param reveal wanted around the front
 * @param in the setting
 */
public record DrawerFit(
        String part,
        @Nullable Board front,
        @Nullable Board side,
        Length width,
        Length height,
        Reveal reveal,
        Setting in) {
    public static final Limits WIDTH = new Limits("width of the opening", 0.05, 2, "m");
    public static final Limits HEIGHT = new Limits("height of the opening", 0.02, 0.6, "m");

    static final Citation SIDE_PLAY = Citation.of("common-practice", "a side gap of 1/32 to 1/16 in", Basis.MEMORY);
    private static final Length SIDE_LEAST = Length.mm(0.3);
    private static final Length SIDE_MOST = Length.inches(3 / 32.0); // judgement: a mark more than the trade's

    public DrawerFit {
        WIDTH.check(width);
        HEIGHT.check(height);
    }

    /** One for the height of the front, one for that of the sides, one for the width of the box. */
    public List<Question<?>> questions() {
        List<Question<?>> all = new ArrayList<>();
        if (front != null) {
            MovingWood wood = MovingWood.wide("front", front, 1, height);
            all.add(plan(
                    wood, "above the front", reveal, 2, height, "make the front high", "how high to make its front"));
        }
        if (side != null) {
            MovingWood wood = MovingWood.wide("sides", side, 1, height);
            Reveal open = new Reveal(Reveal.USUAL_LEAST, null, Evidence.of(Reveal.STILL_FREE));
            all.add(plan(
                    wood, "above the sides", open, 1, height, "make the sides high", "how high to make its sides"));
            MovingWood thick = MovingWood.thick("sides", side, 1);
            Reveal play = new Reveal(SIDE_LEAST, SIDE_MOST, Evidence.of(SIDE_PLAY));
            all.add(plan(
                    thick, "at each side", play, 2, width, "make the box wide outside", "how wide to make its box"));
        }
        return List.copyOf(all);
    }

    private GapPlan plan(
            MovingWood wood, String where, Reveal wanted, int gaps, Length opening, String says, String asks) {
        GapFit unset = new GapFit(part, where, GapFit.Kind.GAP, wood, Length.mm(2), wanted, null, in);
        return new GapPlan(unset, new Fitted(opening, Length.ZERO, gaps, 1, says), asks, null);
    }
}
