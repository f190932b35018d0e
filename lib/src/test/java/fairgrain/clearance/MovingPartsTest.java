package fairgrain.clearance;

import static fairgrain.clearance.Gaps.frame;
import static fairgrain.clearance.Gaps.thick;
import static fairgrain.clearance.Panels.board;
import static fairgrain.clearance.Panels.panel;
import static fairgrain.clearance.Panels.setting;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Finding;
import fairgrain.finding.Question;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** Frames, drawers, tenons, glued-up and figured boards. */
class MovingPartsTest {
    private static final Setting IN = setting(0.08, 0.06, 0.11);

    private static void curesHold(Finding finding) {
        for (Remedy remedy : finding.remedies()) {
            assertThat(remedy.then().findings().get(0).verdict())
                    .as(remedy.words().sentence())
                    .isIn(Verdict.HOLDS, Verdict.CLOSE);
        }
    }

    // The frame itself

    private static FrameMovement moving(double tangential, double railMm) {
        return new FrameMovement(
                "door", frame(tangential, railMm), Length.mm(600), Length.mm(10), FrameMovement.USUAL_END_GAP, IN);
    }

    @Test
    void theHeightBetweenTheRailsShrinksAsTheySwell() {
        FrameMovement asked = moving(0.06, 55);
        Board rail = asked.frame().rail();
        FrameMovement.Movement answer = asked.answer();
        double damp = 2 * 2 / 3.0 * 0.055 * (rail.widthRatio(0.08, 0.11, 0, 1) - 1);
        double dry = 2 * 2 / 3.0 * 0.055 * (rail.widthRatio(0.08, 0.06, 0, 1) - 1);
        assertThat(answer.sightAtDamp().metres()).isCloseTo(0.6 - damp, within(1e-12));
        assertThat(answer.sightAtDry().metres()).isCloseTo(0.6 - dry, within(1e-12));
        assertThat(answer.depthAtDamp().metres()).isCloseTo(0.010 * rail.widthRatio(0.08, 0.11, 0, 1), within(1e-12));
        assertThat(answer.pressing().demand()).isGreaterThan(damp / 2); // the panel grows a little longer too
    }

    @Test
    void aTenonBetweenThreeAndFourInchesIsCloseAsItsGlueIs() {
        assertThat(verdictOfTenon(3)).isEqualTo(Verdict.HOLDS);
        assertThat(verdictOfTenon(3.1)).isEqualTo(Verdict.CLOSE);
        assertThat(verdictOfTenon(4)).isEqualTo(Verdict.CLOSE);
        assertThat(verdictOfTenon(4.01)).isEqualTo(Verdict.FAILS);
    }

    private static Verdict verdictOfTenon(double inches) {
        return tenon(TenonMovement.Shape.RECTANGULAR, Length.inches(inches).toMm(), 0.08, false)
                .findings()
                .get(0)
                .verdict();
    }

    @Property(tries = 60)
    void wideRailsThatPressOnThePanelAreMendedByAShorterPanel(
            @ForAll @Scale(5) @DoubleRange(min = 0.05, max = 0.12) double tangential,
            @ForAll @DoubleRange(min = 40, max = 160) double rail) {
        FrameMovement asked = moving(tangential, rail);
        Finding finding = asked.findings().get(0);
        boolean fails = finding.verdict() == Verdict.FAILS;
        assertThat(finding.remedies().isEmpty()).isEqualTo(!fails);
        curesHold(finding);
        assertThat(asked.planned().endGap()).isGreaterThanOrEqualTo(asked.endGap());
        assertThat(asked.planned().findings().get(0).verdict()).isNotEqualTo(Verdict.FAILS);
    }

    // Drawers

    @Test
    void aDrawerAsksForItsFrontItsSidesAndItsBox() {
        Board front = thick(board(0.03, 0.06), 20);
        Board side = thick(board(0.03, 0.06), 10);
        List<Question<?>> all =
                new DrawerFit("drawer", front, side, Length.mm(300), Length.mm(100), Reveal.USUAL, IN).questions();
        assertThat(all).hasSize(3);
        Finding high = all.get(0).findings().get(0);
        double gap = high.sizes().get(1).value().si();
        assertThat(high.sizes().get(0).value().si()).isCloseTo(0.100 - 2 * gap, within(1e-9));
        assertThat(all)
                .allSatisfy(question ->
                        assertThat(question.findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE));
        assertThat(new DrawerFit("drawer", null, side, Length.mm(300), Length.mm(100), Reveal.USUAL, IN).questions())
                .hasSize(2);
    }

    // Tenons

    private static TenonMovement tenon(TenonMovement.Shape shape, double widthMm, double tangential, boolean through) {
        Board wood = thick(board(tangential / 2, tangential), 22);
        return new TenonMovement(
                "joint", wood, Length.mm(widthMm), shape, wood, Length.mm(60), through, TenonMovement.USUAL_PROUD, IN);
    }

    @Test
    void aThroughTenonStandsProudByWhatTheStileShrinks() {
        TenonMovement asked = tenon(TenonMovement.Shape.RECTANGULAR, 60, 0.08, true);
        double shrinks = 0.060 * (1 - asked.mortised().widthRatio(0.08, 0.06, 0, 1));
        assertThat(asked.answer().proudAtDry().metres()).isCloseTo(shrinks, within(1e-12));
        assertThat(asked.answer().checks()).hasSize(2);
    }

    @Test
    void aRoundTenonTurnsOvalByTheDifferenceOfItsTwoShrinkages() {
        TenonMovement asked = tenon(TenonMovement.Shape.ROUND, 25, 0.08, false);
        double along = (1 - 0.08 * (1 - 0.11 / 0.3)) / (1 - 0.08 * (1 - 0.08 / 0.3));
        double across = (1 - 0.04 * (1 - 0.11 / 0.3)) / (1 - 0.04 * (1 - 0.08 / 0.3));
        assertThat(asked.answer().oval().metres()).isCloseTo(0.025 * (along - across), within(1e-9));
    }

    @Property(tries = 60)
    void everyCureOfATenonHolds(
            @ForAll @Scale(5) @DoubleRange(min = 0.03, max = 0.12) double tangential,
            @ForAll @DoubleRange(min = 10, max = 200) double width,
            @ForAll boolean round,
            @ForAll boolean through) {
        TenonMovement.Shape shape = round ? TenonMovement.Shape.ROUND : TenonMovement.Shape.RECTANGULAR;
        Finding finding = tenon(shape, width, tangential, through).findings().get(0);
        assertThat(finding.remedies().isEmpty()).isEqualTo(finding.verdict() != Verdict.FAILS);
        curesHold(finding);
    }

    // Boards glued up from others

    @Property(tries = 60)
    void gluedUpBoardsMoveByTheSumOfTheirMovements(
            @ForAll @Scale(5) @DoubleRange(min = 0.03, max = 0.11) double one,
            @ForAll @Scale(5) @DoubleRange(min = 0.03, max = 0.11) double other,
            @ForAll @DoubleRange(min = 30, max = 200) double first,
            @ForAll @DoubleRange(min = 30, max = 200) double second,
            @ForAll @Scale(4) @DoubleRange(min = 0.05, max = 0.15) double to) {
        Board a = board(one / 2, one);
        Board b = board(other / 2, other);
        Board both = new GluedUp(
                        List.of(new GluedUp.Strip(a, Length.mm(first)), new GluedUp.Strip(b, Length.mm(second))))
                .asOne(0);
        double sum = first * (a.widthRatio(0.08, to, 0, 1) - 1) + second * (b.widthRatio(0.08, to, 0, 1) - 1);
        double together = (first + second) * (both.widthRatio(0.08, to, 0, 1) - 1);
        assertThat(together).isCloseTo(sum, within(4e-3 * Math.abs(sum) + 1e-9));
    }

    @Test
    void oneBoardGluedToItselfMovesAsItselfAndQuarteredStockIsTakenOnTheSafeSide() {
        Board flat = board(0.04, 0.08);
        Board quartered = new Board(flat.wood(), flat.shrinkage(), RingAngle.QUARTERSAWN, flat.thickness());
        Board same = new GluedUp(List.of(new GluedUp.Strip(flat, Length.mm(90)))).asOne(1.645);
        assertThat(same.widthRatio(0.06, 0.12, 0, 1)).isCloseTo(flat.widthRatio(0.06, 0.12, 0, 1), within(1e-9));
        Board safe = new GluedUp(List.of(new GluedUp.Strip(quartered, Length.mm(90)))).asOne(1.645);
        assertThat(safe.widthRatio(0.06, 0.12, 0, 1))
                .isCloseTo(quartered.widthRatio(0.06, 0.12, -1.645, 1), within(1e-6));
        assertThat(safe.shrinkage().cv()).isEqualTo(0.15);
    }

    // Figured wood

    @Test
    void figuredWoodIsPlannedAsFlatsawnWithAWiderSpreadAndItsFlatnessIsNotJudged() {
        Board flat = board(0.04, 0.08);
        Board quartered = new Board(flat.wood(), flat.shrinkage(), RingAngle.QUARTERSAWN, flat.thickness());
        assertThat(Figure.STRAIGHT.of(quartered)).isEqualTo(quartered);
        for (Figure figure : Figure.values()) {
            if (figure.isOdd()) {
                Board odd = figure.of(quartered);
                assertThat(odd.rings()).isEqualTo(RingAngle.FLATSAWN);
                assertThat(odd.shrinkage().cv()).isEqualTo(0.30);
                assertThat(odd.thicknessRatio(0.06, 0.12, 0, 1))
                        .isCloseTo(flat.widthRatio(0.06, 0.12, 0, 1), within(1e-12));
                assertThat(figure.flatness("panel").findings().get(0).verdict()).isEqualTo(Verdict.NOT_JUDGED);
            }
        }
    }

    @Property(tries = 30)
    void theWindowOfAFiguredPanelIsNeverWiderThanThatOfAStraightOne(
            @ForAll @Scale(5) @DoubleRange(min = 0.03, max = 0.1) double tangential,
            @ForAll @DoubleRange(min = 100, max = 400) double sight) {
        PanelFit straight = panel(board(tangential / 2, tangential), true, sight, 12, IN);
        PanelFit figured = straight.panel(
                straight.panel().board(Figure.CURLY.of(straight.panel().board())));
        assertThat(new PanelWidth(figured).window().least())
                .isGreaterThanOrEqualTo(
                        new PanelWidth(straight).window().least().minus(Length.mm(0.001)));
        assertThat(new PanelWidth(figured).window().most())
                .isLessThanOrEqualTo(new PanelWidth(straight).window().most().plus(Length.mm(0.001)));
    }

    @Test
    void theLengthOfAFiguredPanelIsPlannedLikeAWidth() {
        PanelWidth turned = new PanelWidth(panel(Figure.BURL.of(board(0.02, 0.04)), false, 150, 12, IN));
        Finding finding = new PanelLength(turned).findings().get(0);
        assertThat(finding.verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        assertThat(finding.sizes().get(0).what()).isEqualTo("cut it long");
        assertThat(finding.sizes().get(0).value()).isEqualTo(turned.chosen().width());
        Finding none = new PanelLength(new PanelWidth(panel(Figure.BURL.of(board(0.06, 0.12)), false, 900, 6, IN)))
                .findings()
                .get(0);
        assertThat(none.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(none.sizes()).isEmpty();
    }

    // Along the grain

    private static LengthMovement along(Figure figure, Length room) {
        return new LengthMovement("board", figure.of(board(0.04, 0.08)), figure, Length.mm(1000), room, IN);
    }

    @Test
    void straightGrainHardlyGrowsAndBurlGrowsAsMuchAsAcross() {
        double straight =
                along(Figure.STRAIGHT, Length.mm(2)).answer().growing().metres();
        double odd = along(Figure.NEAR_PITH, Length.mm(2)).answer().growing().metres();
        double burl = along(Figure.BURL, Length.mm(2)).answer().growing().metres();
        assertThat(straight).isCloseTo(0.002 * 0.03 / 0.3, within(1e-6)); // 0.2 % over 30 points, 3 of them
        assertThat(odd).isCloseTo(0.02 * 0.03 / 0.3, within(5e-5));
        assertThat(burl).isCloseTo(board(0.04, 0.08).widthRatio(0.08, 0.11, 0, 1) - 1, within(1e-9));
        assertThat(along(Figure.STRAIGHT, Length.mm(2)).findings().get(0).verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(along(Figure.BURL, Length.mm(2)).findings().get(0).verdict()).isEqualTo(Verdict.FAILS);
    }

    // A panel as cut, for which no width at all would do

    @Test
    void aPanelAsCutForWhichNoWidthWillDoIsOfferedTheSameCuresAsAPlannedOne() {
        PanelFit fit = panel(board(0.05, 0.10), false, 400, 9, IN).cut(Length.mm(409));
        assertThat(new PanelWidth(fit).cut()).isEmpty();
        Finding finding = fit.findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.remedies()).isNotEmpty();
        curesHold(finding);
    }

    @Test
    void refusesMillimetresPassedAsMetres() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new GluedUp.Strip(board(0.04, 0.08), new Length(90)))
                .withMessage("width of a board must be from 0.005 to 1 m, but was 90");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new GluedUp(List.of()))
                .withMessage("a glued-up panel needs at least one board");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> new DrawerFit("drawer", null, null, new Length(300), Length.mm(100), Reveal.USUAL, IN))
                .withMessage("width of the opening must be from 0.05 to 2 m, but was 300");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> tenon(TenonMovement.Shape.ROUND, 600, 0.08, false))
                .withMessage("width of the tenon must be from 0.005 to 0.4 m, but was 0.6");
    }
}
