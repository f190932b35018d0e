package fairgrain.design;

import fairgrain.clearance.TenonMovement;
import fairgrain.finding.Question;
import fairgrain.part.Board;
import fairgrain.quantity.Length;
import java.util.List;

/** A tenon in its mortise, whose movement is asked for. */
public record Tenon(
        String name,
        Board tenon,
        Length width,
        TenonMovement.Shape shape,
        Board mortised,
        Length depth,
        boolean through,
        Length proud)
        implements Part {
    @Override
    public List<Question<?>> questions(Design design) {
        return List.of(new TenonMovement(name, tenon, width, shape, mortised, depth, through, proud, design.setting()));
    }
}
