package fairgrain.clearance;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Draw;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Outcome;
import fairgrain.finding.Reliability;
import fairgrain.finding.Words;
import fairgrain.part.Setting;
import fairgrain.part.Tongue;
import fairgrain.place.DayMoisture;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Length;
import fairgrain.quantity.MoistureContent;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.UnitSystem;
import fairgrain.quantity.Window;
import java.util.List;

/** What {@link PanelFit} and {@link PanelWidth} say to a maker. */
final class PanelWords {
    static final Citation SLIP_FIT = Citation.of("common-practice", "tongue a slip fit in its groove", Basis.JUDGEMENT);
    static final Citation END_GAP =
            Citation.of("common-practice", "1/16 in at each end of a panel", Basis.COMMON_PRACTICE);

    private static final Length SLIP = Length.mm(0.15); // between tongue and groove after finish, at the damp end
    static final Length SHOULDER_CLEAR = Length.mm(1); // between shoulder and frame at the damp end

    private final PanelFit fit;
    private final PanelFit.Fit expected;
    private final List<Outcome> outcomes;

    PanelWords(PanelFit fit) {
        this.fit = fit;
        this.expected = fit.answer();
        this.outcomes = Reliability.outcomes(fit, fit.in().deviations());
    }

    /** The panel is still to be cut. */
    Finding planned(PanelWidth plan) {
        Finding.Draft draft = draft(plan);
        if (noneWillDo(plan)) {
            draft.remedies(PanelCures.of(plan.uncut(), thickest()));
        } else {
            draft.remedies(PanelCures.ofEdge(fit, thickest()));
        }
        expectedWidths(draft);
        heldOrFree(draft, plan);
        knowingWouldWin(draft, plan);
        return draft.done();
    }

    /** Whether no width will do; the window may be so narrow that no mark of the rule lies in it. */
    private boolean noneWillDo(PanelWidth plan) {
        return !plan.window().contains(fit.width());
    }

    /** The same without cures and most notes. */
    Finding.Draft draft(PanelWidth plan) {
        Window window = plan.window();
        boolean none = noneWillDo(plan);
        Length gap = rule().down(expected.room().minus(fit.width()).times(0.5));
        Words why = none
                ? Words.of(
                        (window.isEmpty() ? "No width will do: it" : "No width that can be measured will do: it")
                                + " would have to be at least {} to stay in the groove at the dry end and at most {}"
                                + " not to bottom out at the damp end.",
                        window.least(),
                        window.most())
                : Words.of(
                        "Anything from {} to {} wide on the day of cutting neither bottoms out at the damp end nor"
                                + " loses {} of hold at the dry end.",
                        rule().up(window.least()),
                        rule().down(window.most()),
                        fit.wanted());
        Finding.Draft draft = Finding.about(fit.part(), "how wide to cut it", why, fit.evidence());
        if (!none) {
            draft.size("cut it across the grain", fit.width());
            fit.lengthToCut().ifPresent(length -> draft.size("cut it along the grain", length));
            draft.size("gap to leave at each side that day", gap);
        }
        draft.outcomes(outcomes);
        tongueSizes(draft);
        return draft;
    }

    /** The panel is cut already. */
    Finding asCut() {
        Outcome bottoming = outcomes.get(0);
        Outcome slipping = outcomes.get(1);
        Length tooWide = new Length(-bottoming.planned().margin());
        boolean wideEnough = bottoming.planned().holds() && slipping.planned().holds();
        Words why = wideEnough
                ? allYear()
                : bottoming.planned().holds()
                        ? Words.of(
                                "As cut it may draw out of its groove at the dry end: {} of hold is left where {} is"
                                        + " wanted.",
                                new Length(slipping.planned().capacity()),
                                fit.wanted())
                        : Words.of(
                                "As cut it may press on the groove floors at the damp end: it is then {} too wide.",
                                tooWide);
        Finding.Draft draft = Finding.about(fit.part(), "does it fit as cut", why, fit.evidence());
        draft.size(
                "gap at each side that day",
                rule().down(expected.room().minus(fit.width()).times(0.5)));
        if (!bottoming.planned().holds()) {
            draft.size("plane off in all, half from each edge", rule().up(tooWide));
            noteMoisture(
                    draft,
                    (fit.panel().spacer() == null ? "It touches the groove floors" : "It has squeezed its spacers flat")
                            + " at about {} moisture content.",
                    fit.tight().metres());
        }
        if (!slipping.planned().holds()) {
            double out = fit.panel().pinned()
                    ? fit.opening().across().metres()
                    : fit.opening()
                            .across()
                            .plus(fit.opening().groove().depth())
                            .metres();
            noteMoisture(draft, "It slips out of a groove at about {} moisture content.", out);
        }
        draft.outcomes(outcomes);
        if (fit.edge().isEmpty()) {
            draft.missing(
                    "how thick the panel is where it lies in the groove",
                    "measure its tongue and enter 'tongue' with thickness and length");
        }
        tongueSizes(draft);
        expectedWidths(draft);
        if (wideEnough) {
            draft.remedies(PanelCures.ofEdge(fit, thickest()));
        } else {
            draft.remedies(PanelCures.asCut(fit, thickest()));
        }
        return draft.done();
    }

    /** For a panel that is neither too wide nor too narrow. */
    private Words allYear() {
        boolean shoulder =
                fit.panel().tongue() != null && !outcomes.get(2).planned().holds();
        if (shoulder) {
            return Words.of("As cut it stays in its grooves, but its shoulder may press on the frame at the damp end.");
        }
        return outcomes.stream().allMatch(o -> o.planned().holds())
                ? Words.of("As cut it stays free in its grooves and stays in them all year.")
                : Words.of("As cut it stays in its grooves, but its edge may bind in them at the damp end.");
    }

    private void tongueSizes(Finding.Draft draft) {
        Length groove = fit.opening().groove().width();
        Tongue tongue = fit.panel().tongue();
        boolean fills = fit.panel().board().thickness().compareTo(groove) <= 0;
        if (tongue == null && fills) {
            draft.size("edge of the panel at most, thick", thickest());
        } else {
            draft.size("tongue at most, thick", thickest());
            Length deepest = fit.opening().groove().depth().plus(SHOULDER_CLEAR);
            draft.size("tongue at least, from edge to shoulder", rule().up(deepest));
        }
        draft.evidence(SLIP_FIT, END_GAP);
        Length shows = worstInSight();
        if (shows.metres() > 0) {
            draft.size("finish in from the sight line at least", rule().up(shows));
        }
        fit.edge()
                .filter(edge -> edge.compareTo(thickest()) > 0)
                .ifPresent(edge -> draft.note(
                        "An edge {} thick is tight in a groove {} wide at the damp end: plane it to {}.",
                        edge,
                        groove,
                        thickest()));
    }

    /** The thickest edge that is still a slip fit at the damp end. */
    private Length thickest() {
        Length groove = fit.opening().groove().width();
        return fine().down(groove.times(1 / thicknessAtDamp()).minus(SLIP));
    }

    private double thicknessAtDamp() {
        Setting in = fit.in();
        double day = in.day().known()
                ? in.day().estimate().expected()
                : in.year().dry().expected();
        return Math.max(
                1,
                fit.panel()
                        .board()
                        .thicknessRatio(
                                day,
                                in.year().damp().at(in.deviations()),
                                0,
                                1
                                        + in.deviations()
                                                * fit.panel()
                                                        .board()
                                                        .shrinkage()
                                                        .cv()));
    }

    private Length worstInSight() {
        Model<PanelFit.Fit> model = fit.model();
        Draw worst = Reliability.worst(model, fit.spreads(), 1, fit.in().deviations());
        return model.at(worst).comesIntoSight(fit.panel().pinned());
    }

    private void expectedWidths(Finding.Draft draft) {
        Setting in = fit.in();
        draft.note(CurveWords.of(fit.panel().board(), fit.width(), in));
        fit.byMonth().ifPresent(months -> months.cite(draft));
        if (in.day().known()) {
            draft.note(
                    "Expected: {} wide at {} when cut, {} at the dry end ({}), {} at the damp end ({}).",
                    fit.width(),
                    percent(in.day().estimate()),
                    expected.atDry(),
                    percent(in.year().dry()),
                    expected.atDamp(),
                    percent(in.year().damp()));
        } else {
            draft.note(
                    "The moisture when it is cut is not known: it may be as dry as the dry end ({}) or as damp as the"
                            + " damp end ({}), and the worse of the two governs each check.",
                    percent(in.year().dry()),
                    percent(in.year().damp()));
        }
    }

    private void heldOrFree(Finding.Draft draft, PanelWidth plan) {
        PanelFit other =
                plan.uncut().panel(plan.uncut().panel().pinned(!fit.panel().pinned()));
        Window window = new PanelWidth(other).window();
        String held = fit.panel().spacer() == null
                ? "It is pinned at its centre, top and bottom; free to slide, "
                : "Soft spacers keep it in the middle; free to slide, without them, ";
        String now = fit.panel().pinned() ? held : "It is free to slide from side to side; pinned at its centre, ";
        if (!window.contains(rule().nearest(window.middle()))) {
            draft.note(now + "no width would do.");
        } else {
            draft.note(now + "anything from {} to {} would do.", rule().up(window.least()), rule().down(window.most()));
        }
    }

    private void knowingWouldWin(Finding.Draft draft, PanelWidth plan) {
        Setting in = fit.in();
        if (in.day().known()) {
            return;
        }
        Estimate middle =
                new Estimate((in.year().dry().expected() + in.year().damp().expected()) / 2, 0.01);
        DayMoisture metered = new DayMoisture(middle, true, "a meter", in.day().evidence());
        Window window =
                new PanelWidth(plan.uncut().in(new Setting(in.year(), metered, in.rule(), in.deviations()))).window();
        Window now = plan.window();
        draft.note(
                "Knowing the moisture within 1 % on the day would widen the choice by about {}.",
                new Length(Math.max(
                        0,
                        window.most().minus(window.least()).metres()
                                - now.most().minus(now.least()).metres())));
    }

    /** Nothing where the panel is never so wide, bone dry nor green. */
    private void noteMoisture(Finding.Draft draft, String sentence, double width) {
        double green = fit.panel().board().shrinkage().start();
        if (widthAt(0) < width && width < widthAt(green)) {
            draft.note(sentence, MoistureContent.percent(100 * moistureAtWidth(width, green)));
        }
    }

    private double widthAt(double moisture) {
        double day = fit.in().day().estimate().expected();
        return fit.width().metres() * fit.panel().board().widthRatio(day, moisture, 0, 1);
    }

    private double moistureAtWidth(double target, double green) {
        double low = 0;
        double high = green;
        for (int i = 0; i < 50; i++) {
            double middle = (low + high) / 2;
            if (widthAt(middle) < target) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private static MoistureContent percent(Estimate moisture) {
        return new MoistureContent(moisture.expected());
    }

    private ShopRule rule() {
        return fit.in().rule();
    }

    private ShopRule fine() {
        return new ShopRule(
                rule().system(), rule().system() == UnitSystem.INCHES ? Length.inches(0.005) : Length.mm(0.1));
    }
}
