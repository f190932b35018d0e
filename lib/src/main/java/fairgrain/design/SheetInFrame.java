package fairgrain.design;

import fairgrain.clearance.SheetFit;
import fairgrain.finding.Evidence;
import fairgrain.finding.Missing;
import fairgrain.finding.Question;
import fairgrain.finding.Unasked;
import fairgrain.material.SheetMovement;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A sheet in the grooves of a frame, or let in as a back.
 *
 * @param moves empty if no table knows how much that kind of sheet grows
 * @param asCut empty if it is still to be cut
 */
public record SheetInFrame(
        String name,
        String sheet,
        Optional<SheetMovement> moves,
        Length across,
        Length deep,
        Length hold,
        Optional<Length> asCut)
        implements Part {
    @Override
    public List<Question<?>> questions(Design design) {
        if (moves.isEmpty()) {
            return List.of(new Unasked(
                    name,
                    "how big to cut the sheet",
                    List.of(new Missing(
                            "how much " + sheet + " grows with humidity",
                            "use a kind of sheet that stands in the table, such as plywood or mdf")),
                    Evidence.of(SheetFit.SOURCE),
                    Set.of()));
        }
        SheetFit planned = SheetFit.planned(name, sheet, moves.get(), across, deep, hold, design.setting());
        return List.of(
                asCut.map(size -> new SheetFit(name, sheet, moves.get(), across, deep, hold, size, design.setting()))
                        .orElse(planned));
    }
}
