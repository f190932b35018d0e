package fairgrain.clearance;

import static fairgrain.clearance.Gaps.frame;
import static fairgrain.clearance.Panels.setting;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Caution;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class GlassInRebateTest {
    private static final Setting IN = setting(0.08, 0.06, 0.11);

    private static GlassInRebate glass(
            double tangential, double rebate, double clearance, double edging, Pane.Safety safety) {
        Pane pane = new Pane(Length.mm(4), safety, Pane.Held.STOPS, Length.mm(edging), Length.mm(clearance));
        return new GlassInRebate(
                "pane",
                frame(tangential, 55),
                Length.mm(300),
                Length.mm(600),
                Length.mm(rebate),
                GlassInRebate.USUAL_COVER,
                pane,
                IN);
    }

    @Test
    void theSizeToOrderLeavesTheClearanceAndTheEdging() {
        GlassInRebate.Fit fit = glass(0.06, 10, 2, 0.5, Pane.Safety.TOUGHENED).answer();
        assertThat(fit.width().toMm()).isCloseTo(300 + 20 - 5, within(1e-9));
        assertThat(fit.height().toMm()).isCloseTo(600 + 20 - 5, within(1e-9));
    }

    /** By hand: a rail of 55 mm swells from 8 to 11 %, two thirds of it inwards, at top and bottom. */
    @Test
    void theRailsCloseOnTheGlassByTwoThirdsOfTheirSwelling() {
        double ratio = (1 - 0.06 * (1 - 0.11 / 0.3)) / (1 - 0.06 * (1 - 0.08 / 0.3));
        GlassInRebate.Fit fit = glass(0.06, 10, 2, 0, Pane.Safety.TOUGHENED).answer();
        assertThat(fit.checks().get(0).demand()).isCloseTo(2 * 2 / 3.0 * 0.055 * (ratio - 1), within(1e-9));
        assertThat(fit.checks().get(0).capacity()).isCloseTo(0.002, within(1e-9));
        assertThat(fit.checks().get(1).capacity()).isCloseTo(0.004, within(1e-9));
        assertThat(fit.checks().get(3).capacity()).isLessThan(0.010 - 0.004);
    }

    @Property(tries = 30)
    void aPlannedPaneFitsOrIsSaidNotToAndEveryCureHolds(
            @ForAll @Scale(5) @DoubleRange(min = 0.03, max = 0.12) double tangential,
            @ForAll @DoubleRange(min = 5, max = 15) double rebate,
            @ForAll @DoubleRange(min = 0, max = 2) double edging) {
        GlassInRebate asked =
                glass(tangential, rebate, 1.5, edging, Pane.Safety.LAMINATED).planned();
        Finding finding = asked.findings().get(0);
        assertThat(finding.verdict() == Verdict.FAILS).isNotEqualTo(asked.fits());
        assertThat(asked.pane().clearance()).isGreaterThanOrEqualTo(Length.mm(1.5));
        for (Remedy remedy : finding.remedies()) {
            assertThat(remedy.then().findings().get(0).verdict())
                    .as(remedy.words().sentence())
                    .isIn(Verdict.HOLDS, Verdict.CLOSE);
        }
    }

    @Test
    void atBothEndsOfTheYearThePlannedPaneIsFreeAndCovered() {
        GlassInRebate asked = glass(0.08, 10, 1.5, 0, Pane.Safety.LAMINATED).planned();
        GlassInRebate.Fit fit = asked.answer();
        for (double moisture : new double[] {0.06, 0.08, 0.11}) {
            double rail = 0.055 * 2 / 3 * (asked.frame().rail().widthRatio(0.08, moisture, 0, 1) - 1);
            double between = 0.600 + 0.020 - 2 * rail;
            double above =
                    between - fit.height().metres() - asked.pane().clearance().metres();
            assertThat(above).isPositive();
            assertThat(0.010 - above).isGreaterThanOrEqualTo(GlassInRebate.USUAL_COVER.metres());
        }
    }

    @Test
    void glassThatWasNotDeclaredSafeIsNotJudgedAndEveryPaneCarriesTheCaution() {
        for (Pane.Safety safety : Pane.Safety.values()) {
            Finding finding = glass(0.06, 10, 2, 0, safety).findings().get(0);
            assertThat(finding.cautions()).contains(Caution.GLASS);
            if (safety == Pane.Safety.UNDECLARED) {
                assertThat(finding.verdict()).isEqualTo(Verdict.NOT_JUDGED);
                assertThat(finding.missing())
                        .containsExactly(new Missing(
                                "whether it is safety glass",
                                "order it toughened or laminated, look for the mark on it, and enter 'safety'"));
            } else {
                assertThat(finding.verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
            }
        }
    }

    @Test
    void refusesARebateThatHoldsNothing() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> glass(0.06, 4, 4, 0, Pane.Safety.TOUGHENED))
                .withMessage("clearance and edging must be less than the rebate is deep");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> glass(0.06, 3, 1, 0, Pane.Safety.TOUGHENED))
                .withMessage("the cover wanted must be less than the rebate is deep");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> glass(0.06, 0.01, 1, 0, Pane.Safety.TOUGHENED))
                .withMessageStartingWith("depth of the rebate must be from 0.003 to 0.04 m, but was ");
    }
}
