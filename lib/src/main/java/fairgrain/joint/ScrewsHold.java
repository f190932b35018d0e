package fairgrain.joint;

import fairgrain.fastener.CombinedLoad;
import fairgrain.fastener.HeadPullThrough;
import fairgrain.fastener.LoadDuration;
import fairgrain.finding.Answer;
import fairgrain.finding.Caution;
import fairgrain.finding.Check;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Model;
import fairgrain.finding.Outcome;
import fairgrain.finding.Question;
import fairgrain.finding.Remedy;
import fairgrain.finding.Spread;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Do screws through one piece into another, butted or laid on each other, carry what is asked of them for good?
 *
 * @param fit one of them
 * @param number of them that share the load alike
 * @param sideways load across all of them together
 * @param pull load along all of them together
 * @param damp whether the wood is wetter than 19 % for months
 */
public record ScrewsHold(ScrewFit fit, int number, Force sideways, Force pull, boolean damp)
        implements Question<ScrewsHold.Held> {
    public static final Limits NUMBER = new Limits("number of screws", 1, 100, "");
    public static final Limits LOAD = new Limits("load on screws", 0, 20000, "N");

    private static final int MOST = 24;

    public ScrewsHold {
        NUMBER.check(number);
        LOAD.check(sideways);
        LOAD.check(pull);
    }

    /**
     * The screws in numbers, for good.
     *
     * @param mayCarrySideways all of them together; nothing where it is not known
     * @param mayPull all of them together, by thread and head; nothing where it is not known
     */
    public record Held(Force mayCarrySideways, Force mayPull, List<Check> checks) implements Answer {
        public Held {
            checks = List.copyOf(checks);
        }
    }

    @Override
    public String part() {
        return fit.part();
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
        ScrewedTogether one = fit.together();
        double z = one.missingSideways().isEmpty() ? number * forGood() * one.sideways() : 0;
        double w = one.missingPull().isEmpty() ? number * forGood() * one.pull() : 0;
        List<Check> checks = new ArrayList<>();
        boolean across = sideways.newtons() > 0;
        boolean along = pull.newtons() > 0;
        if (across && z > 0) {
            checks.add(Check.of(
                    "load across the screws, against what they may carry for good",
                    sideways.newtons(),
                    z,
                    Dimension.FORCE));
        }
        if (along && w > 0) {
            checks.add(Check.of(
                    "pull along the screws, against what thread and head may carry for good",
                    pull.newtons(),
                    w,
                    Dimension.FORCE));
        }
        if (across && along && z > 0 && w > 0) {
            checks.add(Check.of(
                    "use of the screws by load and pull together, against all of it",
                    CombinedLoad.straightLine(sideways.newtons(), pull.newtons(), z, w),
                    1,
                    Dimension.RATIO));
        }
        return new Held(Force.newtons(z), Force.newtons(w), checks);
    }

    private double forGood() {
        return LoadDuration.PERMANENT.factor() * (damp ? Share.DAMP.value() : 1);
    }

    /** The same in a place as damp as this. */
    public ScrewsHold where(double dampest) {
        return new ScrewsHold(fit, number, sideways, pull, InDamp.isDamp(dampest));
    }

    private List<Missing> missing() {
        ScrewedTogether one = fit.together();
        List<Missing> none = List.of();
        return Stream.concat(
                        (sideways.newtons() > 0 ? one.missingSideways() : none).stream(),
                        (pull.newtons() > 0 ? one.missingPull() : none).stream())
                .distinct()
                .toList();
    }

    @Override
    public List<Finding> findings() {
        Held held = answer();
        List<Outcome> outcomes = held.checks().stream().map(Outcome::certain).toList();
        Finding.Draft draft = Finding.about(part(), "do these screws carry their load", words(held), evidence())
                .outcomes(outcomes)
                .missing(missing())
                .cautions(Caution.DRY_SOUND_WOOD, Caution.ASSUMED_CONTENTS);
        if (damp) {
            draft.note(
                    "The wood may be wetter than 19 % for months: two thirds are counted, and screws must not rust.");
        }
        fit.together().depthNotes().forEach(note -> draft.note(note));
        if (pull.newtons() > 0) {
            draft.note(
                    "The head is reckoned by a rule for round heads, the wood that a countersink takes away left out:"
                            + " put washers under the heads where much depends on them.");
        }
        if (outcomes.stream().anyMatch(o -> o.verdict() == Verdict.FAILS)) {
            draft.remedies(cures());
        }
        return List.of(draft.done());
    }

    private Words words(Held held) {
        String they = number + " " + fit.screw().name() + (number == 1 ? "" : "s");
        String told = held.mayPull().newtons() > 0
                ? "a pull of {} along themselves"
                : "no pull along themselves that is known";
        Words pulled = held.mayPull().newtons() > 0
                ? Words.of(" and " + told + " for good.", held.mayPull())
                : Words.of(" and " + told + ".");
        return held.mayCarrySideways().newtons() > 0
                ? new Words(
                        they + " may carry {} sideways" + pulled.sentence(),
                        Stream.concat(Stream.of(held.mayCarrySideways()), pulled.numbers().stream())
                                .toList())
                : new Words(they + " may carry nothing sideways that is known" + pulled.sentence(), pulled.numbers());
    }

    private List<Remedy> cures() {
        return IntStream.rangeClosed(number + 1, MOST)
                .mapToObj(more -> new ScrewsHold(fit, more, sideways, pull, damp))
                .filter(more -> more.missing().isEmpty())
                .filter(more -> more.answer().checks().stream().allMatch(Check::holds))
                .findFirst()
                .map(more -> new Remedy(Words.of("Use " + more.number() + " of them."), more))
                .stream()
                .toList();
    }

    private Evidence evidence() {
        Evidence all = fit.together().evidence().and(damp ? Share.DAMP.source() : LoadDuration.SOURCE);
        return pull.newtons() > 0 ? all.and(HeadPullThrough.SOURCE, CombinedLoad.STRAIGHT_LINE_SOURCE) : all;
    }
}
