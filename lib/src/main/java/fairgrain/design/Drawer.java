package fairgrain.design;

import fairgrain.clearance.DrawerFit;
import fairgrain.clearance.Reveal;
import fairgrain.finding.Question;
import fairgrain.part.Board;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;

/** Drawers that are alike, and their openings. */
public record Drawer(
        String name, int count, Length width, Length height, Optional<Board> front, Optional<Board> side, Reveal reveal)
        implements Part {
    @Override
    public List<Question<?>> questions(Design design) {
        return new DrawerFit(name, front.orElse(null), side.orElse(null), width, height, reveal, design.setting())
                .questions();
    }
}
