package fairgrain.design;

import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Caution;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Question;
import fairgrain.finding.Unasked;
import fairgrain.finding.Verdict;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;

/** A question with its answer in numbers and in words, and the part that asks it of itself. */
public record Asked<A extends Answer>(Part by, Question<A> question, A answer, List<Finding> findings) {
    private static final Citation REACH = Citation.of("own", "beyond the guards of the formulas", Basis.JUDGEMENT);

    public Asked {
        findings = List.copyOf(findings);
    }

    static Asked<?> of(Part by, Question<?> question) {
        return of(by, question, false);
    }

    /** With findings in brief. */
    static Asked<?> briefly(Part by, Question<?> question) {
        return of(by, question, true);
    }

    /** A question that leads beyond what a formula was made for is not judged, and the others still are. */
    private static Asked<?> of(Part by, Question<?> question, boolean brief) {
        try {
            return answered(by, question, brief);
        } catch (IllegalArgumentException e) { // of a guard
            return answered(by, beyond(question.part(), String.valueOf(e.getMessage())), brief);
        }
    }

    private static <A extends Answer> Asked<A> answered(Part by, Question<A> question, boolean brief) {
        return new Asked<>(by, question, question.answer(), brief ? question.brief() : question.findings());
    }

    private static Question<?> beyond(String part, String rule) {
        Missing reach = new Missing("a formula that reaches so far", "mend the sizes, or test it: " + rule);
        // which of the cautions it would have told is not known, so all of them stand
        return new Unasked(
                part, "does a formula reach so far", List.of(reach), Evidence.of(REACH), EnumSet.allOf(Caution.class));
    }

    /** The worst of its findings. */
    public Verdict verdict() {
        return findings.stream().map(Finding::verdict).reduce(Verdict::worse).orElse(Verdict.NOT_JUDGED);
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
