package fairgrain.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.NotEmpty;
import org.junit.jupiter.api.Test;

class SeenMonthsTest {
    private static double hidden(Month first, Month... others) {
        return new SeenMonths(EnumSet.of(first, others)).hidden();
    }

    private static Set<Month> run(Month first, int months) {
        EnumSet<Month> run = EnumSet.noneOf(Month.class);
        for (int i = 0; i < months; i++) {
            run.add(first.plus(i));
        }
        return run;
    }

    @Test
    void twelveMonthsHideNothingAndThreeThatAreWellApartLittle() {
        assertThat(new SeenMonths(EnumSet.allOf(Month.class)).hidden()).isZero();
        // three a third of the year apart: one on the peak, the others halfway down
        assertThat(hidden(Month.JANUARY, Month.MAY, Month.SEPTEMBER)).isCloseTo(1 / 3.0, within(1e-9));
    }

    @Property
    void sevenMonthsInARowHideAsMuchAsTheyShow(@ForAll Month first) {
        SeenMonths seven = new SeenMonths(run(first, 7));
        assertThat(seven.hidden()).isCloseTo(1, within(1e-9));
        assertThat(seven.isEnough()).isTrue();
        assertThat(new SeenMonths(run(first, 6)).isEnough()).isFalse();
    }

    @Property
    void halfAYearApartMayBothBeTheMean(@ForAll Month first) {
        assertThat(hidden(first, first.plus(6))).isInfinite();
    }

    @Property(tries = 300)
    void seeingMoreNeverHidesMore(@ForAll @NotEmpty Set<Month> seen, @ForAll Month more) {
        EnumSet<Month> wider = EnumSet.copyOf(seen);
        wider.add(more);
        assertThat(new SeenMonths(wider).hidden()).isLessThanOrEqualTo(new SeenMonths(seen).hidden());
    }

    /** The angles between the steps at which the peak is tried cost a hair. */
    @Property(tries = 300)
    void aWaveNeverGoesFurtherBeyondWhatWasSeen(
            @ForAll @NotEmpty Set<Month> seen, @ForAll @DoubleRange(min = 0, max = 6.3) double peak) {
        SeenMonths months = new SeenMonths(seen);
        if (!months.isEnough()) {
            return;
        }
        double most = -1;
        double least = 1;
        double all = -1;
        double none = 1;
        for (Month month : Month.values()) {
            double wave = Math.cos(month.number() * Math.PI / 6 - peak);
            all = Math.max(all, wave);
            none = Math.min(none, wave);
            most = seen.contains(month) ? Math.max(most, wave) : most;
            least = seen.contains(month) ? Math.min(least, wave) : least;
        }
        double mayHide = (months.hidden() + 0.1) * (most - least);
        assertThat(all - most).isLessThanOrEqualTo(mayHide + 1e-9);
        assertThat(least - none).isLessThanOrEqualTo(mayHide + 1e-9);
    }

    @Property(tries = 60)
    void theMonthsToAddAreEnoughAndOneFewerIsNot(@ForAll @NotEmpty Set<Month> seen) {
        EnumSet<Month> wider = EnumSet.copyOf(seen);
        wider.addAll(new SeenMonths(seen).toAdd());
        assertThat(new SeenMonths(wider).isEnough()).isTrue();
        for (Month month : new SeenMonths(seen).toAdd()) {
            EnumSet<Month> fewer = EnumSet.copyOf(wider);
            fewer.remove(month);
            assertThat(new SeenMonths(fewer).isEnough()).isFalse();
        }
    }
}
