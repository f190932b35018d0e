package fairgrain.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Outcome;
import fairgrain.finding.Reliability;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.material.Shrinkage;
import fairgrain.material.Wood;
import fairgrain.material.WoodNames;
import fairgrain.part.Board;
import fairgrain.part.DayMoisture;
import fairgrain.part.Groove;
import fairgrain.part.MoistureYear;
import fairgrain.part.Opening;
import fairgrain.part.Panel;
import fairgrain.part.RingAngle;
import fairgrain.part.Setting;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.Window;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PanelTest {
    private static final Evidence ANY = Evidence.of(Citation.of("own", "a test", Basis.JUDGEMENT));

    private static Board board(double radial, double tangential) {
        Shrinkage s = new Shrinkage(radial, tangential, null, 0.3, null, null, 0.15, ANY);
        Wood wood =
                new Wood("a-wood", new WoodNames("a wood", "", List.of()), Wood.Origin.US_HARDWOOD, s, null, null, "");
        return Board.of(wood, RingAngle.FLATSAWN, Length.mm(12));
    }

    private static Setting setting(double day, double dry, double damp) {
        MoistureYear year = new MoistureYear(new Estimate(dry, 0.007), new Estimate(damp, 0.007), 0.005, "a test", ANY);
        return new Setting(
                year,
                new DayMoisture(new Estimate(day, 0.005), true, "a meter", ANY),
                ShopRule.MILLIMETRES,
                Reliability.NINETEEN_IN_TWENTY);
    }

    private static PanelFit panel(Board board, boolean pinned, double sight, double grooveDepth, Setting in) {
        Opening opening = new Opening(Length.mm(sight), null, new Groove(Length.mm(grooveDepth), Length.mm(6)));
        return new PanelFit(
                "panel",
                new Panel(board, null, pinned),
                opening,
                PanelFit.USUAL_HOLD,
                Length.mm(sight + grooveDepth),
                in);
    }

    private static boolean holds(PanelFit fit) {
        return Reliability.outcomes(fit, fit.in().deviations()).stream()
                .map(Outcome::planned)
                .allMatch(check -> check.holds());
    }

    /** Common practice, no source: 1/8 in of gap at each side, a swing of 7 points from the day of cutting, as expected. */
    @ParameterizedTest
    @CsvSource({
        // wood's tangential shrinkage, panel width in inches, carried by the gap
        "0.103, 9.5, true", // red oak as sold
        "0.103, 10, false",
        "0.055, 15, true",
        "0.071, 11.5, true"
    })
    void anEighthOfGapCarriesAPanelSoWideOverSevenPoints(double tangential, double inches, boolean carried) {
        double width = inches * 25.4;
        PanelFit fit = panel(
                        board(tangential / 2, tangential),
                        true,
                        width + 6.35 - 2 * 9.525,
                        9.525,
                        setting(0.06, 0.06, 0.13))
                .cut(Length.mm(width));
        assertThat(fit.answer().bottoming().holds()).isEqualTo(carried);
    }

    @Property(tries = 100)
    void everyWidthInTheWindowHoldsAndJustOutsideFails(
            @ForAll @DoubleRange(min = 0.03, max = 0.11) double tangential,
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
            assertThat(holds(uncut.cut(Length.mm(least + share * (most - least)))))
                    .isTrue();
        }
        assertThat(holds(uncut.cut(Length.mm(least - 0.05)))).isFalse();
        assertThat(holds(uncut.cut(Length.mm(most + 0.05)))).isFalse();
    }

    @Property(tries = 50)
    void aPinNeverNarrowsTheWindow(@ForAll @DoubleRange(min = 0.03, max = 0.11) double tangential) {
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
            assertThat(holds((PanelFit) remedy.then()))
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
        Setting unknown = new Setting(
                known.year(),
                new DayMoisture(new Estimate(0.085, 0), false, "unknown", ANY),
                known.rule(),
                known.deviations());
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
}
