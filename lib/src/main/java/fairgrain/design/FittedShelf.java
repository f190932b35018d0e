package fairgrain.design;

import fairgrain.clearance.ShelfDepthRoom;
import fairgrain.finding.Question;
import fairgrain.part.Board;
import fairgrain.quantity.Length;
import java.util.List;

/** A solid shelf between closed doors and a back. */
public record FittedShelf(String name, Board board, Length depth, Length inFront, Length behind) implements Part {
    @Override
    public List<Question<?>> questions(Design design) {
        return List.of(new ShelfDepthRoom(name, board, depth, inFront, behind, design.setting()).question());
    }
}
