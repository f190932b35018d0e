package fairgrain.clearance;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.part.Board;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;

/**
 * Has a solid shelf room to grow in depth, towards the closed doors and the back?
 *
 * @param part the shelf, as the maker calls it
 * @param board what it is made of
 * @param depth that day, front to back
 * @param inFront from its front edge to the closed doors
 * @param behind from its back edge to the back; 0 if it touches or is fixed there
 * @param in the setting
 */
public record ShelfDepthRoom(String part, Board board, Length depth, Length inFront, Length behind, Setting in) {
    public static final Limits ROOM = new Limits("room beside the shelf", 0, 0.1, "m");

    static final Citation LOOSE = Citation.of("own", "a shelf gives way to a door that is shut", Basis.JUDGEMENT);

    public ShelfDepthRoom {
        Board.WIDTH.check(depth);
        ROOM.check(inFront);
        ROOM.check(behind);
    }

    /** A loose shelf is pushed back by the door, so both rooms count together. */
    public GapFit question() {
        Reveal wanted = new Reveal(Length.ZERO, null, Evidence.of(LOOSE));
        MovingWood wood = MovingWood.wide("board", board, 1, depth);
        return new GapFit(part, "before and behind it", GapFit.Kind.GAP, wood, inFront.plus(behind), wanted, null, in);
    }
}
