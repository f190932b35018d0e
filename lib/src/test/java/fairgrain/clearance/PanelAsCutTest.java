package fairgrain.clearance;

import static fairgrain.clearance.Panels.board;
import static fairgrain.clearance.Panels.panel;
import static fairgrain.clearance.Panels.setting;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Finding;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.part.Panel;
import fairgrain.part.Setting;
import fairgrain.part.Tongue;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.Window;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PanelAsCutTest {
    private static Optional<Double> moistureIn(Finding finding, String start) {
        return finding.notes().stream()
                .filter(note -> note.sentence().startsWith(start))
                .map(Words::numbers)
                .map(numbers -> numbers.get(0).si())
                .findFirst();
    }

    private static PanelFit withTongue(PanelFit fit, double longMm) {
        Panel panel = fit.panel();
        return fit.panel(new Panel(panel.board(), new Tongue(Length.mm(5), Length.mm(longMm)), panel.pinned()));
    }

    @Test
    void atTheMoistureItNamesThePanelJustTouchesTheGrooveFloors() {
        PanelFit fit = panel(board(0.04, 0.086), true, 280, 11, setting(0.07, 0.06, 0.12))
                .cut(Length.mm(300));
        double touches = moistureIn(fit.findings().get(0), "It touches").orElseThrow();
        double there = 300 * fit.panel().board().widthRatio(0.07, touches, 0, 1);
        assertThat(there).isCloseTo(302, within(1e-6));
    }

    @Test
    void atTheMoistureItNamesThePanelJustSlipsOut() {
        PanelFit held = panel(board(0.04, 0.086), true, 280, 11, setting(0.10, 0.06, 0.12))
                .cut(Length.mm(284));
        double out = moistureIn(held.findings().get(0), "It slips").orElseThrow();
        assertThat(284 * held.panel().board().widthRatio(0.10, out, 0, 1)).isCloseTo(280, within(1e-6));
        PanelFit free = held.panel(held.panel().pinned(false)).cut(Length.mm(293));
        double outOfOne = moistureIn(free.findings().get(0), "It slips").orElseThrow();
        assertThat(293 * free.panel().board().widthRatio(0.10, outOfOne, 0, 1)).isCloseTo(291, within(1e-6));
    }

    @Test
    void aPanelThatStaysInEvenBoneDryIsNotSaidToSlipOut() {
        // 0.5 mm of hold is missing, but drying out altogether takes less than what is left in the groove
        PanelFit fit = panel(board(0.02, 0.03), true, 100, 11, setting(0.07, 0.06, 0.08))
                .cut(Length.mm(104));
        Finding finding = fit.findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(moistureIn(finding, "It slips")).isEmpty();
    }

    @Test
    void aPanelCutTooNarrowHasNoRemedy() {
        PanelFit fit = panel(board(0.04, 0.086), true, 280, 11, setting(0.10, 0.06, 0.12))
                .cut(Length.mm(284));
        assertThat(fit.findings().get(0).remedies()).isEmpty();
    }

    @Test
    void aTongueTooShortForItsGrooveFailsAndALongerOneIsOffered() {
        PanelFit fit = withTongue(panel(board(0.04, 0.086), true, 280, 11, setting(0.08, 0.06, 0.11)), 6);
        PanelFit right = new PanelWidth(fit).cut().orElseThrow();
        assertThat(right.answer().checks()).hasSize(4);
        Finding asCut = right.findings().get(0);
        assertThat(asCut.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(asCut.why().sentence())
                .isEqualTo("As cut it stays in its grooves, but its shoulder may press on the frame at the damp end.");
        for (Finding finding :
                new Finding[] {asCut, new PanelWidth(fit).findings().get(0)}) {
            assertThat(finding.remedies()).hasSize(1);
            PanelFit then = (PanelFit) finding.remedies().get(0).then();
            assertThat(then.holds()).isTrue();
        }
    }

    @Test
    void aTongueThatIsJustLongEnoughIsLeftAsItIs() {
        PanelFit fit = withTongue(panel(board(0.04, 0.086), true, 280, 11, setting(0.08, 0.06, 0.11)), 11.6);
        Finding finding = new PanelWidth(fit).findings().get(0);
        assertThat(finding.verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        assertThat(finding.remedies()).isEmpty();
    }

    @Test
    void aDeeperGrooveIsNotOfferedToATongueThatIsTooShortForIt() {
        PanelFit tight = withTongue(panel(board(0.056, 0.105), true, 450, 9, setting(0.09, 0.05, 0.13)), 10);
        Finding finding = new PanelWidth(tight).findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.remedies()).allMatch(remedy -> ((PanelFit) remedy.then()).holds());
    }

    @Test
    void aWindowWithoutAShopMarkInItCountsAsNone() {
        PanelFit uncut = panel(board(0.04, 0.086), true, 250, 12, setting(0.08, 0.06, 0.11));
        Window window = new PanelWidth(uncut).window();
        double open = window.most().minus(window.least()).toMm();
        // a rule so coarse that its nearest mark lies beside the window
        ShopRule coarse = new ShopRule(uncut.in().rule().system(), Length.mm(60));
        Setting in = uncut.in();
        PanelFit coarsely = uncut.in(new Setting(in.year(), in.day(), coarse, in.deviations()));
        assertThat(open).isPositive();
        assertThat(new PanelWidth(coarsely).cut()).isEmpty();
        Finding finding = new PanelWidth(coarsely).findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.sizes()).noneMatch(size -> size.what().startsWith("cut it across"));
        assertThat(finding.why().sentence()).startsWith("No width that can be measured will do");
    }
}
