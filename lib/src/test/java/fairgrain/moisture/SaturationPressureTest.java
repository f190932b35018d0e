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

class SaturationPressureTest {
    @ParameterizedTest(name = "{0}, {3}")
    @CsvFileSource(resources = "/published/saturation-pressure.csv", useHeadersInDisplayName = true)
    void overIceAndWater(double celsius, double expected, double tolerance, String source, String basis) {
        assertThat(SaturationPressure.pressure(Celsius.toKelvin(celsius)))
                .as(source + ", " + basis)
                .isCloseTo(expected, within(tolerance));
    }

    @Property
    void warmerAirHoldsMore(
            @ForAll @Scale(9) @DoubleRange(min = 173.15, max = 473) double t,
            @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 0.1) double warmer) {
        assertThat(SaturationPressure.pressure(t + warmer)).isGreaterThan(SaturationPressure.pressure(t));
    }

    @Test
    void iceAndWaterMeet() {
        double ice = SaturationPressure.pressure(Math.nextDown(Celsius.toKelvin(0.01)));
        double water = SaturationPressure.pressure(Celsius.toKelvin(0.01));
        assertThat(ice).isCloseTo(water, within(1e-4 * water));
    }

    @Test
    void overWaterAgreesAboveFreezingAndStandsAboveIceBelow() {
        // relative differences as found when the two forms were compared
        assertThat(ratio(0.02)).isCloseTo(1 - 0.0004, within(5e-5));
        assertThat(ratio(20)).isCloseTo(1 - 0.0023, within(5e-5));
        assertThat(ratio(-10)).isCloseTo(1.10, within(0.005));
    }

    @Test
    void aReportOverWaterHoldsMoreVapour() {
        double t = Celsius.toKelvin(-10);
        assertThat(SaturationOverWater.vapourPressure(t, 0.8)).isGreaterThan(HumidAir.vapourPressure(t, 0.8));
        assertThat(SaturationOverWater.vapourPressure(t, 0.8)).isEqualTo(0.8 * SaturationOverWater.pressure(t));
    }

    private static double ratio(double celsius) {
        double t = Celsius.toKelvin(celsius);
        return SaturationOverWater.pressure(t) / SaturationPressure.pressure(t);
    }

    @Test
    void refusesCelsius() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SaturationPressure.pressure(20))
                .withMessage("temperature must be from 173.15 to 473.15 K, but was 20");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SaturationOverWater.pressure(20))
                .withMessage("temperature must be from 233.15 to 323.15 K, but was 20");
    }

    @Test
    void refusesPercent() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SaturationOverWater.vapourPressure(263.15, 80))
                .withMessage("relative humidity must be from 0 to 1 (fraction; 45 % is 0.45), but was 80");
    }

    /** The two forms do not quite meet: the triple point itself is reckoned as water, so nothing jumps just above it. */
    @Test
    void theTriplePointCountsAsWater() {
        double triple = Celsius.toKelvin(0.01);
        double water = SaturationPressure.pressure(triple);
        assertThat(SaturationPressure.pressure(Math.nextUp(triple))).isCloseTo(water, within(1e-9));
        assertThat(Math.abs(SaturationPressure.pressure(Math.nextDown(triple)) - water))
                .isGreaterThan(1e-6);
    }
}
