package fairgrain.clearance;

import fairgrain.finding.Finding;
import fairgrain.finding.Outcome;
import fairgrain.finding.Reliability;
import fairgrain.finding.Words;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import fairgrain.quantity.MoistureContent;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.Window;
import java.util.List;

/** What {@link GapFit} and {@link GapPlan} say to a maker. */
final class GapWords {
    private final GapFit fit;
    private final GapFit.Gap expected;
    private final List<Outcome> outcomes;

    GapWords(GapFit fit) {
        this.fit = fit;
        this.expected = fit.answer();
        this.outcomes = Reliability.outcomes(fit, fit.in().deviations());
    }

    /** The piece is still to be made. */
    Finding.Draft planned(GapPlan plan) {
        Window window = plan.window();
        Length most = fit.wanted().most();
        boolean none = plan.set().isEmpty();
        String word = fit.kind().word();
        Finding.Draft draft = Finding.about(fit.part(), plan.asks(), why(window, none), fit.evidence());
        if (!none) {
            draft.size(plan.fitted().says(), plan.fitted().size(fit.today()));
            draft.size(word + " to leave " + fit.where() + " that day", fit.today());
        }
        draft.outcomes(outcomes);
        if (none) {
            draft.remedies(GapCures.of(plan));
        }
        if (most != null && !none) {
            draft.note(
                    "Wanted all year: from {} to {} " + fit.where() + ".",
                    fit.wanted().least(),
                    most);
        }
        expectedGaps(draft);
        return draft;
    }

    private Words why(Window window, boolean none) {
        String word = fit.kind().word();
        Length most = fit.wanted().most();
        String ends = fit.kind() == GapFit.Kind.GAP
                ? "neither closes to less than {} at the damp end nor gapes"
                : "neither shrinks to less than {} at the dry end nor grows";
        if (most == null) {
            return Words.of(
                    "The " + word + " " + fit.where() + " must be at least {} that day to be {} at its least.",
                    rule().up(window.least()),
                    fit.wanted().least());
        }
        Window marks = new Window(rule().up(window.least()), rule().down(window.most()));
        boolean between = marks.least().compareTo(marks.most()) >= 0; // no two marks in it: told as it is
        Window told = between ? window : marks;
        return none
                ? Words.of(
                        "No " + word + " " + fit.where()
                                + " will do: it would have to be at least {} that day to last at"
                                + " one end of the year, and at most {} for the other.",
                        window.least(),
                        window.most())
                : Words.of(
                        "Anything from {} to {} " + fit.where() + " that day " + ends + " to more than {}.",
                        told.least(),
                        told.most(),
                        fit.wanted().least(),
                        most);
    }

    /** The gap is set already, or given by what lies around it. */
    Finding asSet(String asks) {
        return setDraft(asks).done();
    }

    Finding.Draft setDraft(String asks) {
        Finding.Draft draft = Finding.about(fit.part(), asks, asSetWhy(), fit.evidence());
        Window window = GapPlan.window(fit);
        Length most = fit.wanted().most();
        if (most == null) {
            draft.size(fit.kind().word() + " needed " + fit.where() + " that day", rule().up(window.least()));
        } else if (!window.isEmpty()) {
            draft.size("least " + fit.kind().word() + " that day", rule().up(window.least()));
            draft.size("widest " + fit.kind().word() + " that day", rule().down(window.most()));
        }
        draft.outcomes(outcomes).remedies(GapCures.ofSet(fit));
        expectedGaps(draft);
        return draft;
    }

    private Words asSetWhy() {
        String word = fit.kind().word();
        Outcome least = outcomes.get(0);
        Length left = fit.wanted().least().plus(new Length(least.planned().margin()));
        if (!least.planned().holds()) {
            return left.metres() < 0
                    ? Words.of(
                            "It may bind " + fit.where() + ": it is then up to {} too big.", rule().up(left.times(-1)))
                    : Words.of(
                            "The " + word + " " + fit.where() + " may come down to {}, where {} is wanted.",
                            left,
                            fit.wanted().least());
        }
        Length most = fit.wanted().most();
        if (most != null && !outcomes.get(1).planned().holds()) {
            return Words.of(
                    "The " + word + " " + fit.where() + " may grow to {}, where {} is the most wanted.",
                    new Length(outcomes.get(1).planned().demand()),
                    most);
        }
        return outcomes.stream().allMatch(o -> o.planned().holds())
                ? Words.of(
                        "The " + word + " " + fit.where() + " stays at {} or more: for 19 years and boards in 20.",
                        left)
                : Words.of("The gap lasts, but the back of the closing edge may catch as the door swings.");
    }

    private void expectedGaps(Finding.Draft draft) {
        Setting in = fit.in();
        draft.note(CurveWords.of(fit.moving(), in));
        fit.byMonth().ifPresent(months -> months.cite(draft));
        MoistureContent dry = new MoistureContent(in.year().dry().expected());
        MoistureContent damp = new MoistureContent(in.year().damp().expected());
        if (in.day().known()) {
            draft.note(
                    "Expected " + fit.where() + ": {} that day at {}, {} at the dry end ({}), {} at the damp end ({}).",
                    fit.today(),
                    new MoistureContent(in.day().estimate().expected()),
                    expected.atDry(),
                    dry,
                    expected.atDamp(),
                    damp);
        } else {
            draft.note(
                    "The moisture that day is not known: it may be as dry as the dry end ({}) or as damp as the damp"
                            + " end ({}), and the worse of the two governs each check.",
                    dry,
                    damp);
        }
    }

    private ShopRule rule() {
        return Fitted.fine(fit.in().rule());
    }
}
