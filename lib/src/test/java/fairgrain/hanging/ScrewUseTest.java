package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.fastener.LoadDuration;
import fairgrain.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What weight and pull together use of one screw, and where it gives way first. */
class ScrewUseTest {
    private static ScrewHold screw(double lateral, double thread, double head, double steel, boolean straight) {
        return new ScrewHold(
                Length.mm(40),
                Length.mm(40),
                Length.mm(30),
                lateral,
                2 * lateral,
                thread,
                head,
                steel,
                "it bends",
                straight,
                straight,
                500,
                1000,
                1);
    }

    /** 50/200 + 30/300; for ten minutes both count 1.6/0.9 more, but steel gains nothing: 533 N of head against 400 N. */
    @Test
    void thePlainSumTakesTheWeakerEndOfTheScrew() {
        ScrewHold hold = screw(200, 600, 300, 400, false);
        assertThat(hold.straightLine(50, 30, LoadDuration.PERMANENT)).isCloseTo(0.25 + 0.1, within(1e-12));
        assertThat(hold.straightLine(50, 30, LoadDuration.TEN_MINUTES))
                .isCloseTo(0.25 * 0.9 / 1.6 + 30 / 400.0, within(1e-12));
        // the head is the weaker end, so the plain sum rules the use as well
        assertThat(hold.used(50, 30)).isCloseTo(0.35, within(1e-12));
        assertThat(hold.used(50, 30, LoadDuration.TEN_MINUTES)).isCloseTo(0.25 * 0.9 / 1.6 + 30 / 400.0, within(1e-12));
    }

    @Test
    void declaredValuesAreAddedStraightAndGainNothing() {
        ScrewHold hold = screw(200, 300, 600, 600, true);
        for (LoadDuration duration : LoadDuration.values()) {
            assertThat(hold.used(50, 30, duration)).isCloseTo(0.25 + 0.1, within(1e-12));
        }
        // the thread being the weaker end, the code's own form, which lies below the sum, rules where no maker's values
        // do
        assertThat(screw(200, 300, 600, 600, false).used(50, 30))
                .isLessThan(0.35)
                .isGreaterThanOrEqualTo(0.25);
    }

    @ParameterizedTest
    @CsvSource({
        // lateral, thread, head, steel, shear, pull
        "200, 400, 300, 500, 1, 0, it bends",
        "200, 400, 300, 500, 200, 300, it bends",
        "200, 400, 300, 500, 100, 300, its head pulls through the rail",
        "200, 400, 500, 450, 0, 1, its thread pulls out of the stud",
        "200, 400, 300, 250, 0, 1, the screw itself tears",
        "200, 400, 600, 400, 0, 1, 'it pulls out of the wall, by its maker''s value'",
        "0, 400, 600, 400, 0, 1, it bends"
    })
    void itGivesWayWhereMostOfItIsUsed(
            double lateral, double thread, double head, double steel, double shear, double pull, String where) {
        assertThat(screw(lateral, thread, head, steel, false).weakest(shear, pull))
                .isEqualTo(where);
    }

    @ParameterizedTest
    @CsvSource({"0, 400, 300, 500", "200, 0, 300, 500", "200, 400, 0, 500", "200, 400, 300, 0"})
    void whereOneLinkHoldsNothingNothingHolds(double lateral, double thread, double head, double steel) {
        ScrewHold hold = screw(lateral, thread, head, steel, false);
        assertThat(hold.used(0, 0)).isEqualTo(1000);
        assertThat(hold.used(0, 0, LoadDuration.TEN_MINUTES)).isEqualTo(1000);
        assertThat(hold.straightLine(0, 0, LoadDuration.PERMANENT)).isEqualTo(1000);
        assertThat(hold.usedInATest(0, 0)).isEqualTo(1000);
    }

    /** 250/500 alone, 500/1000 alone; together Hankinson's load over its value. */
    @Test
    void aShortTestHasAStrengthOfItsOwn() {
        ScrewHold hold = screw(200, 400, 300, 500, false);
        assertThat(hold.usedInATest(250, 0)).isCloseTo(0.5, within(1e-12));
        assertThat(hold.usedInATest(0, 500)).isCloseTo(0.5, within(1e-12));
        assertThat(hold.straightOnTheStud().usedInATest(250, 0)).isCloseTo(0.5, within(1e-12));
        assertThat(hold.straightOnTheStud().lateral()).isEqualTo(400);
        ScrewHold unknown = new ScrewHold(
                hold.depth(),
                hold.point(),
                hold.leastDepth(),
                200,
                200,
                400,
                300,
                500,
                "it bends",
                true,
                true,
                0,
                0,
                1);
        assertThat(unknown.usedInATest(1, 1)).isEqualTo(1000);
        assertThat(unknown.used(50, 30)).isLessThan(1);
    }
}
