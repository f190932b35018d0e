package fairgrain.clearance;

import static fairgrain.clearance.Gaps.frame;
import static fairgrain.clearance.Panels.setting;
import static fairgrain.clearance.Panels.unknownDay;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Check;
import fairgrain.finding.Finding;
import fairgrain.finding.Reliability;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a maker reads about a pane between stiles and rails of 55 mm, and how little mends one that does not fit. */
class GlassWordsTest {
    private static final Setting IN = setting(0.08, 0.06, 0.11);

    private static GlassInRebate glass(double tangential, double rebate, double clearance, Pane pane, Setting in) {
        return new GlassInRebate(
                "pane",
                frame(tangential, 55),
                Length.mm(300),
                Length.mm(600),
                Length.mm(rebate),
                GlassInRebate.USUAL_COVER,
                pane.clearance(Length.mm(clearance)),
                in);
    }

    private static Pane pane(Pane.Safety safety, Pane.Held held, double edging) {
        return new Pane(Length.mm(4), safety, held, Length.mm(edging), Length.mm(1));
    }

    private static final Pane PLAIN = pane(Pane.Safety.LAMINATED, Pane.Held.STOPS, 0);

    private static GlassInRebate glass(double tangential, double rebate, double clearance) {
        return glass(tangential, rebate, clearance, PLAIN, IN);
    }

    private static Finding finding(GlassInRebate glass) {
        return glass.findings().get(0);
    }

    private static List<String> notes(GlassInRebate glass) {
        return finding(glass).notes().stream().map(Words::sentence).toList();
    }

    // Why

    @Test
    void whatFitsIsSaidToBeFreeAndCovered() {
        Finding fits = finding(glass(0.06, 10, 2));
        assertThat(fits.verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        assertThat(fits.why())
                .isEqualTo(Words.of(
                        "With {} on each side the frame never squeezes the glass, and {} of every edge stays behind"
                                + " it.",
                        Length.mm(2),
                        GlassInRebate.USUAL_COVER));
        assertThat(fits.remedies()).isEmpty();
        assertThat(fits.sizes())
                .extracting(size -> size.what())
                .containsExactly("order the glass wide", "order the glass high", "blocks under it, two, thick");
        assertThat(fits.sizes().get(2).value()).isEqualTo(Length.mm(2));
        assertThat(fits.evidence().sources()).contains(GlassWords.BLOCKS, GlassInRebate.SOURCE);
    }

    @Test
    void aFrameThatCloseOnTheGlassIsSaidToSqueezeIt() {
        Finding tight = finding(glass(0.12, 10, 0.5));
        assertThat(tight.outcomes()
                        .get(GlassInRebate.SQUEEZED_IN_HEIGHT)
                        .planned()
                        .holds())
                .isFalse();
        assertThat(tight.why())
                .isEqualTo(Words.of(
                        "With {} on each side the frame may squeeze the glass at the damp end.", Length.mm(0.5)));
    }

    /** A rebate of 6 mm less a play of 5 mm leaves 1 mm of the 3 mm that are wanted. */
    @Test
    void glassThatMaySlideOutOfItsCoverIsSaidTo() {
        Finding bare = finding(glass(0.06, 6, 2.5));
        assertThat(bare.outcomes().get(0).planned().holds()).isTrue();
        assertThat(bare.outcomes().get(1).planned().holds()).isTrue();
        assertThat(bare.why())
                .isEqualTo(Words.of(
                        "With {} on each side less than {} of an edge may be left behind the frame at the dry end.",
                        Length.mm(2.5),
                        GlassInRebate.USUAL_COVER));
    }

    @Test
    void whatIsSpecialOfAPaneIsSaidOfIt() {
        String edging = "The sizes are of the glass alone: {} of edging on each side is taken off.";
        String toughened = "Toughened glass cannot be cut after it is made, and may break as a whole.";
        String groove = "In a groove it cannot be renewed without taking the frame apart: a rebate with stops can.";
        assertThat(notes(glass(0.06, 10, 2)))
                .doesNotContain(edging, toughened, groove)
                .contains("Set it on two blocks that stand on the lower rail, at a quarter of its width from each side:"
                        + " its weight is for the rail, never for a stop or a bead, and glass never touches wood.");
        assertThat(notes(glass(0.06, 10, 2, pane(Pane.Safety.TOUGHENED, Pane.Held.GROOVE, 0.5), IN)))
                .contains(edging, toughened, groove);
        assertThat(Pane.Safety.TOUGHENED.word()).isEqualTo("toughened");
        assertThat(Pane.Held.GROOVE.word()).isEqualTo("groove");
    }

    // Cures

    /** The least clearance, in half millimetres, that is enough. */
    @Test
    void moreClearanceComesFirstAndNoMoreThanItTakes() {
        GlassInRebate asked = glass(0.06, 10, 0.5);
        List<Remedy> cures = finding(asked).remedies();
        assertThat(cures).hasSize(1);
        GlassInRebate then = (GlassInRebate) cures.get(0).then();
        assertThat(cures.get(0).words())
                .isEqualTo(Words.of("Leave {} on each side.", then.pane().clearance()));
        assertThat(then.fits()).isTrue();
        assertThat(then.rebate()).isEqualTo(asked.rebate());
        double mm = then.pane().clearance().toMm();
        assertThat(mm * 2).isCloseTo(Math.rint(mm * 2), within(1e-9));
        for (double less = mm - 0.5; less >= 0.5; less -= 0.5) {
            assertThat(glass(0.06, 10, less).fits()).as("%s mm", less).isFalse();
        }
    }

    @Test
    void whereNoClearanceWillDoTheRebateIsCutAsDeepAsItMust() {
        GlassInRebate asked = glass(0.06, 5, 1.5);
        List<Remedy> cures = finding(asked).remedies();
        assertThat(cures).hasSize(1);
        GlassInRebate then = (GlassInRebate) cures.get(0).then();
        assertThat(cures.get(0).words())
                .isEqualTo(Words.of(
                        "Cut the rebate {} deep and leave {} on each side.",
                        then.rebate(),
                        then.pane().clearance()));
        assertThat(then.fits()).isTrue();
        for (double deep = 5; deep < then.rebate().toMm() - 0.01; deep += 0.5) {
            for (double c = 0.5; c < deep && c <= 10; c += 0.5) {
                assertThat(glass(0.06, deep, c).fits())
                        .as("%s and %s mm", deep, c)
                        .isFalse();
            }
        }
    }

    /** From the usual sixteenth of an inch up, to the mark: 2 mm; where none fits the pane stays as it was. */
    @Test
    void aPlannedPaneTakesTheLeastClearanceFromTheUsualOneUp() {
        assertThat(glass(0.06, 10, 0.5).planned().pane().clearance().toMm()).isCloseTo(2, within(1e-9));
        GlassInRebate wide = glass(0.20, 15, 0.5).planned();
        double mm = wide.pane().clearance().toMm();
        assertThat(mm).isGreaterThan(2);
        assertThat(wide.fits()).isTrue();
        assertThat(glass(0.20, 15, mm - 0.5).fits()).isFalse();
        GlassInRebate none = glass(0.06, 5, 1.5);
        assertThat(none.planned()).isSameAs(none);
    }

    // Numbers

    /** Rebate 10, clearance 2, edging 0.5: 4 mm of play without the edging, 2 above it; at the dry end the rebates are less deep by 2 × 10 mm. */
    @Test
    void playAndCoverAreThoseOfTheDrawing() {
        GlassInRebate edged = glass(0.06, 10, 2, pane(Pane.Safety.LAMINATED, Pane.Held.STOPS, 0.5), IN);
        double stileDry = 0.020 * (1 - edged.frame().stile().widthRatio(0.08, 0.06, 0, 1));
        double stileDamp = 0.020 * (edged.frame().stile().widthRatio(0.08, 0.11, 0, 1) - 1);
        double railDry = 2 * 2 / 3.0 * 0.055 * (1 - edged.frame().rail().widthRatio(0.08, 0.06, 0, 1));
        List<Check> checks = edged.answer().checks();
        assertThat(checks.get(0).capacity()).isCloseTo(0.002, within(1e-9));
        assertThat(checks.get(1).demand()).isCloseTo(stileDamp, within(1e-12));
        assertThat(checks.get(1).capacity()).isCloseTo(0.004, within(1e-9));
        assertThat(checks.get(2).capacity()).isCloseTo(0.010 - 0.002 - railDry, within(1e-9));
        assertThat(checks.get(3).capacity()).isCloseTo(0.010 - 0.004 - stileDry, within(1e-9));
        assertThat(checks.get(3).demand()).isEqualTo(0.003);
        assertThat(Reliability.outcomes(edged, IN.deviations()).get(0).planned().margin())
                .as("planned with its spreads")
                .isLessThan(checks.get(0).margin() - 0.0005);
    }

    @Test
    void onADayNotKnownTheWorseOfBothEndsGovernsEachCheck() {
        List<Check> unknown = glass(0.06, 10, 2, PLAIN, unknownDay(IN)).answer().checks();
        List<Check> dry =
                glass(0.06, 10, 2, PLAIN, setting(0.06, 0.06, 0.11)).answer().checks();
        List<Check> damp =
                glass(0.06, 10, 2, PLAIN, setting(0.11, 0.06, 0.11)).answer().checks();
        assertThat(unknown).containsExactly(dry.get(0), dry.get(1), damp.get(2), damp.get(3));
    }

    @Test
    void whatIsWantedAsAGapIsEnteredAsItIsSaid() {
        Reveal said = Reveal.entered(Length.mm(1), Length.mm(4));
        assertThat(said.least()).isEqualTo(Length.mm(1));
        assertThat(said.most()).isEqualTo(Length.mm(4));
        assertThat(said.evidence().weakest()).isEqualTo(fairgrain.finding.Basis.ENTERED);
    }
}
