package fairgrain.clearance;

import static fairgrain.clearance.Panels.board;

import fairgrain.part.Board;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import org.jspecify.annotations.Nullable;

/** Gaps and doors to ask about. */
final class Gaps {
    private Gaps() {}

    static Board thick(Board board, double mm) {
        return new Board(board.wood(), board.shrinkage(), board.rings(), Length.mm(mm));
    }

    static DoorFrame frame(double tangential, double stileMm) {
        Board wood = thick(board(tangential / 2, tangential), 22);
        return new DoorFrame(wood, Length.mm(stileMm), wood, Length.mm(stileMm));
    }

    static HungDoor door(DoorFrame frame, HungDoor.Hung hung, boolean pair) {
        boolean inset = hung == HungDoor.Hung.INSET;
        return new HungDoor(
                frame,
                Length.mm(pair ? 800 : 400),
                Length.mm(760),
                hung,
                pair,
                inset ? Length.ZERO : Length.mm(10),
                Reveal.USUAL,
                inset ? Length.ZERO : HungDoor.USUAL_OVERLAP_WANTED,
                Length.mm(2),
                Length.ZERO);
    }

    static DoorGap width(HungDoor door, @Nullable Length hungGap, Setting in) {
        return new DoorGap("door", door, DoorGap.Side.WIDTH, hungGap, null, in);
    }

    static DoorGap height(HungDoor door, Setting in) {
        return new DoorGap("door", door, DoorGap.Side.HEIGHT, null, null, in);
    }

    static GapFit gap(Board board, double eachMm, double todayMm, Reveal wanted, Setting in) {
        return new GapFit(
                "door",
                "at the closing edge",
                GapFit.Kind.GAP,
                MovingWood.wide("stiles", board, 2, Length.mm(eachMm)),
                Length.mm(todayMm),
                wanted,
                null,
                in);
    }
}
