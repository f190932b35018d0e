package fairgrain.clearance;

import static fairgrain.clearance.Panels.board;
import static fairgrain.clearance.Panels.panel;
import static fairgrain.clearance.Panels.setting;
import static fairgrain.clearance.Panels.unknownDay;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Draw;
import fairgrain.finding.Finding;
import fairgrain.finding.Spread;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.part.Board;
import fairgrain.part.Panel;
import fairgrain.part.RingAngle;
import fairgrain.part.Setting;
import fairgrain.part.Spacer;
import fairgrain.part.Tongue;
import fairgrain.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What each spread does to a board through its year, and what the sums of a panel and of a board come to. */
class YearSpreadsTest {
    private static final Setting IN = setting(0.08, 0.06, 0.11);
    private static final Board BOARD = board(0.04, 0.086);

    /** Nothing differs but one spread, by so many standard deviations. */
    private static Draw only(int which, double by) {
        return spread -> spread == which ? by : 0;
    }

    /** The ends differ by 0.7 points each, a board settles 0.5 points off, the meter is 0.5 points off; no room dries below 0.5 %. */
    @Test
    void moistureAtTheEndsAndOnTheDayMovesByItsOwnSpreadAndWithTheBoard() {
        YearSpreads year = new YearSpreads(BOARD, IN);
        assertThat(year.dry(only(4, 2))).isCloseTo(0.06 + 2 * 0.007, within(1e-12));
        assertThat(year.dry(only(2, -2))).isCloseTo(0.06 - 2 * 0.005, within(1e-12));
        assertThat(year.damp(only(5, 2))).isCloseTo(0.11 + 2 * 0.007, within(1e-12));
        assertThat(year.damp(only(2, 2))).isCloseTo(0.11 + 2 * 0.005, within(1e-12));
        assertThat(year.days(only(3, 2))).containsExactly(new double[] {0.09}, within(1e-12));
        assertThat(year.dry(only(4, -20))).isEqualTo(0.005);
        assertThat(year.damp(only(5, -20))).isEqualTo(0.005);
        assertThat(year.days(only(3, -20))).containsExactly(0.005);
        YearSpreads unknown = new YearSpreads(BOARD, unknownDay(IN));
        assertThat(unknown.days(only(4, 2))).containsExactly(new double[] {0.074, 0.11}, within(1e-12));
    }

    /** A board shrinks 15 % more or less, but never less than a fifth. */
    @Test
    void oneBoardShrinksMoreThanAnother() {
        YearSpreads year = new YearSpreads(BOARD, IN);
        assertThat(year.factor(only(0, 2))).isCloseTo(1.3, within(1e-12));
        assertThat(year.factor(only(0, -2))).isCloseTo(0.7, within(1e-12));
        assertThat(year.factor(only(0, -9))).isEqualTo(0.2);
        double swells = year.widthRatio(0.06, 0.11, only(0, 0)) - 1;
        assertThat(year.widthRatio(0.06, 0.11, only(0, 2)) - 1).isGreaterThan(1.25 * swells);
    }

    @Test
    void ringsThatLieOtherwiseMoveARiftBoardOtherwise() {
        Board rift = new Board(BOARD.wood(), BOARD.shrinkage(), RingAngle.read("rift"), BOARD.thickness());
        YearSpreads year = new YearSpreads(rift, IN);
        assertThat(year.rings(only(1, 1.5))).isEqualTo(1.5);
        double flatter = year.widthRatio(0.06, 0.11, only(1, 1));
        double steeper = year.widthRatio(0.06, 0.11, only(1, -1));
        assertThat(Math.abs(flatter - steeper))
                .as("rings one way and the other")
                .isGreaterThan(1e-4);
        assertThat(year.widthRatio(0.06, 0.11, only(1, 0)))
                .isBetween(Math.min(flatter, steeper), Math.max(flatter, steeper));
    }

    @Test
    void theSpreadsAreNamedAndAsWideAsEntered() {
        List<Spread> all = new YearSpreads(BOARD, IN).with("top", new Spread("own", "its own", 3));
        assertThat(all)
                .extracting(Spread::key)
                .containsExactly(
                        "top/shrinkage", "top/rings", "top/settling", "day/moisture", "year/dry", "year/damp", "own");
        assertThat(new YearSpreads(BOARD, unknownDay(IN)).with("top").get(3).sd())
                .as("of a day that is not known nothing differs: both ends are tried")
                .isZero();
        assertThat(all.get(3).sd()).isEqualTo(0.005);
    }

    /** Pinned half comes into sight at each side, free all of it may at one. */
    @Test
    void whatComesIntoSightIsHalfTheShrinkageOrAllOfIt() {
        PanelFit.Fit fit = panel(BOARD, true, 280, 11, IN).answer();
        double shrinks = fit.today().minus(fit.atDry()).metres();
        assertThat(shrinks).isPositive();
        assertThat(fit.comesIntoSight(true).metres()).isCloseTo(shrinks / 2, within(1e-12));
        assertThat(fit.comesIntoSight(false).metres()).isCloseTo(shrinks, within(1e-12));
    }

    /** Slid to one side a tongue goes in as deep as the groove; pinned half of what the damp panel has beyond the opening. */
    @Test
    void aShoulderComesAsNearAsTheTongueGoesIn() {
        PanelFit fit = panel(BOARD, true, 280, 11, IN).cut(Length.mm(296));
        Panel panel = fit.panel();
        Tongue tongue = new Tongue(Length.mm(5), Length.mm(12));
        PanelFit.Fit pinned = fit.panel(panel.tongue(tongue)).answer();
        PanelFit.Fit free = fit.panel(panel.tongue(tongue).pinned(false)).answer();
        assertThat(free.shoulder().orElseThrow().demand()).isCloseTo(0.011, within(1e-12));
        assertThat(pinned.shoulder().orElseThrow().demand())
                .isCloseTo((pinned.atDamp().metres() - 0.280) / 2, within(1e-12));
        assertThat(pinned.shoulder().orElseThrow().capacity()).isCloseTo(0.012, within(1e-12));
        // a groove 0.2 mm deeper at one standard deviation: 0.4 mm more room
        assertThat(fit.model().at(only(7, 1)).room().metres()).isCloseTo(0.3024, within(1e-12));
        assertThat(fit.model().at(only(6, 1)).today().metres()).isCloseTo(0.2963, within(1e-12));
    }

    @Test
    void theGrooveMustBeDeeperThanTheHoldAndThanASqueezedSpacer() {
        Length depth = Length.mm(11);
        PanelFit fit = panel(BOARD, true, 280, 11, IN);
        Panel p = fit.panel();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PanelFit("panel", p, fit.opening(), depth, fit.width(), IN))
                .withMessage("the hold wanted in the groove must be less than the groove is deep");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> fit.panel(new Panel(BOARD, null, true, new Spacer(Length.mm(14), depth))))
                .withMessage("a squeezed spacer must be thinner than the groove is deep");
    }

    /** Planed down where it is too wide; where a wider one is needed nothing is offered. */
    @ParameterizedTest
    @CsvSource({"302, true", "296, false", "286, false"})
    void aPanelThatIsTooWideIsPlanedAndOneThatFitsOrIsTooNarrowIsNot(double mm, boolean planed) {
        Finding finding =
                panel(BOARD, true, 280, 11, IN).cut(Length.mm(mm)).findings().get(0);
        assertThat(finding.remedies()).hasSize(planed ? 1 : 0);
        if (planed) {
            assertThat(finding.remedies().get(0).words().sentence())
                    .isEqualTo("Plane it down to {} on a day as damp as the one it was measured on.");
        }
    }

    private static BoardMovement moving(double day) {
        return new BoardMovement("top", BOARD, Length.mm(400), null, setting(day, 0.06, 0.11));
    }

    @Test
    void aBoardIsSaidToGoBothWaysOrOne() {
        Words both = moving(0.08).findings().get(0).why();
        assertThat(both.sentence())
                .isEqualTo("Cut {} wide, it is expected to swell {} by the damp end and to shrink {} by the dry end;"
                        + " for 19 boards in 20 it swells no more than {}.");
        assertThat(both.numbers().get(3).si())
                .isGreaterThan(both.numbers().get(1).si())
                .isEqualTo(moving(0.08).worstSwelling().metres());
        assertThat(moving(0.08).findings().get(0).notes())
                .as("this year is the room's own, not that of thick wood")
                .noneMatch(note -> note.sentence().startsWith("So thick a board"));
        Words dry = moving(0.05).findings().get(0).why();
        assertThat(dry.sentence())
                .isEqualTo("Cut {} wide it is as dry as the room will make it or drier: it is expected to swell {} by"
                        + " the damp end, and to stay at least {} wider than when it was cut; for 19 boards in 20 it"
                        + " swells no more than {}.");
        assertThat(dry.numbers().get(2).si())
                .as("by the dry end it has swelled")
                .isPositive();
        Words damp = moving(0.13).findings().get(0).why();
        assertThat(damp.sentence())
                .isEqualTo("Cut {} wide it is as damp as the room will make it or damper: it is expected to shrink {}"
                        + " by the dry end, and to stay at least {} narrower than when it was cut.");
        assertThat(damp.numbers().get(2).si()).isPositive();
        assertThat(moving(0.08).findings().get(0).missing())
                .singleElement()
                .satisfies(missing -> assertThat(missing.todo())
                        .isEqualTo("leave it the room above, and enter it as 'room' to have it checked"));
    }

    @Test
    void aFiguredPanelIsCutToLengthLikeAWidth() {
        PanelWidth asWidth = new PanelWidth(panel(BOARD, false, 120, 11, IN));
        PanelLength length = new PanelLength(asWidth);
        assertThat(length.part()).isEqualTo("panel");
        assertThat(length.spreads()).isEqualTo(asWidth.spreads()).hasSize(8);
        assertThat(length.model().at(Draw.AS_PLANNED))
                .isEqualTo(asWidth.chosen().model().at(Draw.AS_PLANNED));
        assertThat(asWidth.model().at(Draw.AS_PLANNED))
                .isEqualTo(asWidth.chosen().model().at(Draw.AS_PLANNED));
        assertThat(asWidth.part()).isEqualTo("panel");
        Finding good = length.findings().get(0);
        assertThat(good.verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        assertThat(good.sizes())
                .extracting(size -> size.what())
                .containsExactly("cut it long", "gap to leave at each end that day");
        assertThat(good.sizes().get(0).value()).isEqualTo(asWidth.chosen().width());
        Finding none = new PanelLength(new PanelWidth(panel(board(0.056, 0.105), false, 900, 9, IN)))
                .findings()
                .get(0);
        assertThat(none.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(none.sizes()).isEmpty();
        assertThat(good.why().sentence())
                .isEqualTo("Its length may move as much as its width: anything from {} to {} long stays in its grooves"
                        + " and free in them.");
        assertThat(none.why().sentence())
                .isEqualTo("No length will do: it would have to be at least {} to stay in the grooves at the dry end"
                        + " and at most {} not to bottom out at the damp end.");
        assertThat(none.notes())
                .anyMatch(note -> note.sentence()
                        .equals("Deeper grooves make room; so does straight-grained stock, or the figure as a veneer"
                                + " on a sheet."));
    }
}
