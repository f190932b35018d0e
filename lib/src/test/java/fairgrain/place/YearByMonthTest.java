package fairgrain.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.quantity.Estimate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class YearByMonthTest {
    private static final Estimate DRY = new Estimate(0.06, 0.004);
    private static final Estimate DAMP = new Estimate(0.10, 0.008);

    @Test
    void betweenTheEndsItRunsAlongHalfAWaveUpAndHalfAWaveDown() {
        YearByMonth year = YearByMonth.between(Month.JANUARY, DRY, Month.JULY, DAMP);
        assertThat(year.in(Month.JANUARY)).isEqualTo(DRY);
        assertThat(year.in(Month.JULY)).isEqualTo(DAMP);
        assertThat(year.in(Month.APRIL).expected()).isCloseTo(0.08, within(1e-12));
        assertThat(year.in(Month.OCTOBER).expected()).isCloseTo(0.08, within(1e-12));
        assertThat(year.in(Month.MARCH).expected()).isCloseTo(0.06 + 0.04 * 0.25, within(1e-12));
        assertThat(year.in(Month.APRIL).sd()).isCloseTo(0.006, within(1e-12));
        assertThat(year.drawn()).hasSize(10).doesNotContain(Month.JANUARY, Month.JULY);
    }

    @Property
    void everyMonthLiesBetweenTheEndsAndRisesUntilTheDampest(@ForAll Month driest, @ForAll Month dampest) {
        Assume.that(driest != dampest);
        YearByMonth year = YearByMonth.between(driest, DRY, dampest, DAMP);
        for (int i = 0; i < driest.until(dampest); i++) {
            assertThat(year.in(driest.plus(i)).expected())
                    .isLessThan(year.in(driest.plus(i + 1)).expected());
        }
        for (int i = 0; i < dampest.until(driest); i++) {
            assertThat(year.in(dampest.plus(i)).expected())
                    .isGreaterThan(year.in(dampest.plus(i + 1)).expected());
        }
    }

    @Property
    void onTheOtherHalfOfTheGlobeEachMonthComesHalfAYearLater(@ForAll Month driest, @ForAll Month dampest) {
        Assume.that(driest != dampest);
        YearByMonth north = YearByMonth.between(driest, DRY, dampest, DAMP);
        YearByMonth south = north.halfAYearOn();
        assertThat(south.in(driest.plus(6))).isEqualTo(DRY);
        assertThat(south).isEqualTo(YearByMonth.between(driest.plus(6), DRY, dampest.plus(6), DAMP));
        assertThat(south.halfAYearOn()).isEqualTo(north);
    }

    @Property
    void whatIsKnownStaysAsItIsAndOnlyTheRestIsDrawn(
            @ForAll @DoubleRange(min = 0.03, max = 0.2) double march,
            @ForAll @DoubleRange(min = 0.03, max = 0.2) double june,
            @ForAll @DoubleRange(min = 0.03, max = 0.2) double october) {
        Map<Month, Estimate> known = Map.of(
                Month.MARCH, new Estimate(march, 0),
                Month.JUNE, new Estimate(june, 0),
                Month.OCTOBER, new Estimate(october, 0));
        YearByMonth year = YearByMonth.of(known);
        assertThat(year.drawn()).hasSize(9);
        known.forEach((month, estimate) -> assertThat(year.in(month)).isEqualTo(estimate));
        double least = Math.min(march, Math.min(june, october));
        double most = Math.max(march, Math.max(june, october));
        assertThat(year.months())
                .allSatisfy(month -> assertThat(month.expected()).isBetween(least - 1e-12, most + 1e-12));
    }

    @Test
    void refusals() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> YearByMonth.between(Month.MAY, DRY, Month.MAY, DAMP))
                .withMessage("the driest and the dampest month must differ, but both were May");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new YearByMonth(List.of(DRY), Set.of()))
                .withMessage("a year has 12 months, but these were 1");
        YearByMonth year = YearByMonth.between(Month.JANUARY, DRY, Month.JULY, DAMP);
        Evidence any = Evidence.of(Citation.of("own", "a test", Basis.JUDGEMENT));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MoistureYear(
                        new Estimate(0.07, 0), new Estimate(0.11, 0), 0.005, "a test", any, Optional.of(year)))
                .withMessageMatching(
                        "a month of the year must be from 0\\.0699\\d* to 0\\.1100\\d* \\(a fraction, between"
                                + " the ends\\), but was 0\\.06");
    }
}
