package fairgrain.design;

import fairgrain.finding.Question;
import java.util.List;

/** A part of a piece: it knows which questions to ask of itself. */
public interface Part {
    /** As the maker calls it. */
    String name();

    List<Question<?>> questions(Design design);
}
