package fairgrain.design;

import fairgrain.finding.Answer;
import fairgrain.finding.Finding;
import fairgrain.finding.Question;
import java.util.List;

/** A question with its answer in numbers and in words. */
public record Asked<A extends Answer>(Question<A> question, A answer, List<Finding> findings) {
    static <A extends Answer> Asked<A> of(Question<A> question) {
        return new Asked<>(question, question.answer(), question.findings());
    }
}
