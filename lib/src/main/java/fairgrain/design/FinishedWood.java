package fairgrain.design;

import fairgrain.clearance.FinishEffect;
import fairgrain.finding.Evidence;
import fairgrain.finding.Missing;
import fairgrain.finding.Question;
import fairgrain.finding.Unasked;
import fairgrain.part.Face;
import fairgrain.part.Finish;
import fairgrain.part.Response;
import fairgrain.place.MoistureYear;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the piece is finished with: asks what that does to its panels and boards, those alike once.
 *
 * @param both faces of every part alike; else the outside alone
 * @param behind the year of the air behind it, if not that of the room
 */
public record FinishedWood(Finish finish, boolean both, Optional<MoistureYear> behind) implements Part {
    @Override
    public String name() {
        return "finish";
    }

    @Override
    public List<Question<?>> questions(Design design) {
        return WidePiece.alike(design).stream()
                .<Question<?>>map(piece -> question(piece, design))
                .toList();
    }

    private Question<?> question(WidePiece piece, Design design) {
        Face front = new Face(finish);
        Face back = both ? front : Face.BARE;
        Optional<Response> known = Response.of(piece.board(), front, back);
        if (known.isEmpty()) {
            return new Unasked(
                    piece.name(),
                    "what its finish does",
                    List.of(new Missing(
                            "the density of " + piece.board().wood().name(),
                            "count it as bare, which moves most, and finish both faces alike")),
                    Evidence.of(FinishEffect.SOURCE),
                    Set.of());
        }
        return new FinishEffect(
                piece.name(),
                piece.board(),
                piece.width(),
                piece.framed(),
                front,
                back,
                known.get().gravity(),
                behind.orElse(design.setting().year()),
                design.setting());
    }
}
