package fairgrain.design;

import fairgrain.finding.Answer;
import fairgrain.finding.Finding;
import fairgrain.finding.Question;
import java.util.List;
import java.util.Optional;

/** A question with its answer in numbers and in words, and the part that asks it of itself. */
public record Asked<A extends Answer>(Part by, Question<A> question, A answer, List<Finding> findings) {
    public Asked {
        findings = List.copyOf(findings);
    }

    static <A extends Answer> Asked<A> of(Part by, Question<A> question) {
        return new Asked<>(by, question, question.answer(), question.findings());
    }

    static <A extends Answer> Asked<A> briefly(Part by, Question<A> question) {
        return new Asked<>(by, question, question.answer(), question.brief());
    }

    /** Where the answer is acted on. */
    public Workplace where() {
        return by.where();
    }

    /** Where it stands on the way of a load; empty if it carries nothing. */
    public Optional<Carries> carries() {
        return by.carries(question);
    }
}
