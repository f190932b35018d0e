package fairgrain.clearance;

import static fairgrain.clearance.Panels.board;
import static fairgrain.clearance.Panels.panel;
import static fairgrain.clearance.Panels.setting;
import static fairgrain.clearance.Panels.unknownDay;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Finding;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.part.Board;
import fairgrain.part.Groove;
import fairgrain.part.Opening;
import fairgrain.part.Panel;
import fairgrain.part.RingAngle;
import fairgrain.part.Setting;
import fairgrain.part.Spacer;
import fairgrain.place.DayMoisture;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Length;
import fairgrain.quantity.Quantity;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.Window;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a maker reads about a panel: sizes to cut, what else is told, what would mend it. */
class PanelWordsTest {
    private static final Setting IN = setting(0.08, 0.06, 0.11);

    private static PanelFit usual(boolean pinned, Setting in) {
        return panel(board(0.04, 0.086), pinned, 280, 11, in);
    }

    private static PanelFit thick(PanelFit fit, double mm) {
        Board b = fit.panel().board();
        return fit.panel(fit.panel().board(new Board(b.wood(), b.shrinkage(), b.rings(), Length.mm(mm))));
    }

    private static Finding planned(PanelFit uncut) {
        return new PanelWidth(uncut).findings().get(0);
    }

    private static double size(Finding finding, String what) {
        return finding.sizes().stream()
                .filter(size -> size.what().equals(what))
                .mapToDouble(size -> 1000 * size.value().si())
                .findFirst()
                .orElseThrow();
    }

    private static List<String> sizes(Finding finding) {
        return finding.sizes().stream().map(size -> size.what()).toList();
    }

    private static List<String> notes(Finding finding) {
        return finding.notes().stream().map(Words::sentence).toList();
    }

    /** The grooves reach 11 mm each beyond 280; half of what the panel leaves of 302 mm lies at each side. */
    @Test
    void itIsCutToTheMiddleOfItsWindowAndLeavesHalfTheGapAtEachSide() {
        PanelWidth plan = new PanelWidth(usual(true, IN));
        Finding finding = plan.findings().get(0);
        PanelFit chosen = plan.cut().orElseThrow();
        assertThat(finding.verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        assertThat(chosen.answer().room().toMm()).isCloseTo(302, within(1e-9));
        assertThat(chosen.answer().today()).isEqualTo(chosen.width());
        double width = size(finding, "cut it across the grain");
        assertThat(width).isCloseTo(chosen.width().toMm(), within(1e-9)).isBetween(290.0, 301.0);
        assertThat(size(finding, "gap to leave at each side that day")).isCloseTo((302 - width) / 2, within(0.51));
        assertThat(sizes(finding)).doesNotContain("cut it along the grain");
        // 400 mm along and both grooves, 1/16 in less at each end: 418.8 mm, down to the mark
        Opening opening = new Opening(Length.mm(280), Length.mm(400), new Groove(Length.mm(11), Length.mm(6)));
        Finding along = planned(usual(true, IN).opening(opening));
        assertThat(size(along, "cut it along the grain"))
                .isCloseTo(418.5, within(0.5))
                .isLessThan(418.83);
    }

    /**
     * Radial 12 % over 30 points, 0.4 % a point; one board in twenty moves 1 + 1.645 · 0.15 as much, the damp end lies 1.645 · 0.7 points
     * higher. In a groove of 10 mm 0.15 mm are left between.
     */
    @Test
    void theEdgeIsASlipFitAtTheDampEnd() {
        Setting damp = setting(0.08, 0.06, 0.16);
        PanelFit fit = panel(board(0.12, 0.15), true, 280, 11, damp);
        fit = thick(fit, 9).opening(new Opening(Length.mm(280), null, new Groove(Length.mm(11), Length.mm(10))));
        double factor = 1 + 1.6449 * 0.15;
        double ratio = fit.panel().board().thicknessRatio(0.08, 0.16 + 1.6449 * 0.007, 0, factor);
        assertThat(ratio).isCloseTo(1 + 0.4 * (0.08 + 0.0115) * factor, within(0.006));
        assertThat(size(planned(fit), "edge of the panel at most, thick"))
                .isCloseTo(Math.floor((10 / ratio - 0.15) * 10) / 10, within(1e-9));
        Setting inches = new Setting(damp.year(), damp.day(), ShopRule.INCHES, damp.deviations());
        assertThat(size(planned(fit.in(inches)), "edge of the panel at most, thick"))
                .as("in steps of five thousandths of an inch")
                .isCloseTo(Math.floor((10 / ratio - 0.15) / 0.127) * 0.127, within(1e-9));
        double unknown = fit.panel().board().thicknessRatio(0.06, 0.16 + 1.6449 * 0.007, 0, factor);
        assertThat(size(planned(fit.in(unknownDay(damp))), "edge of the panel at most, thick"))
                .as("it may have been as dry as the dry end")
                .isCloseTo(Math.floor((10 / unknown - 0.15) * 10) / 10, within(1e-9));
    }

    @Test
    void aPanelThickerThanItsGrooveGetsATongueAMillimetreLongerThanTheGrooveIsDeep() {
        Finding thick = planned(thick(usual(true, IN), 12));
        assertThat(sizes(thick)).contains("tongue at most, thick").doesNotContain("edge of the panel at most, thick");
        assertThat(size(thick, "tongue at least, from edge to shoulder")).isCloseTo(12, within(1e-9));
        Finding fills = planned(thick(usual(true, IN), 6));
        assertThat(sizes(fills))
                .contains("edge of the panel at most, thick")
                .doesNotContain("tongue at most, thick", "tongue at least, from edge to shoulder");
        String tight = "An edge {} thick is tight in a groove {} wide at the damp end: plane it to {}.";
        assertThat(notes(fills)).contains(tight);
        assertThat(notes(planned(usual(true, IN)))).doesNotContain(tight);
        assertThat(notes(thick)).doesNotContain(tight);
    }

    @Test
    void finishReachesAsFarInAsTheWoodShrinksAndNowhereWhereItOnlySwells() {
        String finish = "finish in from the sight line at least";
        assertThat(size(planned(usual(true, IN)), finish)).isBetween(0.5, 3.0);
        assertThat(size(planned(usual(false, IN)), finish))
                .as("a free panel may come out on one side alone")
                .isGreaterThan(size(planned(usual(true, IN)), finish));
        assertThat(sizes(planned(usual(true, setting(0.02, 0.06, 0.11))))).doesNotContain(finish);
    }

    @Test
    void asCutItIsSaidWhetherItStaysAndStaysFree() {
        PanelFit fit = new PanelWidth(usual(true, IN)).cut().orElseThrow();
        Finding good = fit.findings().get(0);
        assertThat(good.why().sentence()).isEqualTo("As cut it stays free in its grooves and stays in them all year.");
        assertThat(size(good, "gap at each side that day"))
                .isCloseTo((302 - fit.width().toMm()) / 2, within(0.51));
        assertThat(sizes(good)).contains("edge of the panel at most, thick");
        assertThat(notes(good))
                .contains("Expected: {} wide at {} when cut, {} at the dry end ({}), {} at the damp end ({}).");
        Finding binds = thick(fit, 6).findings().get(0);
        assertThat(binds.why().sentence())
                .isEqualTo("As cut it stays in its grooves, but its edge may bind in them at the damp end.");
        assertThat(binds.verdict()).isEqualTo(Verdict.FAILS);
        Finding wide = fit.cut(Length.mm(302)).findings().get(0);
        assertThat(wide.why().sentence())
                .isEqualTo("As cut it may press on the groove floors at the damp end: it is then {} too wide.");
        assertThat(notes(wide)).contains("It touches the groove floors at about {} moisture content.");
        Panel p = fit.panel();
        PanelFit spaced = fit.panel(new Panel(p.board(), null, true, new Spacer(Length.mm(8), Length.mm(3))));
        assertThat(notes(spaced.cut(Length.mm(297)).findings().get(0)))
                .contains("It has squeezed its spacers flat at about {} moisture content.");
        Finding narrow = fit.cut(Length.mm(284)).findings().get(0);
        assertThat(narrow.why().sentence())
                .isEqualTo("As cut it may draw out of its groove at the dry end: {} of hold is left where {} is"
                        + " wanted.");
    }

    private static PanelFit narrow(boolean pinned) {
        return panel(board(0.04, 0.086), pinned, 120, 11, IN);
    }

    @Test
    void whatAPinWouldWinOrLoseIsTold() {
        Window free = new PanelWidth(narrow(false)).window();
        Finding pinned = planned(narrow(true));
        String slides = "It is pinned at its centre, top and bottom; free to slide, anything from {} to {} would do.";
        assertThat(free.isEmpty()).isFalse();
        assertThat(pinned.notes())
                .filteredOn(note -> note.sentence().equals(slides))
                .singleElement()
                .satisfies(note -> assertThat(note.numbers())
                        .containsExactly(
                                ShopRule.MILLIMETRES.up(free.least()), ShopRule.MILLIMETRES.down(free.most())));
        assertThat(notes(planned(narrow(false))))
                .contains("It is free to slide from side to side; pinned at its centre, anything from {} to {} would"
                        + " do.");
        PanelFit held = narrow(true);
        PanelFit spaced =
                held.panel(new Panel(held.panel().board(), null, true, new Spacer(Length.mm(9), Length.mm(1))));
        assertThat(notes(planned(spaced)))
                .anyMatch(note -> note.startsWith("Soft spacers keep it in the middle; free to slide, without them, "))
                .noneMatch(note -> note.startsWith("It is pinned at its centre"));
        PanelFit tight = panel(board(0.056, 0.105), true, 450, 11, setting(0.09, 0.05, 0.13));
        assertThat(notes(planned(tight)))
                .contains("It is pinned at its centre, top and bottom; free to slide, no width would do.");
    }

    @Test
    void ofAnUnknownDayItIsToldWhatAMeterWouldWin() {
        PanelFit fit = usual(true, unknownDay(IN));
        Finding finding = planned(fit);
        String knowing = "Knowing the moisture within 1 % on the day would widen the choice by about {}.";
        String unknown = "The moisture when it is cut is not known: it may be as dry as the dry end ({}) or as damp as"
                + " the damp end ({}), and the worse of the two governs each check.";
        assertThat(notes(finding)).contains(knowing, unknown);
        Quantity wins = finding.notes().stream()
                .filter(note -> note.sentence().equals(knowing))
                .findFirst()
                .orElseThrow()
                .numbers()
                .get(0);
        // measured half-way between the ends, within a point
        Window now = new PanelWidth(fit).window();
        Setting metered = setting(0.085, 0.06, 0.11);
        Window then = new PanelWidth(usual(
                        true,
                        new Setting(
                                metered.year(),
                                new DayMoisture(new Estimate(0.085, 0.01), true, "a meter", Panels.ANY),
                                metered.rule(),
                                metered.deviations())))
                .window();
        double open = then.most().minus(then.least()).metres()
                - now.most().minus(now.least()).metres();
        assertThat(wins.si()).isCloseTo(open, within(1e-6)).isPositive();
        assertThat(notes(planned(usual(true, IN)))).doesNotContain(knowing, unknown);
        assertThat(notes(planned(usual(true, IN))))
                .contains("Expected: {} wide at {} when cut, {} at the dry end ({}), {} at the damp end ({}).");
    }

    private static List<String> cures(Finding finding) {
        return finding.remedies().stream().map(cure -> cure.words().sentence()).toList();
    }

    private static PanelFit then(Finding finding, String start) {
        return finding.remedies().stream()
                .filter(cure -> cure.words().sentence().startsWith(start))
                .map(Remedy::then)
                .map(PanelFit.class::cast)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyWayToOpenAnEmptyWindowIsOfferedTheLeastChangeFirst() {
        PanelFit tight = panel(board(0.04, 0.086), false, 300, 9, setting(0.09, 0.06, 0.12));
        Finding metric = planned(tight);
        assertThat(cures(metric))
                .containsExactly(
                        "Pin it at the centre of its top and bottom edge and cut it {} wide.",
                        "Cut the grooves {} deep and the panel {} wide.",
                        "Use quartersawn stock and cut the panel {} wide.",
                        "Divide the frame by a muntin {} wide, and cut each of the two panels {} wide.");
        PanelFit deeper = then(metric, "Cut the grooves");
        double depth = deeper.opening().groove().depth().toMm();
        assertThat(depth).isCloseTo(Math.rint(depth), within(1e-9)).isBetween(10.0, 20.0);
        assertThat(deeper.opening().groove().width()).isEqualTo(Length.mm(6));
        Opening shallower = tight.opening().groove(new Groove(Length.mm(depth - 1), Length.mm(6)));
        assertThat(new PanelWidth(tight.opening(shallower)).cut().filter(PanelFit::holds))
                .as("a millimetre less will not do")
                .isEmpty();
        assertThat(then(metric, "Divide").opening().across().toMm()).isCloseTo(125, within(1e-9));
        assertThat(then(metric, "Use quartersawn").panel().board().rings()).isEqualTo(RingAngle.QUARTERSAWN);
        Setting in = tight.in();
        Finding inches = planned(tight.in(new Setting(in.year(), in.day(), ShopRule.INCHES, in.deviations())));
        assertThat(then(inches, "Divide").opening().across().toMm()).isCloseTo((300 - 50.8) / 2, within(1e-9));
        double sixteenths =
                then(inches, "Cut the grooves").opening().groove().depth().toInches() * 16;
        assertThat(sixteenths).isCloseTo(Math.rint(sixteenths), within(1e-9));
    }

    @Test
    void quartersawnStockIsNotToldToBeQuartersawnNorAPinnedPanelToBePinned() {
        PanelFit tight = panel(board(0.086, 0.086), true, 900, 9, setting(0.09, 0.05, 0.13));
        Board b = tight.panel().board();
        PanelFit quartered = tight.panel(
                tight.panel().board(new Board(b.wood(), b.shrinkage(), RingAngle.QUARTERSAWN, b.thickness())));
        Finding finding = planned(quartered);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(cures(finding)).noneMatch(cure -> cure.contains("quartersawn") || cure.contains("Pin it"));
    }

    /** A panel that is there can be planed and its frame changed, but it grows no wider and its rings do not turn. */
    @Test
    void aPanelThatIsCutIsSavedByTheFrameWhereItCan() {
        PanelFit tight = panel(board(0.04, 0.086), false, 300, 9, setting(0.09, 0.06, 0.12));
        List<Remedy> planned = planned(tight).remedies();
        int saved = 0;
        for (double mm : new double[] {100, 200, 306, 309, 311, 313, 318}) {
            PanelFit cut = tight.cut(Length.mm(mm));
            List<Remedy> serves = planned.stream()
                    .filter(cure -> ((PanelFit) cure.then()).width().compareTo(cut.width()) <= 0)
                    .filter(cure -> !cure.words().sentence().startsWith("Use quartersawn"))
                    .toList();
            saved += serves.isEmpty() ? 0 : 1;
            assertThat(cures(cut.findings().get(0)))
                    .as(mm + " mm")
                    .isEqualTo((serves.isEmpty() ? planned : serves)
                            .stream().map(cure -> cure.words().sentence()).toList());
        }
        assertThat(saved).isBetween(1, 6);
        // cut just as wide as the frame with a muntin asks, it serves as it is
        PanelFit half = then(planned(tight), "Divide");
        assertThat(cures(tight.cut(half.width()).findings().get(0)))
                .containsExactly("Divide the frame by a muntin {} wide, and cut each of the two panels {} wide.");
    }

    /** Too thick an edge is planed first, whatever else is done. */
    @Test
    void wherePlaningTheEdgeIsNotEnoughItComesFirst() {
        PanelFit tight = thick(panel(board(0.04, 0.086), false, 300, 9, setting(0.09, 0.06, 0.12)), 6);
        Finding finding = planned(tight);
        assertThat(finding.remedies()).isNotEmpty();
        assertThat(cures(finding)).allMatch(cure -> cure.startsWith("Plane its edge to the thickness above, and: "));
        for (Remedy cure : finding.remedies()) {
            PanelFit then = (PanelFit) cure.then();
            assertThat(then.edge().orElseThrow().toMm())
                    .isCloseTo(size(finding, "edge of the panel at most, thick"), within(1e-9));
        }
    }
}
