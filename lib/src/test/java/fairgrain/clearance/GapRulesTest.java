package fairgrain.clearance;

import static fairgrain.clearance.Panels.board;
import static fairgrain.clearance.Panels.panel;
import static fairgrain.clearance.Panels.setting;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The gap rules of the trade against movement along the shrinkage curve. */
class GapRulesTest {
    @ParameterizedTest(name = "{0}, {12}")
    @CsvFileSource(resources = "/published/gap-rules.csv", useHeadersInDisplayName = true)
    void aGapIsAsTheTradeLeavesIt(
            String name,
            String way,
            double radial,
            double tangential,
            double size,
            double from,
            double to,
            double share,
            double plus,
            double expected,
            double tolerance,
            String unit,
            String source) {
        double metres = unit.equals("in") ? Length.METRES_PER_INCH : 0.001;
        Board flat = board(radial / 100, tangential / 100);
        boolean wide = way.equals("width");
        Length whole = new Length(size * metres);
        MovingWood wood =
                wide ? MovingWood.wide("wood", flat, 1, whole) : MovingWood.thick("wood", upright(flat, whole), 1);
        double swelling = wood.swelling(from / 100, to / 100, 0, 1) / metres;
        assertThat(share * swelling + plus).as(source).isCloseTo(expected, within(tolerance));
    }

    private static Board upright(Board flat, Length thickness) {
        return new Board(flat.wood(), flat.shrinkage(), new RingAngle(90, 0, "quartersawn"), thickness);
    }

    /** Rules 9.1 and 9.2 together: cut so that 0.8 mm is free at the damp end, 3.2 mm stay in at the dry end. */
    @Test
    void aPinnedPanelInTheGrooveOfTheRuleKeepsWhatTheRuleSays() {
        double groove = 6.23;
        double gap = 2.288; // at each side at 8 %
        double sight = 300 + 2 * gap - 2 * groove;
        PanelFit fit = panel(board(0.037, 0.071), true, sight, groove, setting(0.08, 0.06, 0.12))
                .cut(Length.mm(300));
        PanelFit.Fit answer = fit.answer();
        assertThat(answer.holdAtDry().toMm()).isCloseTo(3.2, within(0.02));
        assertThat(answer.bottoming().margin() * 1000).isCloseTo(2 * 0.8, within(0.04));
    }
}
