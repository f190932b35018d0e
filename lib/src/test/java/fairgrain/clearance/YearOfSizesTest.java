package fairgrain.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Finding;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.material.SheetMovement;
import fairgrain.material.Shrinkage;
import fairgrain.material.Wood;
import fairgrain.material.WoodNames;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.part.Setting;
import fairgrain.place.DayMoisture;
import fairgrain.place.MoistureYear;
import fairgrain.place.Month;
import fairgrain.place.YearByMonth;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sizes month by month, the shrinkage curve they stand on, and sheets. */
class YearOfSizesTest {
    private static final Estimate DRY = new Estimate(0.06, 0.005);
    private static final Estimate DAMP = new Estimate(0.12, 0.005);

    private static Setting monthly(double day) {
        YearByMonth months = YearByMonth.between(Month.JANUARY, DRY, Month.AUGUST, DAMP);
        MoistureYear year = new MoistureYear(DRY, DAMP, 0.005, "a test", Panels.ANY, Optional.of(months));
        return new Setting(
                year,
                new DayMoisture(new Estimate(day, 0.005), true, "a meter", Panels.ANY),
                ShopRule.MILLIMETRES,
                Reliability.NINETEEN_IN_TWENTY);
    }

    private static Board bent(double radial, double differential) {
        Shrinkage s = new Shrinkage(0.04, 0.086, null, 0.3, radial, differential, 0.15, Panels.ANY);
        Wood wood = new Wood("a-wood", new WoodNames("a wood", "", List.of()), Wood.Origin.EUROPEAN, s, null, null, "");
        return Board.of(wood, RingAngle.FLATSAWN, Length.mm(20));
    }

    private static String notes(Finding finding) {
        return finding.notes().stream().map(Words::sentence).reduce("", (a, b) -> a + " " + b);
    }

    @Test
    void aPanelIsAsWideInJanuaryAsAtTheDryEndAndInAugustAsAtTheDampEnd() {
        PanelFit fit = Panels.panel(Panels.board(0.04, 0.086), true, 250, 12, monthly(0.08));
        SizeByMonth months = fit.byMonth().orElseThrow();
        PanelFit.Fit answer = fit.answer();
        assertThat(months.sizes().get(0).metres()).isCloseTo(answer.atDry().metres(), within(1e-12));
        assertThat(months.sizes().get(7).metres()).isCloseTo(answer.atDamp().metres(), within(1e-12));
        assertThat(months.drawn()).hasSize(10);
        assertThat(new PanelWidth(fit).findings().get(0).evidence().sources()).contains(YearByMonth.DRAWN);
    }

    @Test
    void aGapIsNarrowestInTheDampestMonth() {
        GapFit gap = new GapFit(
                "door",
                "at the closing edge",
                GapFit.Kind.GAP,
                MovingWood.wide("stiles", Panels.board(0.04, 0.086), 2, Length.mm(57)),
                Length.mm(3),
                Reveal.USUAL,
                null,
                monthly(0.08));
        List<Length> sizes = gap.byMonth().orElseThrow().sizes();
        assertThat(sizes.stream().min(Length::compareTo)).contains(sizes.get(7));
        assertThat(sizes.get(7).metres()).isCloseTo(gap.answer().atDamp().metres(), within(1e-12));
    }

    @Test
    void withoutMonthsOrWithoutTheDayNothingIsSaidMonthByMonth() {
        Board board = Panels.board(0.04, 0.086);
        assertThat(Panels.panel(board, true, 250, 12, Panels.setting(0.08, 0.06, 0.12))
                        .byMonth())
                .isEmpty();
        assertThat(Panels.panel(board, true, 250, 12, Panels.unknownDay(monthly(0.08)))
                        .byMonth())
                .isEmpty();
    }

    @Test
    void theSteeperCurveGovernsAndTheOtherIsSaid() {
        BoardMovement steep = new BoardMovement("top", bent(0.19, 0.40), Length.mm(400), null, monthly(0.08));
        assertThat(notes(steep.findings().get(0)))
                .contains("by the shrinkage that is published for the range of use; the straight line from its whole"
                        + " shrinkage would give {}. The larger is planned with.");
        assertThat(bent(0.10, 0.20).bentRatio(0.06, 0.12))
                .isGreaterThan(bent(0.10, 0.20).straightRatio(0.06, 0.12));
        BoardMovement only = new BoardMovement("top", Panels.board(0.04, 0.086), Length.mm(400), null, monthly(0.08));
        assertThat(notes(only.findings().get(0))).contains("no steeper figure for the range of use is published");
    }

    @Test
    void aPublishedFigureThatIsNotSteeperSaysSo() {
        BoardMovement flat = new BoardMovement("top", bent(0.10, 0.20), Length.mm(400), null, monthly(0.08));
        Words said = CurveWords.of(flat.board(), flat.width(), flat.in());
        assertThat(said.sentence())
                .endsWith("the figure published for the range of use is no steeper. The straight line would give {}.");
        assertThat(said.numbers().get(0).si())
                .isCloseTo(0.4 * (flat.board().widthRatio(0.06, 0.12, 0, 1) - 1), within(1e-12));
    }

    @Test
    void whatTheCurveWordsSayIsWhatIsPlannedWith() {
        Board steep = bent(0.19, 0.40);
        Words said = CurveWords.of(steep, Length.mm(400), monthly(0.08));
        assertThat(said.numbers().get(0).si()).isCloseTo(0.4 * (steep.widthRatio(0.06, 0.12, 0, 1) - 1), within(1e-12));
        assertThat(said.numbers().get(1).si()).isLessThan(said.numbers().get(0).si());
        Words thick = CurveWords.of(MovingWood.thick("side", steep, 1), monthly(0.08));
        assertThat(thick.numbers().get(0).si())
                .isCloseTo(0.020 * (steep.thicknessRatio(0.06, 0.12, 0, 1) - 1), within(1e-12));
    }

    @Test
    void ofBoardsGluedSideBySideEachIsCountedByItsOwn() {
        GluedUp.Strip one = new GluedUp.Strip(bent(0.19, 0.40), Length.mm(100));
        Board together = new GluedUp(List.of(one, one)).asOne(1.645);
        assertThat(CurveWords.of(together, Length.mm(200), monthly(0.08)).sentence())
                .contains("each board of it counted by whichever moves it more");
    }

    @Test
    void everyFindingOfMovingWoodSaysWhichCurveItStandsOn() {
        Setting in = monthly(0.08);
        Board wood = Panels.board(0.04, 0.086);
        DoorFrame frame = new DoorFrame(wood, Length.mm(55), wood, Length.mm(55));
        Length ten = Length.mm(10);
        List<Question<?>> all = List.of(
                new BoardMovement("board", wood, Length.mm(200), null, in),
                new PanelWidth(Panels.panel(wood, true, 250, 12, in)),
                new FrameMovement("door", frame, Length.mm(600), ten, FrameMovement.USUAL_END_GAP, in),
                new TenonMovement(
                        "joint",
                        wood,
                        Length.mm(60),
                        TenonMovement.Shape.RECTANGULAR,
                        wood,
                        Length.mm(60),
                        false,
                        TenonMovement.USUAL_PROUD,
                        in),
                new ShelfDepthRoom("shelf", wood, Length.mm(250), ten, ten, in).question());
        for (Question<?> question : all) {
            assertThat(notes(question.findings().get(0)))
                    .as(question.part())
                    .contains("no steeper figure for the range of use is published");
        }
    }

    @Test
    void stockDrierThanTheDryEndIsNotSaidToShrinkByLessThanNothing() {
        Finding dry = new BoardMovement("top", bent(0.19, 0.40), Length.mm(400), null, monthly(0.04))
                .findings()
                .get(0);
        assertThat(dry.why().sentence()).contains("as dry as the room will make it or drier");
        assertThat(dry.why().numbers())
                .allSatisfy(number -> assertThat(number.si()).isGreaterThanOrEqualTo(0));
        Finding damp = new BoardMovement("top", bent(0.19, 0.40), Length.mm(400), null, monthly(0.15))
                .findings()
                .get(0);
        assertThat(damp.why().sentence()).contains("as damp as the room will make it or damper");
        assertThat(damp.why().numbers())
                .allSatisfy(number -> assertThat(number.si()).isGreaterThanOrEqualTo(0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {100, 600, 1500})
    void aSheetStaysInItsGroovesAllYearAtThePlannedSize(double across) {
        SheetMovement mdf = new SheetMovement("mdf", 0.00035, 0.0011, Panels.ANY);
        SheetFit planned =
                SheetFit.planned("back", "MDF", mdf, Length.mm(across), Length.mm(12), Length.mm(3), monthly(0.08));
        assertThat(planned.findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        SheetFit bigger = new SheetFit(
                "back",
                "MDF",
                mdf,
                Length.mm(across),
                Length.mm(12),
                Length.mm(3),
                Length.mm(across + 25),
                monthly(0.08));
        assertThat(bigger.findings().get(0).verdict()).isEqualTo(Verdict.FAILS);
    }
}
