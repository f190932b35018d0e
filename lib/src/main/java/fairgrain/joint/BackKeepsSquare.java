package fairgrain.joint;

import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Caution;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Model;
import fairgrain.finding.Outcome;
import fairgrain.finding.Question;
import fairgrain.finding.Remedy;
import fairgrain.finding.Spread;
import fairgrain.finding.Words;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.List;

/**
 * Do the screws all round a sheet back keep the case square, as if its corners were hinges?
 *
 * @param part as the maker calls it
 * @param apart from screw to screw, on all four sides
 * @param sheet whether the back is a sheet; solid wood moves, and keeps nothing square
 * @param width of the back
 * @param weight of all that hangs, heavy figure
 */
public record BackKeepsSquare(String part, BackScrew screw, Length apart, boolean sheet, Length width, Force weight)
        implements Question<BackKeepsSquare.Held> {
    public static final Limits APART = new Limits("distance between screws", 0.02, 0.6, "m");

    static final Citation PUSH = Citation.of(
            "own",
            "somebody leans sideways on the foot of a case, and a tenth of its weight for a case out of plumb",
            Basis.JUDGEMENT);

    private static final double LEANS = 200; // N
    private static final double OUT_OF_PLUMB = 0.1;
    private static final List<Length> CLOSER =
            List.of(Length.mm(300), Length.mm(200), Length.mm(150), Length.mm(100), Length.mm(75), Length.mm(50));

    public BackKeepsSquare {
        APART.check(apart);
    }

    /** The back in numbers. */
    public record Held(Force push, Force each, List<Check> checks) implements Answer {
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
        double push = LEANS + OUT_OF_PLUMB * weight.newtons();
        double each = BackShear.perScrew(push, width.metres(), apart.metres());
        List<Check> checks = missing().isEmpty()
                ? List.of(Check.of("load across a screw of the back", each, screw.sideways(), Dimension.FORCE))
                : List.of();
        Held held = new Held(Force.newtons(push), Force.newtons(each), checks);
        return draw -> held;
    }

    private List<Missing> missing() {
        List<Missing> all = new ArrayList<>(screw.missingSideways());
        if (!sheet) {
            all.add(new Missing(
                    "what keeps the case square: a back of solid wood must be free to move, so it does not",
                    "use a sheet for the back, or rely on the corners of the case"));
        }
        return all;
    }

    @Override
    public List<Finding> findings() {
        Held held = answer();
        Finding.Draft draft = Finding.about(
                        part,
                        "does the back keep the case square",
                        Words.of(
                                "A push of {} sideways at its foot puts {} across each screw, {} apart all round.",
                                held.push(),
                                held.each(),
                                apart),
                        screw.evidence().and(BackShear.SOURCE, PUSH))
                .outcomes(held.checks().stream().map(Outcome::certain).toList())
                .missing(missing())
                .cautions(Caution.DRY_SOUND_WOOD);
        screw.into(draft);
        draft.note("The corners of the case are counted as hinges here: what their glue or screws give comes on top.");
        if (held.checks().stream().anyMatch(check -> !check.holds())) {
            draft.remedies(closer());
        }
        return List.of(draft.done());
    }

    private List<Remedy> closer() {
        return CLOSER.stream()
                .filter(other -> other.compareTo(apart) < 0)
                .map(other -> new BackKeepsSquare(part, screw, other, sheet, width, weight))
                .filter(other -> other.answer().checks().stream().allMatch(Check::holds))
                .limit(1)
                .map(other -> new Remedy(Words.of("Set the screws {} apart or less.", other.apart()), other))
                .toList();
    }
}
