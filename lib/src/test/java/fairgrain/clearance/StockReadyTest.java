package fairgrain.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.BriefFindings;
import fairgrain.finding.Finding;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.material.ShippedWoods;
import fairgrain.moisture.PeriodicResponse;
import fairgrain.moisture.Slab;
import fairgrain.moisture.SlabSimulation;
import fairgrain.moisture.SurfaceCoefficient;
import fairgrain.moisture.TransverseDiffusion;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.part.Setting;
import fairgrain.place.DayMoisture;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Length;
import fairgrain.quantity.MoistureContent;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StockReadyTest {
    private static StockReady stock(double mm, double day, double sd, double core) {
        Setting in = Panels.setting(day, 0.06, 0.11)
                .day(new DayMoisture(new Estimate(day, sd), true, new MoistureContent(core), "a stack", Panels.ANY));
        Board board = Board.of(ShippedWoods.wood("white-oak"), RingAngle.FLATSAWN, Length.mm(mm));
        return new StockReady("stock", board, 0.60, in);
    }

    private static Finding asked(StockReady stock) {
        return stock.findings().get(0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.08, 0.086, 0.11, 0.16, 0.35})
    void inShortItSaysTheSameSizesAndChecks(double day) {
        BriefFindings.assertSame(stock(27, day, 0.005, day));
    }

    @Test
    void stockThatSuitsTheRoomHoldsAndWetStockFails() {
        assertThat(asked(stock(20, 0.085, 0.005, 0.085)).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(asked(stock(20, 0.05, 0.005, 0.05)).verdict()).isEqualTo(Verdict.HOLDS);
        Finding wet = asked(stock(20, 0.15, 0.005, 0.15));
        assertThat(wet.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(wet.notes())
                .anySatisfy(note -> assertThat(note.sentence()).contains("air-dried for years is not dry"));
        assertThat(wet.remedies()).hasSize(1);
    }

    @Test
    void stockWhoseCoreLagsFailsAndSaysSo() {
        Finding turning = asked(stock(75, 0.09, 0.005, 0.13));
        assertThat(turning.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(turning.notes())
                .anySatisfy(note -> assertThat(note.sentence()).contains("wetter core"));
    }

    @Test
    void greenStockFailsAndNoTimeIsReckonedForIt() {
        Finding green = asked(stock(25, 0.6, 0.1, 0.6));
        assertThat(green.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(green.sizes()).isEmpty();
        assertThat(green.missing()).hasSize(1);
    }

    /** At constant diffusivity the simulation takes as long. */
    @Test
    void theTimeToSuitTheRoomIsThatOfTheSimulation() {
        StockReady oak = stock(25, 0.15, 0.005, 0.15);
        double d = TransverseDiffusion.indoors(0.60);
        SlabSimulation run =
                new SlabSimulation(new Slab(0.025, m -> d, SurfaceCoefficient.BARE, SurfaceCoefficient.BARE), 0.15);
        run.hold(0.085, 0.085, oak.until(0.01, 1).si());
        assertThat(run.mean()).isCloseTo(0.095, within(0.0002));
        assertThat(oak.until(0.07, 1).si()).isZero();
    }

    @Property
    void slowerThickerAndNearerAllTakeLonger(
            @ForAll @Scale(5) @DoubleRange(min = 5, max = 100) double mm,
            @ForAll @Scale(5) @DoubleRange(min = 0.1, max = 0.25) double day) {
        StockReady stock = stock(mm, day, 0.005, day);
        double one = stock.until(0.01, 1).si();
        assertThat(stock.until(0.01, 0.5).si()).isGreaterThan(one);
        assertThat(stock.until(0.01, 2).si()).isLessThan(one);
        assertThat(stock.until(0.005, 1).si()).isGreaterThan(one);
        assertThat(stock(mm + 5, day, 0.005, day).until(0.01, 1).si()).isGreaterThan(one);
    }

    @Property(tries = 100)
    void everyRemedyAskedAgainHolds(
            @ForAll @Scale(5) @DoubleRange(min = 5, max = 150) double mm,
            @ForAll @Scale(5) @DoubleRange(min = 0.05, max = 0.28) double day,
            @ForAll @Scale(5) @DoubleRange(min = 0, max = 0.02) double sd,
            @ForAll @Scale(5) @DoubleRange(min = 0, max = 0.1) double wetterCore) {
        Finding finding = asked(stock(mm, day, sd, Math.min(0.3, day + wetterCore)));
        if (day > 0.13) {
            assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
            assertThat(finding.remedies()).hasSize(1);
        }
        for (Remedy remedy : finding.remedies()) {
            assertThat(remedy.then().findings().get(0).verdict())
                    .as(remedy.words().sentence())
                    .isIn(Verdict.HOLDS, Verdict.CLOSE);
        }
    }

    @Test
    void theTimesAreThoseOfTheTrade() {
        // inch stock of an ordinary wood, air-dried, comes near the room in two or three weeks
        Setting in = Panels.setting(0.135, 0.06, 0.11);
        Board pine = Board.of(ShippedWoods.wood("ponderosa-pine"), RingAngle.FLATSAWN, Length.mm(25));
        double days = new StockReady("stock", pine, 0.40, in).until(0.01, 1).si() / PeriodicResponse.DAY;
        assertThat(days).isBetween(10.0, 25.0);
    }

    @Test
    void refusesADayThatIsNotKnown() {
        Setting unknown = Panels.unknownDay(Panels.setting(0.08, 0.06, 0.11));
        Board board = Board.of(ShippedWoods.wood("white-oak"), RingAngle.FLATSAWN, Length.mm(20));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new StockReady("stock", board, 0.6, unknown))
                .withMessage("the moisture of the stock must be known before its readiness is asked for");
    }
}
