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
import org.junit.jupiter.params.provider.CsvSource;

class MoistureExclusionTest {
    private static final double DAY = 86400;

    @ParameterizedTest(name = "{0}, {1}, {8}")
    @CsvFileSource(resources = "/published/finish-tests.csv", useHeadersInDisplayName = true)
    void oneFilmRateExplainsAllThreeDays(
            String finish,
            int coats,
            double filmRatePerDay,
            double after1,
            double after7,
            double after14,
            double rmsPoints,
            double tolerance,
            String source,
            String basis) {
        double k = filmRatePerDay / DAY;
        double one = 100 * MoistureExclusion.effectiveness(k, DAY) - after1;
        double seven = 100 * MoistureExclusion.effectiveness(k, 7 * DAY) - after7;
        double fourteen = 100 * MoistureExclusion.effectiveness(k, 14 * DAY) - after14;
        double rms = Math.sqrt((one * one + seven * seven + fourteen * fourteen) / 3);
        assertThat(rms)
                .as(finish + ", coats " + coats + ", " + source + ", " + basis)
                .isCloseTo(rmsPoints, within(tolerance));
        assertThat(rms).isLessThan(5);
    }

    @ParameterizedTest
    @CsvSource({"1, 97", "7, 86", "14, 74"})
    void threeCoatsOfTwoPartPolyurethanePaint(int days, double expected) {
        // the model as first reckoned, R* 22.7 and f 0.5 a day, to its whole points
        assertThat(100 * MoistureExclusion.effectiveness(0.5 / 22.7 / DAY, days * DAY))
                .isCloseTo(expected, within(0.5));
    }

    @Property(tries = 200)
    void theFilmRateGivesTheEffectivenessBack(
            @ForAll @Scale(9) @DoubleRange(min = 0.001, max = 20) double ratePerDay,
            @ForAll @Scale(9) @DoubleRange(min = 1, max = 30) double days) {
        double mee = MoistureExclusion.effectiveness(ratePerDay / DAY, days * DAY);
        assertThat(MoistureExclusion.effectiveness(MoistureExclusion.filmRate(mee, days * DAY), days * DAY))
                .isCloseTo(mee, within(1e-9));
    }

    @Property(tries = 200)
    void moreFilmNeverExcludesLess(
            @ForAll @Scale(9) @DoubleRange(min = 0.001, max = 10) double ratePerDay,
            @ForAll @Scale(9) @DoubleRange(min = 1.001, max = 10) double faster,
            @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 60) double days) {
        double thick = MoistureExclusion.effectiveness(ratePerDay / DAY, days * DAY);
        assertThat(thick).isBetween(0.0, 1.0);
        assertThat(MoistureExclusion.effectiveness(ratePerDay * faster / DAY, days * DAY))
                .isLessThanOrEqualTo(thick);
    }

    @Property
    void anyFilmIsSlowerThanNone(
            @ForAll @Scale(9) @DoubleRange(min = 1e-3, max = 10) double ratePerDay,
            @ForAll @Scale(9) @DoubleRange(min = 200, max = 1200) double density) {
        double film = SurfaceCoefficient.film(ratePerDay / DAY, density);
        double both = SurfaceCoefficient.finished(ratePerDay / DAY, density);
        assertThat(both).isLessThan(SurfaceCoefficient.BARE).isLessThan(film);
        assertThat(1 / both).isCloseTo(1 / film + 1 / SurfaceCoefficient.BARE, within(1e-9 / both));
    }

    @Property
    void aFilmOnTwiceAsDenseAWoodCountsHalf(
            @ForAll @Scale(9) @DoubleRange(min = 1e-3, max = 10) double ratePerDay,
            @ForAll @Scale(9) @DoubleRange(min = 100, max = 700) double density) {
        double film = SurfaceCoefficient.film(ratePerDay / DAY, density);
        assertThat(SurfaceCoefficient.film(ratePerDay / DAY, 2 * density)).isCloseTo(film / 2, within(1e-12 * film));
    }

    @Test
    void refusals() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MoistureExclusion.effectiveness(0.0643, 7 * DAY))
                .withMessage("film rate must be from 1.0E-9 to 0.01 1/s, but was 0.0643");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MoistureExclusion.effectiveness(0.0643 / DAY, 7))
                .withMessage("time must be from 3600 to 1.0E8 s, but was 7");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MoistureExclusion.filmRate(64, 7 * DAY))
                .withMessageStartingWith("effectiveness must be from ")
                .withMessageEndingWith(" (fraction; 64 % is 0.64), but was 64");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SurfaceCoefficient.film(1e-6, 0.45))
                .withMessage("oven-dry density must be from 80 to 1400 kg/m^3, but was 0.45");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SurfaceCoefficient.withFilm(5, 1e-8))
                .withMessage("bare surface coefficient must be from 1.0E-12 to 0.001 m/s, but was 5");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SurfaceCoefficient.withFilm(5e-8, 0))
                .withMessage("film coefficient must be from 1.0E-14 to 0.001 m/s, but was 0");
    }
}
