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

class TransverseDiffusionTest {
    @ParameterizedTest(name = "{0}, {1}, {2}, {5}")
    @CsvFileSource(resources = "/published/transverse-diffusion.csv", useHeadersInDisplayName = true)
    void siauAsItStands(
            double gravity,
            double moisturePercent,
            double celsius,
            double expected,
            double tolerance,
            String source,
            String basis) {
        assertThat(TransverseDiffusion.siau(gravity, moisturePercent / 100, Celsius.toKelvin(celsius)))
                .as(source + ", " + basis)
                .isCloseTo(expected, within(tolerance));
    }

    @Test
    void theAnchorIsWhereItIsSaidToBe() {
        assertThat(TransverseDiffusion.indoors(0.45)).isCloseTo(1e-10, within(1e-24));
        assertThat(TransverseDiffusion.diffusivity(0.45, 0.10, Celsius.toKelvin(20)))
                .isCloseTo(1e-10, within(1e-24));
        double ownLevel = TransverseDiffusion.siau(0.45, 0.10, Celsius.toKelvin(20));
        assertThat(1e-10 / ownLevel).isCloseTo(2.07, within(0.005));
    }

    @ParameterizedTest(name = "{0}, {5}, {8}")
    @CsvFileSource(resources = "/published/transverse-diffusion-exceptions.csv", useHeadersInDisplayName = true)
    void aKnownExceptionMeasuredWoodRisesMoreWithMoistureThanTheFormSays(
            String wood,
            double gravity,
            double celsius,
            double damp,
            double dry,
            double printed,
            double ours,
            double tolerance,
            String source,
            String basis) {
        double t = Celsius.toKelvin(celsius);
        double rise =
                TransverseDiffusion.siau(gravity, damp / 100, t) / TransverseDiffusion.siau(gravity, dry / 100, t);
        assertThat(rise).as(source + ", " + basis).isCloseTo(ours, within(tolerance));
        assertThat(printed).isGreaterThan(2 * rise);
    }

    @Property
    void denserWoodIsSlower(
            @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 1.2) double gravity,
            @ForAll @Scale(9) @DoubleRange(min = 0.001, max = 0.2) double more,
            @ForAll @Scale(9) @DoubleRange(min = 0.02, max = 0.25) double m) {
        assertThat(TransverseDiffusion.diffusivity(gravity + more, m, 293.15))
                .isLessThanOrEqualTo(TransverseDiffusion.diffusivity(gravity, m, 293.15));
    }

    @Property
    void warmerWoodIsFaster(
            @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 1.2) double gravity,
            @ForAll @Scale(9) @DoubleRange(min = 253.15, max = 323.15) double t,
            @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 10) double warmer) {
        assertThat(TransverseDiffusion.siau(gravity, 0.1, t + warmer))
                .isGreaterThan(TransverseDiffusion.siau(gravity, 0.1, t));
    }

    @Property
    void damperWoodIsFasterIndoors(
            @ForAll @Scale(9) @DoubleRange(min = 0.3, max = 1.0) double gravity,
            @ForAll @Scale(9) @DoubleRange(min = 0.03, max = 0.2) double m,
            @ForAll @Scale(9) @DoubleRange(min = 0.001, max = 0.05) double damper) {
        assertThat(TransverseDiffusion.siau(gravity, m + damper, 293.15))
                .isGreaterThan(TransverseDiffusion.siau(gravity, m, 293.15));
    }

    @Test
    void theHeaviestWoodsHaveNoLumensAndAnAnswerAllTheSame() {
        // D is then that of the cell wall alone
        double wall = 7e-6 * Math.exp(-(38500 - 290 * 30) / (8.314462618 * 293.15));
        assertThat(TransverseDiffusion.siau(1.3, 0.30, 293.15)).isCloseTo(wall, within(1e-9 * wall));
    }

    @Property
    void byMoistureIsTheSameFigure(
            @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 1.2) double gravity,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.3) double m) {
        assertThat(TransverseDiffusion.byMoisture(gravity, 295.15).at(m))
                .isEqualTo(TransverseDiffusion.diffusivity(gravity, m, 295.15));
    }

    @Test
    void refusals() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TransverseDiffusion.byMoisture(0.45, 20))
                .withMessage("temperature must be from 243.15 to 373.15 K, but was 20");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TransverseDiffusion.indoors(450))
                .withMessage("specific gravity must be from 0.08 to 1.4 (oven-dry mass against water), but was 450");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TransverseDiffusion.siau(0.5, 8, 293.15))
                .withMessage("moisture content must be from 0 to 0.4 (fraction; 8 % is 0.08), but was 8");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TransverseDiffusion.siau(0.5, 0.08, 20))
                .withMessage("temperature must be from 243.15 to 373.15 K, but was 20");
    }
}
