package fairgrain.finding;

import fairgrain.quantity.Quantity;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The answer to one question about one part, in words. Flat and whole; lists are empty rather than missing. The verdict is
 * derived, never set.
 *
 * @param part the part, as the maker calls it
 * @param question what was asked
 * @param sizes what to act on, rounded to the safe side
 * @param outcomes the checks, planned and expected
 * @param missing what must be known first; if any, the finding is not judged
 * @param why one plain sentence
 * @param notes what else the maker should know, a sentence each
 * @param remedies what would mend it, least change first; asked again, each holds
 * @param evidence what the answer rests on
 * @param cautions what must be said wherever this is acted on
 */
public record Finding(
        String part,
        String question,
        List<Size> sizes,
        List<Outcome> outcomes,
        List<Missing> missing,
        Words why,
        List<Words> notes,
        List<Remedy> remedies,
        Evidence evidence,
        Set<Caution> cautions) {

    public Finding {
        sizes = List.copyOf(sizes);
        outcomes = List.copyOf(outcomes);
        missing = List.copyOf(missing);
        notes = List.copyOf(notes);
        remedies = List.copyOf(remedies);
        cautions = Set.copyOf(cautions);
        if (outcomes.isEmpty() && missing.isEmpty()) {
            throw new IllegalArgumentException(
                    "a finding needs a check or says what is missing: " + part + ", " + question);
        }
    }

    /** Something fails: fails. Else something is missing: not judged. Else the worst check. */
    public Verdict verdict() {
        Verdict checked = outcomes.stream().map(Outcome::verdict).reduce(Verdict.HOLDS, Verdict::worse);
        return missing.isEmpty() ? checked : checked.worse(Verdict.NOT_JUDGED);
    }

    public static Draft about(String part, String question, Words why, Evidence evidence) {
        return new Draft(part, question, why, evidence);
    }

    /** A finding while it is being written. */
    public static final class Draft {
        private final String part;
        private final String question;
        private final Words why;
        private final List<Size> sizes = new ArrayList<>();
        private final List<Outcome> outcomes = new ArrayList<>();
        private final List<Missing> missing = new ArrayList<>();
        private final List<Words> notes = new ArrayList<>();
        private final List<Remedy> remedies = new ArrayList<>();
        private final Set<Caution> cautions = EnumSet.noneOf(Caution.class);
        private Evidence evidence;

        private Draft(String part, String question, Words why, Evidence evidence) {
            this.part = part;
            this.question = question;
            this.why = why;
            this.evidence = evidence;
        }

        public Draft size(String what, Quantity value) {
            sizes.add(new Size(what, value));
            return this;
        }

        public Draft outcomes(List<Outcome> more) {
            outcomes.addAll(more);
            return this;
        }

        public Draft missing(List<Missing> more) {
            missing.addAll(more);
            return this;
        }

        public Draft missing(String what, String todo) {
            missing.add(new Missing(what, todo));
            return this;
        }

        public Draft note(String sentence, Quantity... numbers) {
            notes.add(Words.of(sentence, numbers));
            return this;
        }

        public Draft note(Words words) {
            notes.add(words);
            return this;
        }

        public Draft remedies(List<Remedy> more) {
            remedies.addAll(more);
            return this;
        }

        public Draft evidence(Citation... more) {
            evidence = evidence.and(more);
            return this;
        }

        public Draft evidence(Evidence more) {
            evidence = evidence.and(more);
            return this;
        }

        public Draft cautions(Caution... more) {
            cautions.addAll(List.of(more));
            return this;
        }

        public Finding done() {
            return new Finding(part, question, sizes, outcomes, missing, why, notes, remedies, evidence, cautions);
        }
    }
}
