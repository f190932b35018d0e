package fairgrain.clearance;

import static fairgrain.clearance.Panels.board;
import static fairgrain.clearance.Panels.setting;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Words;
import fairgrain.part.Panel;
import fairgrain.part.Setting;
import fairgrain.part.Spacer;
import fairgrain.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Panels that soft spacers keep in the middle. */
class SpacedPanelTest {
    private static final Setting IN = setting(0.08, 0.06, 0.11);

    private static PanelFit spaced(double thicknessMm, double squeezedMm) {
        PanelFit pinned = Panels.panel(board(0.04, 0.08), true, 250, 12, IN);
        Panel panel = pinned.panel();
        Spacer spacer = new Spacer(Length.mm(thicknessMm), Length.mm(squeezedMm));
        return pinned.panel(new Panel(panel.board(), null, true, spacer));
    }

    @Test
    void itBottomsOutOnSqueezedSpacers() {
        PanelFit pinned = Panels.panel(board(0.04, 0.08), true, 250, 12, IN);
        double less = pinned.answer().bottoming().capacity()
                - spaced(8, 2).answer().bottoming().capacity();
        assertThat(less).isCloseTo(2 * 0.002, within(1e-12));
        assertThat(spaced(8, 2).tight().metres()).isCloseTo(0.250 + 2 * (0.012 - 0.002), within(1e-12));
    }

    @Test
    void itSlidesAsFarAsItsSpacersAreLooseAtTheDryEnd() {
        PanelFit pinned = Panels.panel(board(0.04, 0.08), true, 250, 12, IN);
        double hold = pinned.answer().holdAtDry().metres();
        double gap = 0.012 - hold;
        assertThat(spaced(10, 2).answer().holdAtDry().metres()).isCloseTo(hold, within(1e-12));
        assertThat(spaced(4, 2).answer().holdAtDry().metres()).isCloseTo(hold - (gap - 0.004), within(1e-12));
    }

    @Property(tries = 60)
    void spacersNeverDoMoreThanAPinAndNeverLessThanNothing(
            @ForAll @DoubleRange(min = 2, max = 11) double thickness,
            @ForAll @DoubleRange(min = 0, max = 0.9) double share) {
        PanelFit spaced = spaced(thickness, share * thickness);
        PanelFit free = spaced.panel(spaced.panel().pinned(false));
        PanelFit pinned = spaced.panel(spaced.panel().pinned(true));
        assertThat(spaced.answer().slipping().capacity())
                .isLessThanOrEqualTo(pinned.answer().slipping().capacity() + 1e-12)
                .isGreaterThanOrEqualTo(free.answer().slipping().capacity() - 1e-12);
        assertThat(spaced.answer().bottoming().capacity())
                .isLessThanOrEqualTo(pinned.answer().bottoming().capacity() + 1e-12);
    }

    @Test
    void theFindingSaysWhatKeepsItInTheMiddle() {
        assertThat(new PanelWidth(spaced(8, 2))
                        .findings().get(0).notes().stream().map(Words::sentence))
                .anySatisfy(note ->
                        assertThat(note).startsWith("Soft spacers keep it in the middle; free to slide, without them"));
    }

    @Test
    void refusals() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Spacer(Length.mm(4), Length.mm(4)))
                .withMessage("a squeezed spacer must be thinner than a free one");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Panel(board(0.04, 0.08), null, false, new Spacer(Length.mm(4), Length.mm(2))))
                .withMessage("a panel between spacers is held at its centre");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> spaced(14, 13))
                .withMessage("a squeezed spacer must be thinner than the groove is deep");
    }
}
