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
import org.junit.jupiter.params.provider.ValueSource;

class PeriodicResponseTest {
    private static final double D = 1e-10;

    @ParameterizedTest(name = "{0}, {1}, {4}")
    @CsvFileSource(resources = "/published/penetration-depth.csv", useHeadersInDisplayName = true)
    void penetrationDepth(
            double diffusivity, double periodDays, double expectedMm, double toleranceMm, String source, String basis) {
        double depth = PeriodicResponse.penetrationDepth(diffusivity, periodDays * 86400);
        assertThat(1000 * depth).as(source + ", " + basis).isCloseTo(expectedMm, within(toleranceMm));
    }

    @ParameterizedTest(name = "{0}, {1}, {7}")
    @CsvFileSource(resources = "/published/periodic-response.csv", useHeadersInDisplayName = true)
    void meanAndMiddle(
            double depthRatio,
            double biot,
            double meanAmplitude,
            double meanLag,
            double middleAmplitude,
            double middleLag,
            double tolerance,
            String source,
            String basis) {
        double year = PeriodicResponse.YEAR;
        double depth = depthRatio * PeriodicResponse.penetrationDepth(D, year);
        double surface = biot * D / depth;
        Swing mean = PeriodicResponse.mean(depth, D, surface, year);
        assertThat(mean.amplitude()).as(source + ", " + basis).isCloseTo(meanAmplitude, within(tolerance));
        assertThat(radians(mean)).isCloseTo(meanLag, within(tolerance));
        Swing middle = PeriodicResponse.middle(depth, D, surface, year);
        assertThat(middle.amplitude()).isCloseTo(middleAmplitude, within(tolerance));
        assertThat(radians(middle) % (2 * Math.PI)).isCloseTo(middleLag, within(tolerance));
    }

    @ParameterizedTest(name = "{0}, {2}, {3}, {8}")
    @CsvFileSource(resources = "/published/board-response.csv", useHeadersInDisplayName = true)
    void boardThroughAYearOrADay(
            double thicknessMm,
            double diffusivity,
            double surface,
            double periodDays,
            double amplitude,
            double amplitudeTolerance,
            double lagDays,
            double lagTolerance,
            String source,
            String basis) {
        Swing mean = PeriodicResponse.mean(thicknessMm / 2000, diffusivity, surface, periodDays * 86400);
        assertThat(mean.amplitude()).as(source + ", " + basis).isCloseTo(amplitude, within(amplitudeTolerance));
        assertThat(mean.lag() / 86400).isCloseTo(lagDays, within(lagTolerance));
    }

    @ParameterizedTest(name = "{0}, {1}, {7}")
    @CsvFileSource(resources = "/published/finished-board-year.csv", useHeadersInDisplayName = true)
    void finishedBoardThroughAYear(
            String finish,
            int coats,
            double filmRatePerDay,
            double amplitude,
            double amplitudeTolerance,
            double lagDays,
            double lagTolerance,
            String source,
            String basis) {
        double surface = SurfaceCoefficient.withFilm(4.8e-8, SurfaceCoefficient.film(filmRatePerDay / 86400, 400));
        Swing mean = PeriodicResponse.mean(0.010, D, surface, PeriodicResponse.YEAR);
        assertThat(mean.amplitude())
                .as(finish + ", coats " + coats + ", " + source + ", " + basis)
                .isCloseTo(amplitude, within(amplitudeTolerance));
        assertThat(mean.lag() / 86400).isCloseTo(lagDays, within(lagTolerance));
    }

    @Property
    void noSwingIsWiderThanThatOfTheAirOrAheadOfIt(
            @ForAll @Scale(9) @DoubleRange(min = 0.0005, max = 0.3) double depth,
            @ForAll @Scale(9) @DoubleRange(min = 1e-2, max = 1e2) double biot,
            @ForAll @Scale(9) @DoubleRange(min = 1, max = 400) double days) {
        double surface = biot * D / depth;
        double period = days * 86400;
        Swing mean = PeriodicResponse.mean(depth, D, surface, period);
        Swing face = PeriodicResponse.face(depth, D, surface, period);
        Swing middle = PeriodicResponse.middle(depth, D, surface, period);
        assertThat(face.amplitude()).isBetween(mean.amplitude() - 1e-12, 1 + 1e-12);
        assertThat(mean.amplitude()).isGreaterThanOrEqualTo(middle.amplitude() - 1e-12);
        assertThat(face.lag()).isBetween(0.0, mean.lag() + 1e-6 * period);
        assertThat(middle.lag()).isGreaterThanOrEqualTo(mean.lag() - 1e-6 * period);
    }

    @Property
    void moreFilmNeverFollowsFurtherOrSooner(
            @ForAll @Scale(9) @DoubleRange(min = 0.001, max = 0.05) double depth,
            @ForAll @Scale(9) @DoubleRange(min = 1e-3, max = 10) double filmRatePerDay,
            @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 0.99) double slower) {
        double thin = SurfaceCoefficient.finished(filmRatePerDay / 86400, 500);
        double thick = SurfaceCoefficient.finished(filmRatePerDay * slower / 86400, 500);
        Swing under = PeriodicResponse.mean(depth, D, thick, PeriodicResponse.YEAR);
        Swing less = PeriodicResponse.mean(depth, D, thin, PeriodicResponse.YEAR);
        assertThat(under.amplitude()).isLessThanOrEqualTo(less.amplitude() + 1e-12);
        assertThat(under.lag()).isGreaterThanOrEqualTo(less.lag() - 1e-3);
    }

    @Test
    void aYearIsThatOfTheCalendar() {
        assertThat(PeriodicResponse.YEAR / PeriodicResponse.DAY).isEqualTo(365.2425);
    }

    @Test
    void aThinSlabFollowsAsOneLump() {
        // lag a^2/(3 D) + a/S
        double a = 0.0005;
        double tau = a * a / (3 * D) + a / 5e-8;
        Swing mean = PeriodicResponse.mean(a, D, 5e-8, PeriodicResponse.YEAR);
        assertThat(mean.lag()).isCloseTo(tau, within(1e-3 * tau));
        assertThat(mean.amplitude()).isCloseTo(1, within(1e-5));
    }

    @Test
    void aDeepSlabFollowsByItsSkinAnEighthOfAPeriodLate() {
        double delta = PeriodicResponse.penetrationDepth(D, PeriodicResponse.DAY);
        Swing mean = PeriodicResponse.mean(50 * delta, D, Double.POSITIVE_INFINITY, PeriodicResponse.DAY);
        assertThat(mean.amplitude()).isCloseTo(1 / (Math.sqrt(2) * 50), within(1e-12));
        assertThat(mean.lag()).isCloseTo(PeriodicResponse.DAY / 8, within(1e-6));
    }

    @Test
    void theMiddleOfAVeryDeepSlabStandsStill() {
        Swing middle = PeriodicResponse.middle(1, 1e-14, 5e-8, 3600);
        assertThat(middle.amplitude()).isZero();
        assertThat(middle.lag()).isPositive();
    }

    @Test
    void refusals() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PeriodicResponse.mean(0.01, D, 5e-8, 1))
                .withMessage("period must be from 60 to 1.0E10 s, but was 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PeriodicResponse.face(10, D, 5e-8, 86400))
                .withMessage("depth must be from 1.0E-5 to 1 m, but was 10");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PeriodicResponse.middle(0.01, Double.NaN, 5e-8, 86400))
                .withMessage("diffusivity must be from 1.0E-14 to 1.0E-7 m^2/s, but was NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Swing(1.5, 0))
                .withMessage("amplitude must be from 0 to 1.000000000001 (share of the air's), but was 1.5");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Swing(0.5, -1))
                .withMessage("lag must be 0 s or more, but was -1");
    }

    private static double radians(Swing swing) {
        return 2 * Math.PI * swing.lag() / PeriodicResponse.YEAR;
    }

    /** With no resistance at the face, a wave that goes a penetration depth in one radian is as many radians late as the slab is deep. */
    @ParameterizedTest
    @ValueSource(doubles = {8, 10, 12, 16, 20, 25})
    void theMiddleOfADeepSlabLagsByMoreThanATurn(double depths) {
        double delta = PeriodicResponse.penetrationDepth(D, PeriodicResponse.DAY);
        Swing middle = PeriodicResponse.middle(depths * delta, D, Double.POSITIVE_INFINITY, PeriodicResponse.DAY);
        double radians = 2 * Math.PI * middle.lag() / PeriodicResponse.DAY;
        assertThat(radians).isCloseTo(depths, within(1e-6));
        assertThat(middle.amplitude()).isCloseTo(2 * Math.exp(-depths), within(1e-6 * Math.exp(-depths)));
    }
}
