package fairgrain.bending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class PinsAndRodsTest {
    private static final double MPA = 1e6;

    @Property
    void theStiffPinIsInBalance(
            @ForAll @DoubleRange(min = 5, max = 60) double embedmentMpa,
            @ForAll @DoubleRange(min = 0.003, max = 0.012) @Scale(4) double d,
            @ForAll @DoubleRange(min = 0.005, max = 0.05) @Scale(4) double l,
            @ForAll @DoubleRange(min = 0, max = 0.03) @Scale(4) double e) {
        double p = embedmentMpa * MPA * d; // what the wood bears per length
        double f = PinInHole.stiffPin(embedmentMpa * MPA, d, l, e);
        // front part bears one way, rear part the other: force and moment about the mouth
        double front = (l + f / p) / 2;
        double rear = l - front;
        assertThat(p * (front - rear)).isCloseTo(f, within(1e-9 * p * l));
        assertThat(p * rear * (front + rear / 2) - p * front * front / 2).isCloseTo(f * e, within(1e-9 * p * l * l));
    }

    @Property
    void theBendingPinIsInBalance(
            @ForAll @DoubleRange(min = 5, max = 60) double embedmentMpa,
            @ForAll @DoubleRange(min = 0.003, max = 0.012) @Scale(4) double d,
            @ForAll @DoubleRange(min = 0, max = 0.03) @Scale(4) double e) {
        double fh = embedmentMpa * MPA;
        double f = PinInHole.bendingPin(fh, d, e, 240 * MPA);
        double plastic = 240 * MPA * d * d * d / 6;
        assertThat(f * (e + f / (2 * fh * d))).isCloseTo(plastic, within(1e-9 * plastic));
        assertThat(PinInHole.strength(fh, d, 0.008, e, 240 * MPA))
                .isEqualTo(Math.min(f, PinInHole.stiffPin(fh, d, 0.008, e)));
    }

    @Property
    void aDeeperHoleOrAShorterArmNeverBearsLess(
            @ForAll @DoubleRange(min = 0.005, max = 0.05) @Scale(4) double l,
            @ForAll @DoubleRange(min = 0, max = 0.02) @Scale(4) double more,
            @ForAll @DoubleRange(min = 0.001, max = 0.03) @Scale(4) double e) {
        double once = PinInHole.stiffPin(30 * MPA, 0.005, l, e);
        assertThat(PinInHole.stiffPin(30 * MPA, 0.005, l + more, e)).isGreaterThanOrEqualTo(once * (1 - 1e-12));
        assertThat(PinInHole.stiffPin(30 * MPA, 0.005, l, e / 2)).isGreaterThanOrEqualTo(once);
    }

    @Example
    void aLoadInTheMiddleOfTheHoleUsesItAll() {
        assertThat(PinInHole.stiffPin(30 * MPA, 0.005, 0.02, -0.01)).isCloseTo(30 * MPA * 0.005 * 0.02, within(1e-9));
        assertThat(HiddenRod.bearingStrength(30 * MPA, 0.1, 0.012, 0.2)).isCloseTo(72_000, within(1e-6));
        assertThat(HiddenRod.bearing(100, 0.1, 0.012, 0.2)).isCloseTo(100 / (0.012 * 0.2), within(1e-6));
    }

    @Property
    void theFourPinsBearTheLoadAndItsMoment(
            @ForAll @DoubleRange(min = 0, max = 200) double weight,
            @ForAll @DoubleRange(min = 0, max = 300) double load,
            @ForAll @DoubleRange(min = 0, max = 0.28) double y) {
        double a = 0.037;
        double r = 0.243;
        double front = ShelfPins.frontPin(weight, load, y, a, r);
        double rear = ShelfPins.rearPin(weight, load, y, a, r);
        assertThat(front + rear).isCloseTo(weight / 2 + load, within(1e-9));
        assertThat(front * a + rear * r).isCloseTo(weight / 2 * 0.14 + load * y, within(1e-9));
    }

    @Example
    void aFrontCornerLoadLiftsTheRearPinAboveAQuarterOfTheWeight() {
        // lifts when P a/(B - 2a) > W/4: a 37, B 280, W 40 N, so above 55.7 N at the very edge
        double limit = 10 * 0.206 / 0.037;
        assertThat(ShelfPins.rearPin(40, limit * 0.999, 0, 0.037, 0.243)).isPositive();
        assertThat(ShelfPins.rearPin(40, limit * 1.001, 0, 0.037, 0.243)).isNegative();
        // case A10: 200 N in mid-length on a patch at the edge, half to each end: 113 N and 13 N up
        assertThat(ShelfPins.frontPin(0, 100, 0.01, 0.037, 0.243)).isCloseTo(113, within(0.5));
        assertThat(ShelfPins.rearPin(0, 100, 0.01, 0.037, 0.243)).isCloseTo(-13, within(0.5));
        assertThat(ShelfPins.rockingPin(40)).isEqualTo(20);
    }

    @Example
    void tipsAtTheLoadOfTheRule() {
        // 100 (a - 25) > W (B/2 - a), in N and mm: a 50, B 250, W 33.3 N is the limit
        double weight = 100 * 25.0 / (125 - 50);
        assertThat(ShelfPins.tippingLoad(weight, 0.25, 0.05, 0.025)).isCloseTo(100, within(1e-9));
        assertThat(ShelfPins.tippingLoad(weight, 0.25, 0.02, 0.025)).isInfinite();
    }

    @Example
    void theRodIsACantilever() {
        double m = HiddenRod.moment(100, 0.1, 0.013);
        assertThat(m).isCloseTo(11.3, within(1e-12));
        assertThat(HiddenRod.stress(m, 0.012)).isCloseTo(11.3 * 32 / (Math.PI * 1.728e-6), within(1.0));
        double ei = 210e9 * Math.PI * Math.pow(0.012, 4) / 64;
        double expected = GeneralBeam.solve(
                        List.of(BeamStretch.withoutShear(0.213, ei)),
                        List.of(BeamSupport.clamp(0)),
                        List.of(new BeamLoad.Point(0.113, 100)))
                .deflection(0.213);
        assertThat(HiddenRod.frontDrop(100, 0.1, 0.013, 0.2, 0.012, 210e9)).isCloseTo(expected, within(1e-12));
    }

    @Property
    void aLoadFurtherOutNeverBearsEasier(
            @ForAll @DoubleRange(min = 0.1, max = 0.3) double arm,
            @ForAll @DoubleRange(min = 0, max = 0.1) double more) {
        assertThat(HiddenRod.bearing(100, arm + more, 0.012, 0.2))
                .isGreaterThanOrEqualTo(HiddenRod.bearing(100, arm, 0.012, 0.2));
        assertThat(HiddenRod.bearingStrength(20 * MPA, arm + more, 0.012, 0.2))
                .isLessThanOrEqualTo(HiddenRod.bearingStrength(20 * MPA, arm, 0.012, 0.2) * (1 + 1e-12));
    }

    @Example
    void refusesMillimetres() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PinInHole.stiffPin(30 * MPA, 5, 0.01, 0))
                .withMessage("diameter of the pin must be from 0.001 to 0.05 m, but was 5");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShelfPins.frontPin(10, 10, 0, 0.2, 0.1))
                .withMessage("distance from front to rear pins must be above 0 m, but was -0.1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HiddenRod.frontDrop(100, 0.3, 0, 0.2, 0.012, 210e9))
                .withMessage("depth of the shelf must be from 0.3 to 3 m, but was 0.2");
    }

    @Example
    void refusesALoadBeyondTheMiddleOfTheHoleAndPinsBeyondTheMiddleOfTheShelf() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PinInHole.stiffPin(30 * MPA, 0.005, 0.01, -0.006))
                .withMessage("arm of the load must be from -0.005 to 1 m, but was -0.006");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShelfPins.tippingLoad(40, 0.25, 0.2, 0))
                .withMessage("place of the front pins must be from 0 to 0.125 m, but was 0.2");
    }

    /** Right over pins in the middle of the depth nothing tips it, and nothing holds it either: still no NaN. */
    @Example
    void aLoadOverThePinsNeverTips() {
        assertThat(ShelfPins.tippingLoad(40, 0.25, 0.05, 0.05)).isInfinite();
        assertThat(ShelfPins.tippingLoad(40, 0.25, 0.125, 0.125)).isInfinite();
    }
}
