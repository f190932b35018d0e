package fairgrain.design;

import fairgrain.finding.Answer;
import fairgrain.finding.Finding;
import fairgrain.finding.Question;
import java.util.List;

/** A question with its answer in numbers and in words, and where it is acted on. */
public record Asked<A extends Answer>(Workplace where, Question<A> question, A answer, List<Finding> findings) {
    static <A extends Answer> Asked<A> of(Workplace where, Question<A> question) {
        return new Asked<>(where, question, question.answer(), question.findings());
    }
}
