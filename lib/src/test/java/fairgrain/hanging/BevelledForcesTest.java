package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.quantity.Length;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** How much harder a case presses at one end of its strips, 1.2 m long, by hand. The case stands with 400 N, 0.15 m from the wall: 60 N·m. */
class BevelledForcesTest {
    private static final Length WIDE = Length.mm(1200);

    /** A case that lies on the wall itself, so that nothing but these loads turns it. */
    private static BevelledForces forces(Demand demand) {
        BevelledRails rails =
                BevelledRailsTest.thick(5, BevelledPair.Bearing.RECESSED_BACK, Optional.of(true), LoadCases.ALWAYS);
        BevelledPlaces at = BevelledPlaces.of(rails.hanging().fixing(), rails.pair());
        return BevelledForces.of(demand, at, rails.pair(), WIDE);
    }

    private static double peak(
            double even, double evenMoment, double evenTurning, double person, double reach, double personAt) {
        return forces(new Demand(
                        LoadCase.CHILD_CLIMBING,
                        even,
                        evenMoment,
                        evenTurning,
                        person,
                        reach,
                        personAt,
                        0,
                        0,
                        Demand.Side.RIGHT))
                .peak();
    }

    /** 100 N at 0.3 m from the wall, 0.4 m off the middle: of 90 N·m in all 30 act there, so 0.133 m; the weight only 40/500 m. */
    @Test
    void aPersonAtOneEndDrawsThePullFartherAsideThanTheWeight() {
        assertThat(peak(400, 60, 0, 100, 0.3, 0.4)).isCloseTo(1 + 6 * (12 / 90.0) / 1.2, within(1e-12));
        assertThat(peak(400, 60, 0, 100, 0.3, -0.4)).isCloseTo(1 + 6 * (12 / 90.0) / 1.2, within(1e-12));
    }

    /** The same person close to the wall: 3 of 63 N·m, 0.019 m; but the weight stands 0.08 m aside. */
    @Test
    void aPersonCloseToTheWallMovesTheWeightFartherAsideThanThePull() {
        assertThat(peak(400, 60, 0, 100, 0.03, 0.4)).isCloseTo(1.4, within(1e-12));
    }

    /** The case itself 0.1 m to the left: 6 N·m² one way and 12 the other, or 18 together, of 90 N·m: 0.0667 and 0.2 m. */
    @Test
    void aCaseThatHangsToOneSideBalancesAPersonAtTheOtherAndAddsToOneAtTheSame() {
        assertThat(peak(400, 60, -40, 100, 0.3, 0.4)).isCloseTo(1 + 6 * (6 / 90.0) / 1.2, within(1e-12));
        assertThat(peak(400, 60, 40, 100, 0.3, 0.4)).isCloseTo(2, within(1e-9));
    }

    /** 300 of 360 N·m at 0.6 m: 0.5 m aside, so 3 (0.6 − 0.5) = 0.3 m of the strip bear: 2 · 1.2/0.3 = 8. */
    @Test
    void beyondASixthOfItsLengthOnlyPartOfTheStripBears() {
        assertThat(peak(400, 60, 0, 1000, 0.3, 0.6)).isCloseTo(8, within(1e-9));
    }

    /** 600 N·m on 1010 N: 0.594 m of 0.6 m. It is as good as tipping, and must never be said to hold. */
    @Test
    void whereItTipsOffEverythingCountsFortyTimes() {
        assertThat(peak(10, 1.5, 0, 1000, 0.3, 0.6)).isEqualTo(40);
    }

    @Test
    void whatWeighsNothingOrTurnsNothingStillHasAPeak() {
        assertThat(peak(0, 0, 0, 0, 0, 0)).isEqualTo(1);
        assertThat(peak(400, 0, 40, 0, 0, 0)).as("0.1 m aside, no moment").isCloseTo(1.5, within(1e-12));
        assertThat(peak(0, 0, 0, 100, 0.3, 0.1)).as("a person alone").isCloseTo(1.5, within(1e-12));
    }
}
