package fairgrain.design;

import fairgrain.clearance.BoardMovement;
import fairgrain.finding.Question;
import fairgrain.part.Board;
import fairgrain.quantity.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A board whose movement is asked for.
 *
 * @param room what it has to swell into; null if not said
 */
public record SolidBoard(
        String name, Board board, Length width, @Nullable Length room) implements Part {
    @Override
    public List<Question<?>> questions(Design design) {
        return List.of(new BoardMovement(name, board, width, room, design.setting()));
    }
}
