package fairgrain.design;

import fairgrain.finding.Check;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Outcome;
import fairgrain.finding.Verdict;
import fairgrain.quantity.Dimension;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One link of the way that a load takes: what is asked of it and what it may carry.
 *
 * @param part as the maker calls it
 * @param governing its check that is nearest to its limit; empty if none can be made
 * @param missing what must be known first; if any, the link is not judged unless it fails already
 * @param told what was found of it; empty if the design says nothing of it
 */
public record Link(
        Stage stage, String part, Optional<Outcome> governing, List<Missing> missing, Optional<Finding> told) {
    private static final Missing STRENGTH = new Missing(
            "how strong it is", "use a material whose strength and its basis are in the table, or have it tested");

    public Link {
        missing = List.copyOf(missing);
        if (governing.isEmpty() && missing.isEmpty()) {
            throw new IllegalArgumentException("a link needs a check or says what is missing: " + part);
        }
    }

    /** Of what was answered; sag is no matter of carrying, and a distance counts only where it is too short. */
    static Link of(Stage stage, Finding finding) {
        List<Outcome> loads = finding.outcomes().stream()
                .filter(outcome -> outcome.planned().dimension() != Dimension.LENGTH)
                .toList();
        List<Outcome> tooShort = finding.outcomes().stream()
                .filter(outcome -> outcome.planned().dimension() == Dimension.LENGTH && stage != Stage.SHELF)
                .filter(outcome -> !outcome.planned().holds())
                .toList();
        List<Missing> missing = loads.isEmpty() && finding.missing().isEmpty() ? List.of(STRENGTH) : finding.missing();
        return new Link(
                stage, finding.part(), nearest(tooShort).or(() -> nearest(loads)), missing, Optional.of(finding));
    }

    /** Of a part of which the design does not say how it carries. */
    static Link untold(Stage stage, String part) {
        return new Link(stage, part, Optional.empty(), List.of(stage.missing()), Optional.empty());
    }

    static Optional<Outcome> nearest(List<Outcome> outcomes) {
        return outcomes.stream().min(Comparator.comparingDouble(outcome -> spare(outcome.planned())));
    }

    /** How many times what is asked it could carry, the factor that is required taken off. */
    public double spare() {
        return governing.map(outcome -> spare(outcome.planned())).orElse(Double.NaN);
    }

    static double spare(Check planned) {
        return planned.factor() / planned.required();
    }

    public Verdict verdict() {
        Verdict checked = governing.map(Outcome::verdict).orElse(Verdict.NOT_JUDGED);
        return missing.isEmpty() ? checked : checked.worse(Verdict.NOT_JUDGED);
    }
}
