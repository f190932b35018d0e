package fairgrain.finding;

import java.util.List;
import java.util.Set;

/** A question that cannot be put into numbers yet, because the design leaves something out. Never judged. */
public record Unasked(String part, String question, List<Missing> missing, Evidence evidence, Set<Caution> cautions)
        implements Question<Unasked.None> {
    public Unasked {
        missing = List.copyOf(missing);
        cautions = Set.copyOf(cautions);
    }

    /** No numbers. */
    public record None() implements Answer {
        @Override
        public List<Check> checks() {
            return List.of();
        }
    }

    @Override
    public List<Spread> spreads() {
        return List.of();
    }

    @Override
    public Model<None> model() {
        return draw -> new None();
    }

    @Override
    public List<Finding> findings() {
        return List.of(Finding.about(part, question, Words.of("This cannot be reckoned yet."), evidence)
                .missing(missing)
                .cautions(cautions.toArray(Caution[]::new))
                .done());
    }
}
