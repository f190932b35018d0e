package fairgrain.moisture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class HumidAirTest {
    @ParameterizedTest(name = "{0}, {1}, {2}, {5}")
    @CsvFileSource(resources = "/published/heated-air.csv", useHeadersInDisplayName = true)
    void outdoorAirHeated(
            double outdoor,
            double humidityPercent,
            double indoor,
            double expectedPercent,
            double tolerancePercent,
            String source,
            String basis) {
        double h = HumidAir.broughtIn(Celsius.toKelvin(outdoor), humidityPercent / 100, Celsius.toKelvin(indoor));
        assertThat(100 * h).as(source + ", " + basis).isCloseTo(expectedPercent, within(tolerancePercent));
    }

    @ParameterizedTest(name = "{0}, {3}")
    @CsvFileSource(resources = "/published/saturated-humidity-ratio.csv", useHeadersInDisplayName = true)
    void humidityRatioOfSaturatedAir(double celsius, double expected, double tolerance, String source, String basis) {
        double p = SaturationPressure.pressure(Celsius.toKelvin(celsius));
        assertThat(HumidAir.humidityRatio(p, 101325)).as(source + ", " + basis).isCloseTo(expected, within(tolerance));
    }

    @ParameterizedTest(name = "{0}, {7}")
    @CsvFileSource(resources = "/published/humidity-ratio.csv", useHeadersInDisplayName = true)
    void humidityRatio(
            String name,
            double pressure,
            @Nullable Double vapour,
            @Nullable Double celsius,
            @Nullable Double ratio,
            double expected,
            double tolerance,
            String source,
            String basis) {
        double found = switch (name) {
            case "ratio from vapour pressure" -> HumidAir.humidityRatio(given(vapour), pressure);
            case "humidity from ratio" ->
                HumidAir.relativeHumidity(
                        Celsius.toKelvin(given(celsius)), HumidAir.vapourPressureOf(given(ratio), pressure));
            default -> throw new IllegalArgumentException(name);
        };
        assertThat(found).as(name + ", " + source + ", " + basis).isCloseTo(expected, within(tolerance));
    }

    private static double given(@Nullable Double cell) {
        if (cell == null) {
            throw new IllegalStateException("the row leaves a cell empty that it needs");
        }
        return cell;
    }

    @ParameterizedTest(name = "{0}, {3}")
    @CsvFileSource(resources = "/published/standard-atmosphere.csv", useHeadersInDisplayName = true)
    void standardPressure(double height, double expected, double tolerance, String source, String basis) {
        assertThat(StandardAtmosphere.pressure(height))
                .as(source + ", " + basis)
                .isCloseTo(expected, within(tolerance));
    }

    @Property
    void heatingNeverRaisesHumidity(
            @ForAll @Scale(9) @DoubleRange(min = 223.15, max = 303.15) double outdoor,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double h,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 60) double warmer) {
        assertThat(HumidAir.broughtIn(outdoor, h, outdoor + warmer)).isLessThanOrEqualTo(h * (1 + 1e-12));
    }

    @Property
    void coolingNeverLowersHumidityAndStopsAtSaturation(
            @ForAll @Scale(9) @DoubleRange(min = 263.15, max = 313.15) double outdoor,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double h,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 40) double colder) {
        assertThat(HumidAir.broughtIn(outdoor, h, outdoor - colder)).isBetween(h * (1 - 1e-12), 1.0);
    }

    @Property
    void vapourPressureAndHumidityRatioReadEachOtherBack(
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 15000) double p,
            @ForAll @Scale(9) @DoubleRange(min = 31000, max = 110000) double total) {
        assertThat(HumidAir.vapourPressureOf(HumidAir.humidityRatio(p, total), total))
                .isCloseTo(p, within(1e-9));
    }

    @Property
    void humidityAndVapourPressureReadEachOtherBack(
            @ForAll @Scale(9) @DoubleRange(min = 223.15, max = 333.15) double t,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double h) {
        assertThat(HumidAir.relativeHumidity(t, HumidAir.vapourPressure(t, h))).isCloseTo(h, within(1e-12));
    }

    @Test
    void refusals() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HumidAir.vapourPressure(293.15, 45))
                .withMessage("relative humidity must be from 0 to 1 (fraction; 45 % is 0.45), but was 45");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HumidAir.relativeHumidity(293.15, -1))
                .withMessage("vapour pressure must be from 0 to 100000 Pa, but was -1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HumidAir.humidityRatio(1000, 101.325))
                .withMessage("air pressure must be from 30000 to 120000 Pa, but was 101.325");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HumidAir.vapourPressureOf(6.5, 101325))
                .withMessage("humidity ratio must be from 0 to 0.6 kg/kg, but was 6.5");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StandardAtmosphere.pressure(Double.NaN))
                .withMessage("height above the sea must be from -500 to 5000 m, but was NaN");
    }

    /** Half of the air's pressure is where W = 0.621945 p/(P - p) becomes 0.621945 itself. */
    @Test
    void vapourIsAtMostHalfOfTheAir() {
        assertThat(HumidAir.humidityRatio(50_000, 100_000)).isCloseTo(0.621945, within(1e-12));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HumidAir.humidityRatio(50_001, 100_000))
                .withMessage("vapour pressure must be from 0 to 50000 Pa, but was 50001");
    }
}
