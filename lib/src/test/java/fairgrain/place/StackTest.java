package fairgrain.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.moisture.MeterReading;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Length;
import fairgrain.quantity.MoistureContent;
import fairgrain.quantity.RelativeHumidity;
import fairgrain.quantity.Temperature;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class StackTest {
    private static final Evidence ANY = Evidence.of(Citation.of("own", "a test", Basis.JUDGEMENT));
    private static final DayMoisture AIR_DRIED = new DayMoisture(new Estimate(0.135, 0.0075), true, "air-dried", ANY);
    private static final StackAir ROOM =
            new StackAir(new Estimate(0.08, 0.006), Temperature.celsius(20), "a heated room", ANY);

    private static Stack stack(double weeks, double mm, boolean square, Length openEnds) {
        return new Stack(AIR_DRIED, ROOM, Stack.weeks(weeks), Length.mm(mm), square, openEnds, 0.45);
    }

    private static double mean(Stack stack) {
        return stack.now().estimate().expected();
    }

    private static double core(Stack stack) {
        MoistureContent core = stack.now().core();
        assertThat(core).isNotNull();
        return core == null ? Double.NaN : core.fraction();
    }

    @Test
    void inchStockIsNearTheRoomAfterThreeWeeksAndAThickSquareIsNot() {
        assertThat(mean(stack(3, 25, false, Stack.SEALED))).isBetween(0.08, 0.09);
        Stack turning = stack(8, 100, true, Stack.SEALED);
        assertThat(mean(turning)).isGreaterThan(0.09);
        assertThat(core(turning)).isGreaterThan(mean(turning) + 0.005);
        assertThat(turning.now().said())
                .startsWith("air-dried, then 8 weeks on stickers in a heated room: ")
                .endsWith(" % in the core");
    }

    @Test
    void stockThatHasLainForYearsIsAsDryAsItsAirAndNoDrier() {
        assertThat(mean(stack(500, 50, false, Stack.SEALED))).isCloseTo(0.08, within(1e-4));
        StackAir shed = new StackAir(new Estimate(0.16, 0.01), Temperature.celsius(8), "a shed", ANY);
        Stack years = new Stack(AIR_DRIED, shed, Stack.weeks(500), Length.mm(50), false, Stack.SEALED, 0.6);
        assertThat(mean(years)).isCloseTo(0.16, within(0.001));
        assertThat(years.now().estimate().sd()).isBetween(0.01, 0.013);
    }

    @Test
    void aSquareIsASlabSevenTenthsAsThickAndOpenEndsHelpShortPieces() {
        assertThat(stack(8, 100, true, Stack.SEALED).asSlab().toMm()).isCloseTo(70.71, within(0.01));
        assertThat(stack(8, 100, false, Stack.SEALED).asSlab().toMm()).isCloseTo(100, within(0.01));
        // 1/t² = 1/100² + 10/316.2² : half of it through the ends
        assertThat(stack(8, 100, false, Length.mm(316.2278)).asSlab().toMm()).isCloseTo(70.71, within(0.01));
    }

    @Property(tries = 60)
    void longerOnStickersIsNeverWetterThickerIsNeverDrierAndTheCoreIsNeverDrierThanTheMean(
            @ForAll @Scale(5) @DoubleRange(min = 0.5, max = 100) double weeks,
            @ForAll @Scale(5) @DoubleRange(min = 5, max = 150) double mm,
            @ForAll boolean square) {
        Stack stack = stack(weeks, mm, square, Stack.SEALED);
        double now = mean(stack);
        assertThat(now).isBetween(0.08 - 1e-9, 0.135 + 1e-9);
        assertThat(mean(stack(weeks + 1, mm, square, Stack.SEALED))).isLessThanOrEqualTo(now + 1e-6);
        assertThat(mean(stack(weeks, mm + 5, square, Stack.SEALED))).isGreaterThanOrEqualTo(now - 1e-6);
        assertThat(mean(stack(weeks, mm, square, Length.metres(0.3)))).isLessThanOrEqualTo(now + 1e-6);
        assertThat(core(stack)).isGreaterThanOrEqualTo(now - 1e-9);
        assertThat(stack.now().estimate().sd()).isBetween(0.002, 0.03);
    }

    @Test
    void aPlaceIsTakenAtTheMiddleOfItsYearAndItsSwingIsDoubt() {
        IndoorClimate.Air dry = new IndoorClimate.Air(Temperature.celsius(20), RelativeHumidity.percent(30));
        IndoorClimate.Air damp = new IndoorClimate.Air(Temperature.celsius(24), RelativeHumidity.percent(65));
        IndoorClimate climate = new IndoorClimate(
                "a", "a shop", dry, Month.JANUARY, damp, Month.JULY, "", Citation.of("own", "a test", Basis.JUDGEMENT));
        StackAir air = StackAir.of(climate);
        MoistureYear year = RoomAir.of(climate);
        assertThat(air.settled().expected())
                .isCloseTo((year.dry().expected() + year.damp().expected()) / 2, within(1e-12));
        assertThat(air.settled().sd()).isGreaterThan(year.swing() / 3);
        assertThat(air.temperature().toCelsius()).isCloseTo(22, within(1e-9));
        assertThat(StackAir.measured(dry).settled().expected())
                .isCloseTo(year.dry().expected(), within(1e-12));
    }

    @Test
    void refusals() {
        DayMoisture green = new DayMoisture(new Estimate(0.6, 0.1), true, "green", ANY);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Stack(green, ROOM, Stack.weeks(8), Length.mm(50), false, Stack.SEALED, 0.45))
                .withMessage("wood above 30 % holds free water and dries by other laws; enter what it was when it had"
                        + " dried to less");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> stack(8, 500, false, Stack.SEALED))
                .withMessage("thickness of the stock must be from 0.003 to 0.3 m, but was 0.5");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Stack(AIR_DRIED, ROOM, Stack.weeks(8), Length.mm(50), false, Stack.SEALED, 450))
                .withMessage("specific gravity must be from 0.08 to 1.4 (oven-dry mass against water), but was 450");
    }

    private static Metered meter(double percent, int readings, boolean set, MeterReading.Kind kind) {
        return new Metered(MoistureContent.percent(percent), readings, kind, set, null, Temperature.celsius(20));
    }

    @Test
    void aMeterIsDoubtedLessTheBetterItIsUsed() {
        double best =
                meter(9, 10, true, MeterReading.Kind.PIN).asDay().estimate().sd();
        assertThat(best).isCloseTo(0.005, within(1e-12)); // the printed 1 % of a batch as two deviations
        double one = meter(9, 1, true, MeterReading.Kind.PIN).asDay().estimate().sd();
        assertThat(one).isCloseTo(0.01, within(1e-12)); // 2 % of one reading
        assertThat(meter(9, 1, false, MeterReading.Kind.PIN).asDay().estimate().sd())
                .isCloseTo(Math.hypot(0.01, 0.01), within(1e-12));
        assertThat(meter(5, 10, true, MeterReading.Kind.PIN).asDay().estimate().sd())
                .isGreaterThan(meter(5, 10, true, MeterReading.Kind.SURFACE)
                        .asDay()
                        .estimate()
                        .sd());
        assertThat(meter(5, 10, true, MeterReading.Kind.PIN).asDay().said())
                .isEqualTo("a meter, mean of 10 readings, set for the wood, below where such meters can be relied on");
    }

    @Test
    void coldWoodHoldsMoreThanTheMeterSays() {
        Metered cold = new Metered(
                MoistureContent.percent(9),
                1,
                MeterReading.Kind.PIN,
                true,
                Temperature.celsius(8.8),
                Temperature.celsius(20));
        // half a point for each 5.6 K
        assertThat(cold.asDay().estimate().expected()).isCloseTo(0.10, within(1e-9));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> meter(9, 0, true, MeterReading.Kind.PIN))
                .withMessage("a meter is read once or more often, but was 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> meter(60, 1, true, MeterReading.Kind.PIN))
                .withMessage("meter reading must be from 0.03 to 0.3 (a fraction), but was 0.6");
    }
}
