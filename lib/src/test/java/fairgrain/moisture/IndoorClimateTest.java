package fairgrain.moisture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class IndoorClimateTest {
    @ParameterizedTest(name = "{0}, {1}, {5}")
    @CsvFileSource(resources = "/published/indoor-line.csv", useHeadersInDisplayName = true)
    void lineOfTheStandard(
            double outdoor,
            Occupancy occupancy,
            double indoor,
            double humidityPercent,
            double tolerance,
            String source,
            String basis) {
        double te = Celsius.toKelvin(outdoor);
        assertThat(Celsius.of(IndoorLine.temperature(te)))
                .as(source + ", " + basis)
                .isCloseTo(indoor, within(tolerance));
        assertThat(100 * IndoorLine.relativeHumidity(te, occupancy)).isCloseTo(humidityPercent, within(tolerance));
    }

    @ParameterizedTest(name = "{0}, {1}, {4}")
    @CsvFileSource(resources = "/published/humidity-class.csv", useHeadersInDisplayName = true)
    void humidityClasses(
            int humidityClass, double outdoor, double expected, double tolerance, String source, String basis) {
        assertThat(HumidityClass.pressureExcess(humidityClass, Celsius.toKelvin(outdoor)))
                .as(source + ", " + basis)
                .isCloseTo(expected, within(tolerance));
    }

    @Test
    void humidityClassesFallStraightBetween() {
        assertThat(HumidityClass.pressureExcess(3, Celsius.toKelvin(10))).isCloseTo(455, within(1e-9));
        assertThat(HumidityClass.pressureExcess(3, Celsius.toKelvin(-20))).isEqualTo(810);
        assertThat(HumidityClass.pressureExcess(3, Celsius.toKelvin(30))).isEqualTo(100);
    }

    @ParameterizedTest(name = "{0}, {1}, {2}, {3}, {6}")
    @CsvFileSource(resources = "/published/moisture-excess.csv", useHeadersInDisplayName = true)
    void humidityWithMoistureExcess(
            double outdoor,
            double humidityPercent,
            double indoor,
            double excess,
            double expectedPercent,
            double tolerancePercent,
            String source,
            String basis) {
        double h = MoistureExcess.relativeHumidity(
                Celsius.toKelvin(outdoor), humidityPercent / 100, Celsius.toKelvin(indoor), excess / 1000);
        assertThat(100 * h).as(source + ", " + basis).isCloseTo(expectedPercent, within(tolerancePercent));
    }

    @ParameterizedTest(name = "{0}, {1}, {2}, {3}, {5}")
    @CsvFileSource(resources = "/published/moisture-excess-other-balance.csv", useHeadersInDisplayName = true)
    void liesALittleBelowTheBalanceThatIsNotUsed(
            double outdoor,
            double humidityPercent,
            double indoor,
            double excess,
            double otherPercent,
            String source,
            String basis) {
        double h = MoistureExcess.relativeHumidity(
                Celsius.toKelvin(outdoor), humidityPercent / 100, Celsius.toKelvin(indoor), excess / 1000);
        assertThat(otherPercent - 100 * h).as(source + ", " + basis).isBetween(0.5, 2.25);
    }

    @ParameterizedTest(name = "{0}, {3}")
    @CsvFileSource(resources = "/published/moisture-excess-houses.csv", useHeadersInDisplayName = true)
    void dampestTenthOfMeasuredHouses(double outdoor, double expected, double tolerance, String source, String basis) {
        double te = Celsius.toKelvin(outdoor);
        assertThat(1000 * MoistureExcess.dampestTenth(te))
                .as(source + ", " + basis)
                .isCloseTo(expected, within(tolerance));
    }

    @Test
    void anOrdinaryHouseAddsHalfOfWhatTheDampestTenthAdds() {
        for (double celsius : new double[] {-20, 5, 8, 15, 25}) {
            double te = Celsius.toKelvin(celsius);
            assertThat(MoistureExcess.ordinary(te)).isCloseTo(MoistureExcess.dampestTenth(te) / 2, within(1e-12));
        }
    }

    @ParameterizedTest(name = "{0}, {5}")
    @CsvFileSource(resources = "/published/moisture-production.csv", useHeadersInDisplayName = true)
    void excessFromProduction(
            double kgPerDay,
            double changesPerHour,
            double volume,
            double expected,
            double tolerance,
            String source,
            String basis) {
        double excess = MoistureExcess.fromProduction(kgPerDay / 86400, changesPerHour / 3600, volume);
        assertThat(1000 * excess).as(source + ", " + basis).isCloseTo(expected, within(tolerance));
    }

    @ParameterizedTest(name = "{0}, {5}")
    @CsvFileSource(resources = "/published/indoor-year.csv", useHeadersInDisplayName = true)
    void aYearIndoors(
            String month,
            double outdoor,
            double humidityPercent,
            double expectedPercent,
            double tolerancePercent,
            String source,
            String basis) {
        double te = Celsius.toKelvin(outdoor);
        double ti = IndoorLine.temperature(te);
        double h = MoistureExcess.relativeHumidity(te, humidityPercent / 100, ti, MoistureExcess.ordinary(te));
        assertThat(100 * HailwoodHorrobin.moisture(ti, h))
                .as(month + ", " + source + ", " + basis)
                .isCloseTo(expectedPercent, within(tolerancePercent));
    }

    @Property
    void moreExcessNeverDriesTheAir(
            @ForAll @Scale(9) @DoubleRange(min = 243.15, max = 298.15) double outdoor,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double h,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.01) double excess,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.01) double more) {
        double ti = IndoorLine.temperature(outdoor);
        assertThat(MoistureExcess.relativeHumidity(outdoor, h, ti, excess + more))
                .isGreaterThanOrEqualTo(MoistureExcess.relativeHumidity(outdoor, h, ti, excess));
    }

    @Property
    void noExcessIsHeatedAir(
            @ForAll @Scale(9) @DoubleRange(min = 243.15, max = 298.15) double outdoor,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double h) {
        double ti = IndoorLine.temperature(outdoor);
        assertThat(MoistureExcess.relativeHumidity(outdoor, h, ti, 0)).isEqualTo(HumidAir.broughtIn(outdoor, h, ti));
    }

    @Property
    void aCeilingOnlyEverDries(
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double h,
            @ForAll @Scale(9) @DoubleRange(min = 0.3, max = 1) double ceiling) {
        assertThat(HumidityCeiling.cooled(h, ceiling)).isLessThanOrEqualTo(h).isLessThanOrEqualTo(ceiling);
    }

    @Test
    void dryAirStaysAsItIsUnderTheCeiling() {
        assertThat(HumidityCeiling.cooled(0.4, HumidityCeiling.DEFAULT)).isEqualTo(0.4);
        assertThat(HumidityCeiling.cooled(0.8, HumidityCeiling.DEFAULT)).isEqualTo(0.6);
    }

    @Property
    void aColderSpotIsDamperAndAWarmerOneDrier(
            @ForAll @Scale(9) @DoubleRange(min = 283.15, max = 303.15) double t,
            @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 0.7) double h) {
        assertThat(Spot.ROOM.relativeHumidity(t, h)).isCloseTo(h, within(1e-15));
        assertThat(Spot.OUTSIDE_WALL.relativeHumidity(t, h)).isGreaterThan(h);
        assertThat(Spot.STEAMY_ROOM.relativeHumidity(t, h)).isCloseTo(h + 0.10, within(1e-12));
        assertThat(Spot.ABOVE_HEATER.relativeHumidity(t, h)).isLessThan(h);
        assertThat(Spot.IN_SUN.relativeHumidity(t, h)).isLessThan(h);
    }

    @Test
    void spotsKeepTheVapourPressureOfTheRoom() {
        double t = Celsius.toKelvin(20);
        double atWall = Spot.OUTSIDE_WALL.relativeHumidity(t, 0.5);
        assertThat(HumidAir.vapourPressure(Spot.OUTSIDE_WALL.temperature(t), atWall))
                .isCloseTo(HumidAir.vapourPressure(t, 0.5), within(1e-9));
        assertThat(Spot.OUTSIDE_WALL.temperature(t)).isCloseTo(t - 3, within(1e-12));
    }

    @Test
    void aSpotCannotBeDamperThanSaturated() {
        assertThat(Spot.STEAMY_ROOM.relativeHumidity(293.15, 0.95)).isEqualTo(1);
        assertThat(Spot.OUTSIDE_WALL.relativeHumidity(293.15, 0.95)).isEqualTo(1);
    }

    @Property
    void aMonthIsDrawnInTowardItsMiddle(
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double a,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double b) {
        double lowest = Math.min(a, b);
        double highest = Math.max(a, b);
        double low = MinMaxReading.low(lowest, highest);
        double high = MinMaxReading.high(lowest, highest);
        assertThat(low).isBetween(lowest - 1e-12, MinMaxReading.middle(lowest, highest) + 1e-12);
        assertThat(high - low).isCloseTo((highest - lowest) / 2, within(1e-12));
        assertThat((low + high) / 2).isCloseTo(MinMaxReading.middle(lowest, highest), within(1e-12));
    }

    @Test
    void aBareBoardFollowsLessThanHalfOfTwoWeeksEvenAtTheFastEnd() {
        double halfThickness = 0.019 / 2;
        double fast = 1e-10 * TransverseDiffusion.BAND;
        Swing swing = PeriodicResponse.mean(halfThickness, fast, SurfaceCoefficient.BARE, 14 * PeriodicResponse.DAY);
        assertThat(swing.amplitude()).isLessThan(0.5);
    }

    @Test
    void refusals() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> IndoorLine.temperature(-5))
                .withMessage("outdoor temperature must be from 213.15 to 333.15 K, but was -5");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HumidityClass.pressureExcess(6, 273.15))
                .withMessage("humidity class must be from 1 to 5 (1 dry to 5 wet), but was 6");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MoistureExcess.pressureExcess(4, 273.15, 293.15))
                .withMessage("moisture excess must be from 0 to 0.03 kg/m^3, but was 4");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MoistureExcess.fromProduction(5.4, 0.5 / 3600, 250))
                .withMessage("moisture production must be from 0 to 0.01 kg/s, but was 5.4");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MoistureExcess.fromProduction(5.4 / 86400, 0.5, 250))
                .withMessage("air changes must be from 1.0E-6 to 0.01 1/s, but was 0.5");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HumidityCeiling.cooled(0.5, 60))
                .withMessage("humidity ceiling must be from 0.3 to 1 (fraction; 60 % is 0.60), but was 60");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Spot.IN_SUN.temperature(20))
                .withMessage("room temperature must be from 243.15 to 333.15 K, but was 20");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MinMaxReading.low(0.6, 0.4))
                .withMessage("highest humidity must be from 0.6 to 1 (fraction; not below the lowest), but was 0.4");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MinMaxReading.high(45, 60))
                .withMessage("lowest humidity must be from 0 to 1 (fraction; 45 % is 0.45), but was 45");
    }

    /** Read 30 and 50 %: the middle is 40 %, and half of the 20 points is felt, so 35 to 45 %. */
    @Test
    void aMonthFrom30To50PercentIsFeltAs35To45() {
        assertThat(MinMaxReading.middle(0.30, 0.50)).isCloseTo(0.40, within(1e-15));
        assertThat(MinMaxReading.low(0.30, 0.50)).isCloseTo(0.35, within(1e-15));
        assertThat(MinMaxReading.high(0.30, 0.50)).isCloseTo(0.45, within(1e-15));
    }
}
