package fairgrain.clearance;

import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.finding.Spread;
import fairgrain.finding.Words;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.Window;
import java.util.List;

/**
 * How long to cut a figured panel: its length may move as much as its width, so it is planned as a width is, free to slide.
 *
 * @param asWidth the panel with the height of its opening in the place of the width
 */
public record PanelLength(PanelWidth asWidth) implements Question<PanelFit.Fit> {
    @Override
    public String part() {
        return asWidth.part();
    }

    @Override
    public List<Spread> spreads() {
        return asWidth.spreads();
    }

    @Override
    public Model<PanelFit.Fit> model() {
        return asWidth.model();
    }

    @Override
    public List<Finding> findings() {
        PanelFit fit = asWidth.chosen();
        ShopRule rule = fit.in().rule();
        Window window = asWidth.window();
        boolean none = asWidth.cut().isEmpty();
        Finding.Draft draft = Finding.about(
                        part(),
                        "how long to cut it, its grain being figured",
                        none
                                ? Words.of(
                                        "No length will do: it would have to be at least {} to stay in the grooves at"
                                                + " the dry end and at most {} not to bottom out at the damp end.",
                                        window.least(),
                                        window.most())
                                : Words.of(
                                        "Its length may move as much as its width: anything from {} to {} long stays"
                                                + " in its grooves and free in them.",
                                        rule.up(window.least()),
                                        rule.down(window.most())),
                        fit.evidence().and(Figure.SOURCE))
                .outcomes(Reliability.outcomes(fit, fit.in().deviations()));
        draft.note(CurveWords.of(fit.panel().board(), fit.width(), fit.in()));
        if (none) {
            draft.note(
                    "Deeper grooves make room; so does straight-grained stock, or the figure as a veneer on a sheet.");
        } else {
            Length gap = rule.down(fit.answer().room().minus(fit.width()).times(0.5));
            draft.size("cut it long", fit.width());
            draft.size("gap to leave at each end that day", gap);
        }
        return List.of(draft.done());
    }
}
