package fairgrain.joint;

import fairgrain.fastener.BevelledStrip;
import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Caution;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Outcome;
import fairgrain.finding.Question;
import fairgrain.finding.Remedy;
import fairgrain.finding.Spread;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Does the short grain of a crest hold at its narrowest neck?
 *
 * @param part the crest, as the maker calls it
 * @param tensionAcross mean strength across the grain; empty if not known [Pa]
 * @param above from the neck to where it is pushed
 * @param neck width of the neck, along the grain
 * @param push of a hand that dusts it or steadies somebody
 */
public record CrestHolds(
        String part,
        String wood,
        OptionalDouble tensionAcross,
        Length above,
        Length neck,
        Length thickness,
        Force push,
        Evidence told)
        implements Question<CrestHolds.Held> {
    public static final Limits ABOVE = new Limits("height above the neck", 0.005, 0.5, "m");
    public static final Limits NECK = new Limits("width of the neck", 0.005, 1, "m");
    public static final Limits THICKNESS = new Limits("thickness of the crest", 0.003, 0.08, "m");
    public static final Limits PUSH = new Limits("push on the crest", 1, 1000, "N");

    static final Citation LIMIT = Citation.of("own", "5 % value of strength across the grain, by 2.1", Basis.JUDGEMENT);

    public CrestHolds {
        ABOVE.check(above);
        NECK.check(neck);
        THICKNESS.check(thickness);
        PUSH.check(push);
    }

    /** The neck in numbers. */
    public record Held(Amount stress, List<Check> checks) implements Answer {
        public Held {
            checks = List.copyOf(checks);
        }
    }

    @Override
    public List<Spread> spreads() {
        return List.of();
    }

    @Override
    public Model<Held> model() {
        double stress = ShortGrainNeck.stress(push.newtons(), above.metres(), neck.metres(), thickness.metres());
        List<Check> checks = new ArrayList<>();
        tensionAcross.ifPresent(strength -> checks.add(Check.of(
                "stress across the grain of the neck, against what it may bear",
                stress,
                BevelledStrip.crossGrainLimit(strength),
                Dimension.STRESS)));
        Held held = new Held(Amount.of(stress, Dimension.STRESS), checks);
        return draw -> held;
    }

    @Override
    public List<Finding> findings() {
        Held held = answer();
        List<Outcome> outcomes = held.checks().stream().map(Outcome::certain).toList();
        Finding.Draft draft = Finding.about(
                        part,
                        "does its short grain hold",
                        Words.of("A push of {} bends the short grain of its neck with {}.", push, held.stress()),
                        told.and(ShortGrainNeck.SOURCE, LIMIT))
                .outcomes(outcomes)
                .cautions(Caution.DRY_SOUND_WOOD)
                .note("Fix it from behind, one end fast and the others in slots, and never lift the piece by it.")
                .note("Round the corner from which the neck springs: a sharp one breaks sooner than is reckoned here.");
        if (tensionAcross.isEmpty()) {
            draft.missing(
                    "how strong " + wood + " is across its grain",
                    "choose a wood whose strength across the grain is in the table, or glue a tongue of long grain"
                            + " behind the neck");
        }
        if (outcomes.stream().anyMatch(o -> o.verdict() == Verdict.FAILS)) {
            wider(draft);
        }
        return List.of(draft.done());
    }

    private void wider(Finding.Draft draft) {
        Check check = answer().checks().get(0);
        double times = check.demand() / check.capacity();
        Length least = new Length(Math.ceil(neck.metres() * times * 1000 + 1e-9) / 1000);
        if (NECK.allow(least.metres())) {
            CrestHolds other = new CrestHolds(part, wood, tensionAcross, above, least, thickness, push, told);
            draft.remedies(List.of(new Remedy(Words.of("Leave the neck {} wide or more.", least), other)));
        }
    }
}
