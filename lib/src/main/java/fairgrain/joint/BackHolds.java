package fairgrain.joint;

import fairgrain.fastener.CombinedLoad;
import fairgrain.fastener.HeadPullThrough;
import fairgrain.fastener.ReferenceWithdrawal;
import fairgrain.finding.Answer;
import fairgrain.finding.Caution;
import fairgrain.finding.Check;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Outcome;
import fairgrain.finding.Question;
import fairgrain.finding.Spread;
import fairgrain.finding.Words;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.List;

/**
 * Does the wall pull the back off the case, where the back alone carries it?
 *
 * @param part as the maker calls it
 * @param screws as many as lie within the height of the rail
 * @param pull of the wall at the top, heavy figure
 * @param weight of all that hangs, heavy figure
 */
public record BackHolds(String part, int screws, BackScrew screw, Force pull, Force weight)
        implements Question<BackHolds.Held> {

    public BackHolds {
        new Limits("number of screws", 1, 200, "").check(screws);
    }

    /**
     * The back in numbers.
     *
     * @param pullEach on one screw
     * @param weightEach across one screw
     */
    public record Held(Force pullEach, Force weightEach, List<Check> checks) implements Answer {
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
        Held held = held();
        return draw -> held;
    }

    private Held held() {
        double out = pull.newtons() / screws;
        double across = weight.newtons() / screws;
        List<Check> checks = new ArrayList<>();
        if (screw.missing().isEmpty()) {
            double axial = Math.min(screw.withdrawal(), screw.head());
            checks.add(Check.of(
                    "use of a screw between back and case, against all of it",
                    CombinedLoad.straightLine(across, out, screw.sideways(), axial),
                    1,
                    Dimension.RATIO));
        }
        return new Held(Force.newtons(out), Force.newtons(across), checks);
    }

    @Override
    public List<Finding> findings() {
        Held held = answer();
        Finding.Draft draft = Finding.about(
                        part,
                        "does the wall pull the back off the case",
                        Words.of(
                                "No rail is fixed to the sides, so the back alone ties the case to the wall: {} of"
                                        + " pull and {} of weight on each screw within the height of the rail.",
                                held.pullEach(),
                                held.weightEach()),
                        evidence())
                .outcomes(held.checks().stream().map(Outcome::certain).toList())
                .missing(screw.missing())
                .cautions(Caution.DRY_SOUND_WOOD, Caution.LOCAL_CODE);
        screw.into(draft);
        draft.note("Staples and brads count nothing here, nor does glue: it peels.");
        return List.of(draft.done());
    }

    private Evidence evidence() {
        return screw.evidence()
                .and(HeadPullThrough.SOURCE, ReferenceWithdrawal.SOURCE, CombinedLoad.STRAIGHT_LINE_SOURCE);
    }
}
