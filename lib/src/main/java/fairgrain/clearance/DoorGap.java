package fairgrain.clearance;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Question;
import fairgrain.finding.Spread;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How big is a door to be made for its opening, so that it neither binds at the damp end nor gapes at the dry end? Or, hung
 * already, does its gap last?
 *
 * <p>Hinges hold their side, so all that the stiles swell closes the gap at the other edge; where two doors meet, four stiles
 * close one gap. The stiles run the whole height and hardly change along the grain; the edge of a rail may move out by up to its own swelling.
 * The case opening is taken as still: its sides move in thickness away from the door or along the grain.
 *
 * @param part the door, as the maker calls it
 * @param door with its opening
 * @param side its width or its height
 * @param hungGap the gap that day, if it hangs already; null while it is planned
 * @param made the size the design gives it; null if not said
 * @param in the setting
 */
public record DoorGap(
        String part,
        HungDoor door,
        Side side,
        @Nullable Length hungGap,
        @Nullable Length made,
        Setting in) implements Question<GapFit.Gap> {

    public static final Citation SOURCE = Citation.of("own", "a door held at its hinges", Basis.DERIVED);
    static final Citation OVERLAP_LEFT = Citation.of("own", "3 mm of overlap left at the dry end", Basis.JUDGEMENT);

    /** Which size is asked for. */
    public enum Side {
        WIDTH,
        HEIGHT
    }

    /** The gap that moves, set this wide that day. */
    GapFit fit(Length today) {
        DoorFrame frame = door.frame();
        if (side == Side.WIDTH) {
            MovingWood stiles = MovingWood.wide("stiles", frame.stile(), 2 * door.leaves(), frame.stileWidth());
            String where = door.pair() ? "where the doors meet" : "at the closing edge";
            if (door.overlapsAtClosingEdge()) {
                return new GapFit(part, where, GapFit.Kind.OVERLAP, stiles, today, overlap(), null, in);
            }
            ClosingEdge edge = door.inset()
                    ? new ClosingEdge(
                            frame.stile().thickness(), door.width().times(1.0 / door.leaves()), door.setBack())
                    : null;
            return new GapFit(part, where, GapFit.Kind.GAP, stiles, today, door.reveal(), edge, in);
        }
        MovingWood rails = MovingWood.wide("rails", frame.rail(), 1, frame.railWidth());
        String where = "at top and bottom";
        return door.inset()
                ? new GapFit(part, where, GapFit.Kind.GAP, rails, today, door.reveal(), null, in)
                : new GapFit(part, where, GapFit.Kind.OVERLAP, rails, today, overlap(), null, in);
    }

    private Reveal overlap() {
        return new Reveal(door.overlapWanted(), null, Evidence.of(OVERLAP_LEFT));
    }

    /** The door still to be made. */
    GapPlan plan() {
        GapFit unset = fit(door.inset() || (side == Side.WIDTH && door.pair()) ? Length.mm(2) : door.overlap());
        String door1 = door.pair() ? "make each door " : "make the door ";
        return side == Side.WIDTH
                ? new GapPlan(unset, across(door1 + "wide"), "how wide to make it", GapCures.NARROWEST)
                : new GapPlan(unset, along(door1 + "high"), "how high to make it", GapCures.NARROWEST);
    }

    private Fitted across(String says) {
        if (door.inset()) {
            return new Fitted(door.width(), Length.ZERO, door.leaves() + 1, door.leaves(), says);
        }
        return door.pair()
                ? new Fitted(door.width(), door.overlap().times(2), 1, 2, says)
                : new Fitted(door.width(), Length.ZERO, -2, 1, says);
    }

    private Fitted along(String says) {
        return new Fitted(door.height(), Length.ZERO, door.inset() ? 2 : -2, 1, says);
    }

    /** Overlay doors are made to the overlap that was said; only whether it lasts is asked. */
    boolean overlapGiven() {
        return !door.inset() && !(side == Side.WIDTH && door.pair());
    }

    /** The gap as it hangs, as its overlap is given, or as it is planned. */
    public GapFit set() {
        if (hungGap != null) {
            return fit(hungGap);
        }
        return overlapGiven() ? fit(door.overlap()) : plan().chosen();
    }

    /** The size of one door that day: as it hangs, or as it is to be made. */
    public Length size() {
        return hungGap != null && made != null ? made : plan().fitted().size(set().today());
    }

    /** How wide one door is, month by month; empty where the months of the room or the moisture on the day are not known. */
    public Optional<SizeByMonth> widthByMonth() {
        double day = in.day().estimate().expected();
        DoorFrame frame = door.frame();
        MovingWood stiles = MovingWood.wide("stiles", frame.stile(), 2, frame.stileWidth());
        return SizeByMonth.of(in, moisture -> size().plus(new Length(stiles.swelling(day, moisture, 0, 1))));
    }

    @Override
    public List<Spread> spreads() {
        return set().spreads();
    }

    @Override
    public Model<GapFit.Gap> model() {
        return set().model();
    }

    @Override
    public List<Finding> findings() {
        return List.of(new DoorWords(this).finding());
    }
}
