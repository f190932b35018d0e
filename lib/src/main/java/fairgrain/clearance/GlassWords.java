package fairgrain.clearance;

import fairgrain.finding.Basis;
import fairgrain.finding.Caution;
import fairgrain.finding.Citation;
import fairgrain.finding.Finding;
import fairgrain.finding.Outcome;
import fairgrain.finding.Reliability;
import fairgrain.finding.Remedy;
import fairgrain.finding.Words;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What {@link GlassInRebate} says to a maker. */
final class GlassWords {
    static final Citation BLOCKS =
            Citation.of("common-practice", "glass stands on two blocks at the quarter points", Basis.MEMORY);
    private static final double DEEPEST = 0.020; // m; judgement: deeper, and little of the frame is left

    private final GlassInRebate glass;
    private final List<Outcome> outcomes;

    GlassWords(GlassInRebate glass) {
        this.glass = glass;
        this.outcomes = Reliability.outcomes(glass, glass.in().deviations());
    }

    Finding finding() {
        GlassInRebate.Fit expected = glass.answer();
        Pane pane = glass.pane();
        boolean fits = outcomes.stream().allMatch(o -> o.planned().holds());
        Finding.Draft draft = Finding.about(glass.part(), "how big a pane to order", why(fits), glass.evidence())
                .size("order the glass wide", expected.width())
                .size("order the glass high", expected.height())
                .size("blocks under it, two, thick", pane.clearance())
                .outcomes(outcomes)
                .evidence(BLOCKS)
                .cautions(Caution.GLASS);
        if (!fits) {
            draft.remedies(cures());
        }
        if (pane.safety() == Pane.Safety.UNDECLARED) {
            draft.missing(
                    "whether it is safety glass",
                    "order it toughened or laminated, look for the mark on it, and enter 'safety'");
        }
        draft.note(CurveWords.of(
                "From end to end of the year a rail moves {} in its width",
                glass.frame().rail(),
                glass.frame().railWidth(),
                glass.in()));
        if (pane.edging().metres() > 0) {
            draft.note("The sizes are of the glass alone: {} of edging on each side is taken off.", pane.edging());
        }
        draft.note("Set it on two blocks that stand on the lower rail, at a quarter of its width from each side: its"
                + " weight is for the rail, never for a stop or a bead, and glass never touches wood.");
        if (pane.safety() == Pane.Safety.TOUGHENED) {
            draft.note("Toughened glass cannot be cut after it is made, and may break as a whole.");
        }
        if (pane.held() == Pane.Held.GROOVE) {
            draft.note("In a groove it cannot be renewed without taking the frame apart: a rebate with stops can.");
        }
        return draft.done();
    }

    private Words why(boolean fits) {
        if (fits) {
            return Words.of(
                    "With {} on each side the frame never squeezes the glass, and {} of every edge stays behind it.",
                    glass.pane().clearance(),
                    glass.cover());
        }
        boolean squeezes = !outcomes.get(GlassInRebate.SQUEEZED_IN_HEIGHT)
                        .planned()
                        .holds()
                || !outcomes.get(GlassInRebate.SQUEEZED_IN_WIDTH).planned().holds();
        return squeezes
                ? Words.of(
                        "With {} on each side the frame may squeeze the glass at the damp end.",
                        glass.pane().clearance())
                : Words.of(
                        "With {} on each side less than {} of an edge may be left behind the frame at the dry end.",
                        glass.pane().clearance(),
                        glass.cover());
    }

    /** More or less clearance, else a deeper rebate with it. */
    private List<Remedy> cures() {
        List<Remedy> cures = new ArrayList<>();
        ShopRule rule = glass.in().rule();
        double step = rule.step().metres();
        for (double depth = glass.rebate().metres(); depth <= DEEPEST && cures.isEmpty(); depth += step) {
            GlassInRebate deeper =
                    glass.rebate(depth == glass.rebate().metres() ? glass.rebate() : rule.down(new Length(depth)));
            clear(deeper, step).ifPresent(cures::add);
        }
        return cures;
    }

    private Optional<Remedy> clear(GlassInRebate deeper, double step) {
        double edging = glass.pane().edging().metres();
        for (double c = Math.max(step, Pane.CLEARANCE.least());
                c <= Pane.CLEARANCE.most() && c + edging < deeper.rebate().metres();
                c += step) {
            GlassInRebate then = deeper.pane(glass.pane().clearance(new Length(c)));
            if (then.fits()) {
                Words words = deeper.rebate().equals(glass.rebate())
                        ? Words.of("Leave {} on each side.", then.pane().clearance())
                        : Words.of(
                                "Cut the rebate {} deep and leave {} on each side.",
                                deeper.rebate(),
                                then.pane().clearance());
                return Optional.of(new Remedy(words, then));
            }
        }
        return Optional.empty();
    }
}
