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
import org.junit.jupiter.params.provider.ValueSource;

class SlabUptakeTest {
    @ParameterizedTest(name = "{0}, {1}, {5}")
    @CsvFileSource(resources = "/published/slab-roots.csv", useHeadersInDisplayName = true)
    void rootsAndWeights(
            double biot,
            int index,
            double expected,
            @Nullable Double weight,
            double tolerance,
            String source,
            String basis) {
        double root = SlabRoots.root(index, biot);
        assertThat(root).as(source + ", " + basis).isCloseTo(expected, within(tolerance));
        if (weight != null) {
            assertThat(SlabRoots.weight(root)).isCloseTo(weight, within(tolerance));
        }
    }

    @ParameterizedTest(name = "{0}, {1}, {4}")
    @CsvFileSource(resources = "/published/slab-uptake.csv", useHeadersInDisplayName = true)
    void shareOfTheChange(double fourier, double biot, double expected, double tolerance, String source, String basis) {
        assertThat(SlabUptake.fraction(fourier, biot)).as(source + ", " + basis).isCloseTo(expected, within(tolerance));
    }

    @ParameterizedTest(name = "{0}, {1}, {2}, {5}")
    @CsvFileSource(resources = "/published/slab-profile.csv", useHeadersInDisplayName = true)
    void middleAndFace(
            double fourier,
            double biot,
            double position,
            double expected,
            double tolerance,
            String source,
            String basis) {
        assertThat(SlabProfile.change(position, fourier, biot))
                .as(source + ", " + basis)
                .isCloseTo(expected, within(tolerance));
    }

    @ParameterizedTest(name = "{0}, {1}, {4}")
    @CsvFileSource(resources = "/published/slab-fourier.csv", useHeadersInDisplayName = true)
    void fourierNumberOfAShare(
            double fraction, double biot, double expected, double tolerance, String source, String basis) {
        assertThat(SlabUptake.fourierAt(fraction, biot))
                .as(source + ", " + basis)
                .isCloseTo(expected, within(tolerance));
    }

    @ParameterizedTest(name = "{0}, {2}, {3}, {6}")
    @CsvFileSource(resources = "/published/slab-times.csv", useHeadersInDisplayName = true)
    void timeOfAShare(
            double thicknessMm,
            double diffusivity,
            double surface,
            double fraction,
            double expectedDays,
            double toleranceDays,
            String source,
            String basis) {
        double time = SlabUptake.time(fraction, thicknessMm / 2000, diffusivity, surface);
        assertThat(time / 86400).as(source + ", " + basis).isCloseTo(expectedDays, within(toleranceDays));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-3, 0.1, 1, 10, 100, 1e4, Double.POSITIVE_INFINITY})
    void theShortAndTheLongFormMeet(double biot) {
        double early = SlabUptake.fraction(0.03, biot);
        double late = SlabUptake.fraction(Math.nextUp(0.03), biot);
        assertThat(late).isCloseTo(early, within(1e-13));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 1, 20})
    void theFaintFormMeetsTheShortOne(double biot) {
        // at X = Bi sqrt(Fo) = 1e-3
        double fo = 1e-6 / (biot * biot);
        if (fo < 0.03) {
            double below = SlabUptake.fraction(fo * (1 - 1e-12), biot);
            double above = SlabUptake.fraction(fo * (1 + 1e-12), biot);
            assertThat(above).isCloseTo(below, within(1e-6 * below));
        }
    }

    @Property
    void theShareRisesWithTimeAndStaysBetweenNoneAndAll(
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 3) double fo,
            @ForAll @Scale(9) @DoubleRange(min = 1e-6, max = 0.5) double later,
            @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 200) double biot) {
        double first = SlabUptake.fraction(fo, biot);
        assertThat(first).isBetween(0.0, 1.0);
        assertThat(SlabUptake.fraction(fo + later, biot)).isGreaterThanOrEqualTo(first - 1e-14);
    }

    @Property
    void moreResistanceIsNeverFaster(
            @ForAll @Scale(9) @DoubleRange(min = 1e-5, max = 3) double fo,
            @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 100) double biot,
            @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 100) double more) {
        double hindered = SlabUptake.fraction(fo, biot);
        assertThat(SlabUptake.fraction(fo, biot + more)).isGreaterThanOrEqualTo(hindered - 1e-13);
        assertThat(SlabUptake.fraction(fo, Double.POSITIVE_INFINITY)).isGreaterThanOrEqualTo(hindered - 1e-13);
    }

    @Property
    void theTimeOfAShareGivesTheShareBack(
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.999) double fraction,
            @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 100) double biot) {
        assertThat(SlabUptake.fraction(SlabUptake.fourierAt(fraction, biot), biot))
                .isCloseTo(fraction, within(1e-9));
    }

    @Property(tries = 200)
    void twiceTheThicknessTakesFourTimesAsLongWithoutSurfaceResistance(
            @ForAll @Scale(9) @DoubleRange(min = 0.001, max = 0.05) double depth) {
        double once = SlabUptake.halfTime(depth, 1e-10, Double.POSITIVE_INFINITY);
        assertThat(SlabUptake.halfTime(2 * depth, 1e-10, Double.POSITIVE_INFINITY))
                .isCloseTo(4 * once, within(1e-9 * once));
    }

    @Property(tries = 200)
    void theFaceLeadsAndTheMiddleLags(
            @ForAll @Scale(9) @DoubleRange(min = 0.001, max = 2) double fo,
            @ForAll @Scale(9) @DoubleRange(min = 0.05, max = 50) double biot) {
        double mean = SlabUptake.fraction(fo, biot);
        assertThat(SlabProfile.change(1, fo, biot)).isGreaterThanOrEqualTo(mean - 1e-12);
        assertThat(SlabProfile.change(0, fo, biot)).isLessThanOrEqualTo(mean + 1e-12);
    }

    @Property(tries = 200)
    void theMeanOfTheProfileIsTheShare(
            @ForAll @Scale(9) @DoubleRange(min = 0.02, max = 2) double fo,
            @ForAll @Scale(9) @DoubleRange(min = 0.05, max = 50) double biot) {
        int n = 200;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += SlabProfile.change((i + 0.5) / n, fo, biot);
        }
        assertThat(sum / n).isCloseTo(SlabUptake.fraction(fo, biot), within(1e-4));
    }

    @Test
    void refusals() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlabUptake.fraction(Double.NaN, 1))
                .withMessage("Fourier number must be 0 (D t/a^2) or more, but was NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlabUptake.fraction(1, 0))
                .withMessage("Biot number must be from 1.0E-9 to Infinity (S a/D), but was 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlabUptake.fourierAt(1, 1))
                .withMessage("share of the change must be from 0 to 0.999999 (1 is never reached), but was 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlabUptake.halfTime(20, 1e-10, 5e-8))
                .withMessage("depth must be from 1.0E-5 to 1 m, but was 20");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlabUptake.fourierNumber(1e-10, -1, 0.01))
                .withMessage("time must be from 0 to 1.0E11 s, but was -1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlabUptake.biotNumber(5e-8, 0.01, 1))
                .withMessage("diffusivity must be from 1.0E-14 to 1.0E-7 m^2/s, but was 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlabUptake.biotNumber(0, 0.01, 1e-10))
                .withMessage("surface coefficient must be from 1.0E-14 to Infinity m/s, but was 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlabProfile.change(2, 1, 1))
                .withMessage("position must be from 0 to 1 (0 middle, 1 face), but was 2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlabProfile.change(0, 0, 1))
                .withMessage("Fourier number must be from 1.0E-4 to 1000000.0 (D t/a^2), but was 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlabRoots.root(-1, 1))
                .withMessage("index of the root must be from 0 to 100000 (count from 0), but was -1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlabRoots.weight(0))
                .withMessage("root must be above 0 (radians), but was 0");
    }
}
