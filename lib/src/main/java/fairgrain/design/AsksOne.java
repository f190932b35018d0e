package fairgrain.design;

import fairgrain.finding.Question;
import java.util.List;

/** A part of which one thing is asked. */
public record AsksOne(Question<?> question) implements Part {
    @Override
    public String name() {
        return question.part();
    }

    @Override
    public List<Question<?>> questions(Design design) {
        return List.of(question);
    }
}
