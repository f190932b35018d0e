package fairgrain.bending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Moments of a plate, and the loads it takes. */
class PlateMomentsTest {
    private static final double POISSON = 0.25;
    private static final PlateStiffness GLASS = PlateStiffness.isotropic(0.008, 7e10, POISSON);

    /** Largest stress by Mohr's circle: middle plus radius, whatever the sign. With 5, -1 and a twist of 4: 2 + 5. */
    @ParameterizedTest
    @CsvSource({
        "3, 1, 0, 3",
        "1, 3, 0, 3",
        "-3, -1, 0, 3",
        "4, 0, 1.5, 4.5",
        "5, -1, 4, 7",
        "5, -1, -4, 7",
        "0, 0, 2, 2"
    })
    void thePrincipalMomentIsThatOfMohrsCircle(double along, double across, double twist, double principal) {
        PlateResponse.Moments moments = new PlateResponse.Moments(along, across, twist);
        assertThat(moments.principal()).isCloseTo(principal, within(1e-12));
        assertThat(moments.stress(0.01)).isCloseTo(6 * principal / 1e-4, within(1e-6));
    }

    /**
     * On three corners, with a force P on the fourth, a plate is twisted and nothing else: the twisting moment is P/2 everywhere and the
     * sag is P x y/(2 D (1 - ν)), greatest under the force.
     */
    @Example
    void aPlateOnThreeCornersIsOnlyTwisted() {
        double a = 0.6;
        double b = 0.25;
        double p = 100;
        List<ThinPlate.Point> corners =
                List.of(new ThinPlate.Point(0, 0), new ThinPlate.Point(a, 0), new ThinPlate.Point(0, b));
        PlateResponse r =
                ThinPlate.of(a, b, GLASS, PlateEdges.none(), corners).solve(List.of(new PlateLoad(a, 0, b, 0, p)));
        double d = 7e10 * 0.008 * 0.008 * 0.008 / (12 * (1 - POISSON * POISSON));
        double most = p * a * b / (2 * d * (1 - POISSON));
        for (double x : new double[] {0.1, 0.3, 0.55}) {
            for (double y : new double[] {0, 0.1, 0.25}) {
                PlateResponse.Moments m = r.moments(x, y);
                assertThat(Math.abs(m.twist())).isCloseTo(p / 2, within(1e-3));
                assertThat(m.along()).isCloseTo(0, within(1e-3));
                assertThat(m.across()).isCloseTo(0, within(1e-3));
                assertThat(r.deflection(x, y)).isCloseTo(most * x * y / (a * b), within(1e-6 * most));
            }
        }
        assertThat(r.largestDeflection()).isCloseTo(most, within(1e-6 * most));
        assertThat(r.points().get(0)).isCloseTo(-p, within(1e-3));
        assertThat(r.points().get(1)).isCloseTo(p, within(1e-3));
    }

    @Example
    void aPlateHeldAllRoundSagsMostInTheMiddle() {
        PlateResponse r = ThinPlate.of(0.6, 0.25, GLASS, PlateEdges.all(), List.of())
                .solve(List.of(PlateLoad.uniform(0.6, 0.25, 1000)));
        assertThat(r.largestDeflection()).isCloseTo(r.deflection(0.3, 0.125), within(1e-12));
    }

    @Property(tries = 20)
    void aPlateTurnedRoundHasItsMomentsTurnedRound(
            @ForAll @DoubleRange(min = 0.05, max = 0.55) double x,
            @ForAll @DoubleRange(min = 0.02, max = 0.23) double y) {
        PlateResponse one = ThinPlate.of(0.6, 0.25, GLASS, PlateEdges.all(), List.of())
                .solve(List.of(PlateLoad.uniform(0.6, 0.25, 1000)));
        PlateResponse turned = ThinPlate.of(0.25, 0.6, GLASS, PlateEdges.all(), List.of())
                .solve(List.of(PlateLoad.uniform(0.25, 0.6, 1000)));
        PlateResponse.Moments here = one.moments(x, y);
        PlateResponse.Moments there = turned.moments(y, x);
        double size = one.moments(0.3, 0.125).principal();
        assertThat(there.along()).isCloseTo(here.across(), within(1e-6 * size));
        assertThat(there.across()).isCloseTo(here.along(), within(1e-6 * size));
        assertThat(Math.abs(there.twist())).isCloseTo(Math.abs(here.twist()), within(1e-6 * size));
    }

    @ParameterizedTest
    @CsvSource({
        "0.125, 0.25, -0.125, 0.375, 0.125, 0.375",
        "0.875, 0.25, 0.625, 1.125, 0.125, 0.375",
        "0.5, 0.125, 0.25, 0.75, 0, 0.25",
        "0.5, 0.0625, 0.25, 0.75, -0.0625, 0.1875",
        "0.5, 0.4375, 0.25, 0.75, 0.3125, 0.5625"
    })
    void aLoadHasToStandOnThePlate(double x, double y, double left, double right, double front, double back) {
        PlateLoad load = new PlateLoad(x, 0.5, y, 0.25, 100);
        if (left >= 0 && right <= 1 && front >= 0 && back <= 0.5) {
            load.within(1, 0.5);
            return;
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> load.within(1, 0.5))
                .withMessage("a load reaching from " + left + " to " + right + " m along and from " + front + " to "
                        + back + " m across is off a plate of 1.0 m by 0.5 m");
    }

    /** 10 N spread from 0.2 to 0.4 m of a beam of 1 m: 7 N and 3 N on its pins. */
    @ParameterizedTest
    @CsvSource({"0.1, 0.7", "0.2, 1.4", "0.3, 1.85", "0.4, 1.8", "0.7, 0.9", "1, 0"})
    void momentOfABeamUnderPartOfItsLength(double at, double expected) {
        assertThat(new PlateLoad(0.3, 0.2, 0.1, 0.1, 10).beamMoment(1, at)).isCloseTo(expected, within(1e-12));
    }

    @Example
    void aLineOfLoadWeighsItsLength() {
        assertThat(PlateLoad.line(0.5, 0.1, 100)).isEqualTo(new PlateLoad(0.25, 0.5, 0.1, 0, 50));
    }

    @Example
    void refusesABoardThatIsNone() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShelfBoard.isotropic(0.9, 0.12, 0.09, 1e10, 0.3))
                .withMessage("thickness by depth must be from 0 to 0.5 (ratio), but was 0.75");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ShelfBoard(0.9, 0.3, 0.02, 1e10, 2e10, 0.75, 1e9, 1e9))
                .withMessage("product of the two Poisson ratios must be from 0 to 0.9 (ratio), but was 1.125");
        // 1 - 0.63 x 0.4 x 4, which is less than nothing
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ShelfBoard(0.9, 0.1, 0.04, 1e10, 1e9, 0.3, 1.6e9, 1e8))
                .withMessageStartingWith(
                        "torsion stiffness left at the edges must be from 0.1 to 1 (ratio), but was -0.008");
    }

    @Example
    void refusesRearPinsThatAreNotBehindTheFrontPins() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShelfSupports.fourPins(0.1, 0.1))
                .withMessage("the rear pins must be behind the front pins, but are at 0.1 m and 0.1 m");
    }
}
