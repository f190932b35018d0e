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

class MeasuringTest {
    @ParameterizedTest(name = "{0}, {3}")
    @CsvFileSource(resources = "/published/meter-temperature.csv", useHeadersInDisplayName = true)
    void meterCorrectedForTemperature(
            double colder, double expectedPercent, double tolerancePercent, String source, String basis) {
        double corrected = MeterReading.temperatureCorrected(0.10, 293.15 - colder, 293.15);
        assertThat(100 * (corrected - 0.10))
                .as(source + ", " + basis)
                .isCloseTo(expectedPercent, within(tolerancePercent));
    }

    @ParameterizedTest(name = "{0}, {3}")
    @CsvFileSource(resources = "/published/meter-range.csv", useHeadersInDisplayName = true)
    void meterRange(MeterReading.Kind kind, double leastPercent, double mostPercent, String source, String basis) {
        double least = leastPercent / 100;
        double most = mostPercent / 100;
        assertThat(kind.reliable(least)).as(source + ", " + basis).isTrue();
        assertThat(kind.reliable(most)).isTrue();
        assertThat(kind.reliable(Math.nextDown(least))).isFalse();
        assertThat(kind.reliable(Math.nextUp(most))).isFalse();
    }

    @Property
    void colderWoodHoldsMoreThanTheMeterSays(
            @ForAll @Scale(9) @DoubleRange(min = 0.06, max = 0.3) double reading,
            @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 25) double colder) {
        assertThat(MeterReading.temperatureCorrected(reading, 293.15 - colder, 293.15))
                .isGreaterThan(reading);
        assertThat(MeterReading.temperatureCorrected(reading, 293.15 + colder, 293.15))
                .isLessThan(reading);
    }

    @Test
    void aCorrectionStopsAtDryWood() {
        assertThat(MeterReading.temperatureCorrected(0.01, 343.15, 293.15)).isZero();
    }

    @Test
    void ovenTestOfAnOffcut() {
        // 54.0 g and 50.0 g on a scale good to 0.1 g
        assertThat(OvenTest.moisture(0.0540, 0.0500)).isCloseTo(0.08, within(1e-12));
        double u = OvenTest.uncertainty(0.0540, 0.0500, 0.0001);
        assertThat(u).isCloseTo(0.00294, within(5e-6)); // 0.002 times the root of 1 + 1.08 squared
    }

    @Property
    void ovenTestGivesTheMoistureBack(
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 2) double m,
            @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 5) double dry) {
        assertThat(OvenTest.moisture(dry * (1 + m), dry)).isCloseTo(m, within(1e-12));
    }

    @Property
    void twoWeighingsBothAtTheirWorstStayWithinTheRootOfTwo(
            @ForAll @Scale(9) @DoubleRange(min = 0.05, max = 1) double m,
            @ForAll @Scale(9) @DoubleRange(min = 1e-6, max = 1e-3) double share) {
        double dry = 0.05;
        double wet = dry * (1 + m);
        double u = share * dry;
        double worst = OvenTest.moisture(wet + u, dry - u) - OvenTest.moisture(wet, dry);
        assertThat(worst).isLessThan(Math.sqrt(2) * OvenTest.uncertainty(wet, dry, u) * (1 + 2 * share));
        assertThat(worst).isGreaterThan(OvenTest.uncertainty(wet, dry, u));
    }

    @Test
    void refusals() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MeterReading.temperatureCorrected(8, 293.15, 293.15))
                .withMessage("meter reading must be from 0 to 0.6 (fraction; 8 % is 0.08), but was 8");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MeterReading.temperatureCorrected(0.08, 20, 293.15))
                .withMessage("temperature of the wood must be from 243.15 to 373.15 K, but was 20");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MeterReading.temperatureCorrected(0.08, 293.15, 20))
                .withMessage("calibration temperature must be from 273.15 to 323.15 K, but was 20");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> OvenTest.moisture(0.05, 0.06))
                .withMessage("wet mass must be from 0.06 to 0.24 kg, but was 0.05");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> OvenTest.moisture(0.05, 0))
                .withMessage("dry mass must be from 1.0E-4 to 100 kg, but was 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> OvenTest.uncertainty(0.06, 0.05, 0.1))
                .withMessage("uncertainty of one weighing must be from 0 to 0.05 kg, but was 0.1");
    }
}
