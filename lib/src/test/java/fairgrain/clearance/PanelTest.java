package fairgrain.clearance;

import static fairgrain.clearance.Panels.board;
import static fairgrain.clearance.Panels.panel;
import static fairgrain.clearance.Panels.setting;
import static fairgrain.clearance.Panels.unknownDay;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import fairgrain.finding.Finding;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.material.ShippedWoods;
import fairgrain.material.Shrinkage;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import fairgrain.quantity.Window;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class PanelTest {
    @ParameterizedTest(name = "{0}, {1} in wide: {2}")
    @CsvFileSource(resources = "/published/panel-practice.csv", useHeadersInDisplayName = true)
    void anEighthOfGapCarriesAPanelSoWideOverSevenPoints(
            String wood, double inches, boolean carried, String source, String basis) {
        double width = inches * 25.4;
        Board planned = Board.of(ShippedWoods.wood(wood), RingAngle.FLATSAWN, Length.mm(12));
        Shrinkage s = planned.shrinkage();
        // the trade reckons with the handbook's coefficient, which is the straight line
        Shrinkage straight =
                new Shrinkage(s.radial(), s.tangential(), s.volumetric(), s.start(), null, null, s.cv(), s.evidence());
        Board board = new Board(planned.wood(), straight, RingAngle.FLATSAWN, Length.mm(12));
        PanelFit fit = panel(board, true, width + 6.35 - 2 * 9.525, 9.525, setting(0.06, 0.06, 0.13))
                .cut(Length.mm(width));
        assertThat(fit.answer().bottoming().holds()).as(source).isEqualTo(carried);
        PanelFit asPlanned = panel(planned, true, width + 6.35 - 2 * 9.525, 9.525, setting(0.06, 0.06, 0.13))
                .cut(Length.mm(width));
        assertThat(asPlanned.answer().bottoming().margin())
                .isLessThanOrEqualTo(fit.answer().bottoming().margin());
    }

    @Property(tries = 100)
    void everyWidthInTheWindowHoldsAndJustOutsideFails(
            @ForAll @Scale(5) @DoubleRange(min = 0.03, max = 0.11) double tangential,
            @ForAll @DoubleRange(min = 100, max = 350) double sight,
            @ForAll boolean pinned) {
        PanelFit uncut = panel(board(tangential / 2, tangential), pinned, sight, 12, setting(0.08, 0.06, 0.11));
        Window window = new PanelWidth(uncut).window();
        if (window.isEmpty()) {
            return;
        }
        double least = window.least().toMm();
        double most = window.most().toMm();
        for (double share : new double[] {0.001, 0.3, 0.7, 0.999}) {
            assertThat(uncut.cut(Length.mm(least + share * (most - least))).holds())
                    .isTrue();
        }
        assertThat(uncut.cut(Length.mm(least - 0.05)).holds()).isFalse();
        assertThat(uncut.cut(Length.mm(most + 0.05)).holds()).isFalse();
    }

    @Property(tries = 50)
    void aPinNeverNarrowsTheWindow(@ForAll @Scale(5) @DoubleRange(min = 0.03, max = 0.11) double tangential) {
        PanelFit free = panel(board(tangential / 2, tangential), false, 280, 11, setting(0.08, 0.06, 0.11));
        Window loose = new PanelWidth(free).window();
        Window held = new PanelWidth(free.panel(free.panel().pinned(true))).window();
        assertThat(held.least().metres()).isLessThanOrEqualTo(loose.least().metres() + 1e-6);
        assertThat(held.most().metres()).isGreaterThanOrEqualTo(loose.most().metres() - 1e-6);
    }

    @Test
    void anEmptyWindowFailsAndEveryCureAskedAgainHolds() {
        PanelFit tight = panel(board(0.056, 0.105), false, 450, 9, setting(0.09, 0.05, 0.13));
        Finding finding = new PanelWidth(tight).findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.remedies()).isNotEmpty();
        for (Remedy remedy : finding.remedies()) {
            assertThat(((PanelFit) remedy.then()).holds())
                    .as(remedy.words().sentence())
                    .isTrue();
        }
    }

    @Test
    void aPanelAsCutWithoutAGapFailsAndSaysHowMuchToPlane() {
        PanelFit full = panel(board(0.04, 0.086), true, 280, 11, setting(0.07, 0.06, 0.12));
        Finding finding = full.cut(Length.mm(302)).findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.sizes()).anyMatch(size -> size.what().startsWith("plane off"));
    }

    @Test
    void notKnowingTheMoistureNeverWidensTheWindow() {
        Setting known = setting(0.08, 0.06, 0.11);
        Setting unknown = unknownDay(known);
        Board board = board(0.04, 0.086);
        Window one = new PanelWidth(panel(board, true, 280, 11, known)).window();
        Window other = new PanelWidth(panel(board, true, 280, 11, unknown)).window();
        assertThat(other.most().minus(other.least()).metres())
                .isLessThan(one.most().minus(one.least()).metres());
    }

    @Test
    void refusesAHoldAsDeepAsTheGroove() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> panel(board(0.04, 0.08), true, 280, 3, setting(0.08, 0.06, 0.11)))
                .withMessage("the hold wanted in the groove must be less than the groove is deep");
    }

    private static PanelFit ofThickness(double mm) {
        PanelFit fit = panel(board(0.04, 0.086), true, 280, 11, setting(0.07, 0.06, 0.12))
                .cut(Length.mm(291));
        Board board = fit.panel().board();
        return fit.panel(fit.panel().board(new Board(board.wood(), board.shrinkage(), board.rings(), Length.mm(mm))));
    }

    @Test
    void aPanelThatFillsItsGrooveBindsAndIsPlanedThinner() {
        Finding finding = new PanelWidth(ofThickness(6)).findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.remedies()).singleElement().satisfies(remedy -> {
            assertThat(remedy.words().sentence()).startsWith("Plane its edge to ");
            assertThat(((PanelFit) remedy.then()).holds()).isTrue();
        });
        assertThat(new PanelWidth(ofThickness(5.5)).findings().get(0).verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void aPanelAsCutWhoseEdgeIsNotKnownIsNotJudged() {
        Finding finding = ofThickness(12).findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(finding.missing().get(0).todo())
                .isEqualTo("measure its tongue and enter 'tongue' with thickness and length");
    }
}
