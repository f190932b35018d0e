package fairgrain.design;

import fairgrain.clearance.BoardMovement;
import fairgrain.clearance.Figure;
import fairgrain.clearance.GapFit;
import fairgrain.clearance.LengthMovement;
import fairgrain.clearance.MovingWood;
import fairgrain.clearance.Reveal;
import fairgrain.finding.Question;
import fairgrain.part.Board;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A board whose movement is asked for.
 *
 * @param room what it has to swell into; null if not said
 * @param figure how its grain runs
 * @param length along the grain, if that movement is asked for too
 * @param roomInLength what it has to grow into along the grain
 * @param roomInThickness its play in the groove or housing that holds it
 */
public record SolidBoard(
        String name,
        Board board,
        Length width,
        @Nullable Length room,
        Figure figure,
        Optional<Length> length,
        Optional<Length> roomInLength,
        Optional<Length> roomInThickness)
        implements Part {
    @Override
    public List<Question<?>> questions(Design design) {
        List<Question<?>> all = new ArrayList<>();
        all.add(new BoardMovement(name, board, width, room, design.setting(board)));
        length.ifPresent(along ->
                all.add(new LengthMovement(name, board, figure, along, roomInLength.orElse(null), design.setting())));
        roomInThickness.ifPresent(play -> all.add(new GapFit(
                name,
                "in its thickness",
                GapFit.Kind.GAP,
                MovingWood.thick("board", board, 1),
                play,
                Reveal.entered(Length.ZERO, null),
                null,
                design.setting())));
        if (figure.isOdd()) {
            all.add(figure.flatness(name));
        }
        return List.copyOf(all);
    }
}
