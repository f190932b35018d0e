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

class HailwoodHorrobinTest {
    @ParameterizedTest(name = "{0}, {1}, {4}")
    @CsvFileSource(resources = "/published/emc-table.csv", useHeadersInDisplayName = true)
    void everyCellOfTheHandbookTable(
            double fahrenheit,
            double humidityPercent,
            double expectedPercent,
            double tolerancePercent,
            String source,
            String basis) {
        double m = HailwoodHorrobin.moisture(Celsius.toKelvin((fahrenheit - 32) / 1.8), humidityPercent / 100);
        assertThat(100 * m).as(source + ", " + basis).isCloseTo(expectedPercent, within(tolerancePercent));
    }

    @ParameterizedTest(name = "{0}, {1}, {4}")
    @CsvFileSource(resources = "/published/emc-equation.csv", useHeadersInDisplayName = true)
    void agreesWithOtherEvaluations(
            double celsius,
            double humidityPercent,
            double expectedPercent,
            double tolerancePercent,
            String source,
            String basis) {
        double m = HailwoodHorrobin.moisture(Celsius.toKelvin(celsius), humidityPercent / 100);
        assertThat(100 * m).as(source + ", " + basis).isCloseTo(expectedPercent, within(tolerancePercent));
    }

    @ParameterizedTest(name = "{0}, {1}, {4}")
    @CsvFileSource(resources = "/published/emc-cross-check.csv", useHeadersInDisplayName = true)
    void liesNearOtherWaysToTheSameFigure(
            double celsius,
            double humidityPercent,
            double expectedPercent,
            double tolerancePercent,
            String source,
            String basis) {
        double m = HailwoodHorrobin.moisture(Celsius.toKelvin(celsius), humidityPercent / 100);
        assertThat(100 * m).as(source + ", " + basis).isCloseTo(expectedPercent, within(tolerancePercent));
    }

    @ParameterizedTest(name = "{0}, {1}, {6}")
    @CsvFileSource(resources = "/published/emc-outdoors.csv", useHeadersInDisplayName = true)
    void outdoorAirByMonth(
            String place,
            String month,
            double celsius,
            double humidityPercent,
            double expectedPercent,
            double tolerancePercent,
            String source,
            String basis) {
        double m = HailwoodHorrobin.moisture(Celsius.toKelvin(celsius), humidityPercent / 100);
        assertThat(100 * m)
                .as(place + ", " + month + ", " + source + ", " + basis)
                .isCloseTo(expectedPercent, within(tolerancePercent));
    }

    @ParameterizedTest(name = "{0}, {1}, {4}")
    @CsvFileSource(resources = "/published/emc-slope.csv", useHeadersInDisplayName = true)
    void slopeOfTheCurve(
            double celsius, double humidityPercent, double expected, double tolerance, String source, String basis) {
        double slope = HailwoodHorrobin.slope(Celsius.toKelvin(celsius), humidityPercent / 100);
        assertThat(slope).as(source + ", " + basis).isCloseTo(expected, within(tolerance));
    }

    @Test
    void nearFibreSaturationInSaturatedAir() {
        // the handbook gives 30 % as the usual figure, several points either way from wood to wood
        assertThat(HailwoodHorrobin.moisture(293.15, 1)).isBetween(0.28, 0.30);
    }

    @Property
    void dryAirMeansDryWood(@ForAll @Scale(9) @DoubleRange(min = 243.15, max = 373.15) double t) {
        assertThat(HailwoodHorrobin.moisture(t, 0)).isZero();
    }

    @Property
    void damperAirMeansDamperWood(
            @ForAll @Scale(9) @DoubleRange(min = 243.15, max = 373.15) double t,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.999) double h,
            @ForAll @Scale(9) @DoubleRange(min = 1e-6, max = 1e-3) double more) {
        assertThat(HailwoodHorrobin.moisture(t, h + more)).isGreaterThan(HailwoodHorrobin.moisture(t, h));
    }

    @Property
    void theInverseGivesTheHumidityBack(
            @ForAll @Scale(9) @DoubleRange(min = 243.15, max = 373.15) double t,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double h) {
        double back = HailwoodHorrobin.relativeHumidity(t, HailwoodHorrobin.moisture(t, h));
        assertThat(back).isCloseTo(h, within(1e-10));
    }

    @Property
    void slopeIsTheDerivative(
            @ForAll @Scale(9) @DoubleRange(min = 243.15, max = 373.15) double t,
            @ForAll @Scale(9) @DoubleRange(min = 1e-4, max = 0.9999) double h) {
        double step = 1e-5;
        double difference =
                (HailwoodHorrobin.moisture(t, h + step) - HailwoodHorrobin.moisture(t, h - step)) / (2 * step);
        assertThat(HailwoodHorrobin.slope(t, h)).isCloseTo(difference, within(1e-5 * difference));
    }

    @Property
    void warmerWoodIsDrierAtTheSameHumidity(
            @ForAll @Scale(9) @DoubleRange(min = 278.15, max = 372.15) double t,
            @ForAll @Scale(9) @DoubleRange(min = 0.05, max = 0.9) double h,
            @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 1) double warmer) {
        assertThat(HailwoodHorrobin.moisture(t + warmer, h)).isLessThan(HailwoodHorrobin.moisture(t, h));
    }

    @Test
    void saysWhereItLeavesTheTable() {
        assertThat(HailwoodHorrobin.extrapolates(Celsius.toKelvin(-1.1))).isFalse();
        assertThat(HailwoodHorrobin.extrapolates(Celsius.toKelvin(-1.2))).isTrue();
        assertThat(HailwoodHorrobin.extrapolates(293.15)).isFalse();
    }

    @Test
    void refusesCelsius() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HailwoodHorrobin.moisture(20, 0.5))
                .withMessage("temperature must be from 243.15 to 373.15 K, but was 20");
    }

    @Test
    void refusesPercent() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HailwoodHorrobin.moisture(293.15, 50))
                .withMessage("relative humidity must be from 0 to 1 (fraction; 45 % is 0.45), but was 50");
    }

    @Test
    void refusesNaN() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HailwoodHorrobin.moisture(293.15, Double.NaN))
                .withMessage("relative humidity must be from 0 to 1 (fraction; 45 % is 0.45), but was NaN");
    }

    @Test
    void refusesWoodWetterThanAirCanMakeIt() {
        double wettest = HailwoodHorrobin.moisture(293.15, 1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HailwoodHorrobin.relativeHumidity(293.15, 0.4))
                .withMessage("moisture content must be from 0 to " + wettest + " (fraction; 8 % is 0.08), but was 0.4");
    }
}
