package fairgrain.design;

import fairgrain.finding.Question;
import java.util.List;
import java.util.Optional;

/** A part of a piece: it knows which questions to ask of itself. */
public interface Part {
    /** As the maker calls it. */
    String name();

    List<Question<?>> questions(Design design);

    /** What is cut for it, at its finished size; nothing where the design does not say enough. */
    default List<Piece> pieces(Design design) {
        return List.of();
    }

    /** What a question of its own says about the way of a load; empty if nothing. */
    default Optional<Carries> carries(Question<?> question) {
        return Optional.empty();
    }

    /** Where its answers are acted on. */
    default Workplace where() {
        return Workplace.BENCH;
    }
}
