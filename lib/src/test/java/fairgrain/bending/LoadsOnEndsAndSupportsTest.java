package fairgrain.bending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;

/** Loads that stand right on the end of an overhang or right on a support, worked out by hand. E I is 1 throughout. */
class LoadsOnEndsAndSupportsTest {
    private static final List<BeamStretch> METRE = List.of(BeamStretch.withoutShear(1, 1));
    private static final List<BeamSupport> OVERHUNG_LEFT = List.of(BeamSupport.pin(0.4), BeamSupport.pin(1));
    private static final List<BeamSupport> OVERHUNG_RIGHT = List.of(BeamSupport.pin(0), BeamSupport.pin(0.6));

    private static BeamResponse solve(List<BeamSupport> supports, BeamLoad load) {
        return GeneralBeam.solve(METRE, supports, List.of(load));
    }

    /**
     * An overhang a of 0.4 m beside a span s of 0.6 m. A force F at its end sags it by F a² s/3 from the turn of the support and F a³/3
     * from its own bending: 0.032 + 0.021333. Moments about the far pin: F (1 + a/s) on the near one.
     */
    @Example
    void aForceOnTheEndOfAnOverhang() {
        BeamResponse left = solve(OVERHUNG_LEFT, new BeamLoad.Point(0, 1));
        BeamResponse right = solve(OVERHUNG_RIGHT, new BeamLoad.Point(1, 1));
        double sag = 0.4 * 0.4 * 0.6 / 3 + 0.4 * 0.4 * 0.4 / 3;
        assertThat(left.deflection(0)).isCloseTo(sag, within(1e-12));
        assertThat(right.deflection(1)).isCloseTo(sag, within(1e-12));
        assertThat(left.moment(0.4)).isCloseTo(-0.4, within(1e-12));
        assertThat(right.moment(0.6)).isCloseTo(-0.4, within(1e-12));
        assertThat(left.reactions().get(0).force()).isCloseTo(5.0 / 3, within(1e-12));
        assertThat(left.reactions().get(1).force()).isCloseTo(-2.0 / 3, within(1e-12));
        assertThat(right.reactions().get(0).force()).isCloseTo(-2.0 / 3, within(1e-12));
        assertThat(right.reactions().get(1).force()).isCloseTo(5.0 / 3, within(1e-12));
    }

    /**
     * A couple C with the clock on the left end makes a sagging moment C all along the overhang; the support turns by C s/3, the end
     * by C a more, so that it rises by C s a/3 + C a²/2 = 0.08 + 0.08. On the right end the same couple hogs and lets it sag as much.
     */
    @Example
    void aCoupleOnTheEndOfAnOverhang() {
        BeamResponse left = solve(OVERHUNG_LEFT, new BeamLoad.Couple(0, 1));
        assertThat(left.moment(0.2)).isCloseTo(1, within(1e-12));
        assertThat(left.moment(0.4)).isCloseTo(1, within(1e-12));
        assertThat(left.slope(0)).isCloseTo(0.6, within(1e-12));
        assertThat(left.deflection(0)).isCloseTo(-0.16, within(1e-12));
        assertThat(left.reactions().get(0).force()).isCloseTo(-1 / 0.6, within(1e-12));
        assertThat(left.reactions().get(1).force()).isCloseTo(1 / 0.6, within(1e-12));
        BeamResponse right = solve(OVERHUNG_RIGHT, new BeamLoad.Couple(1, 1));
        assertThat(right.moment(0.8)).isCloseTo(-1, within(1e-12));
        assertThat(right.moment(0.6)).isCloseTo(-1, within(1e-12));
        assertThat(right.slope(1)).isCloseTo(0.6, within(1e-12));
        assertThat(right.deflection(1)).isCloseTo(0.16, within(1e-12));
        assertThat(right.reactions().get(1).force()).isCloseTo(1 / 0.6, within(1e-12));
    }

    /** A force right on a spring goes straight into it: it gives by F/k, 0.1 m here, and no other support feels it. */
    @Example
    void aForceRightOnASpringGoesStraightIntoIt() {
        for (double at : new double[] {0, 0.5, 1}) {
            List<BeamSupport> supports = new ArrayList<>();
            supports.add(BeamSupport.spring(at, 1000));
            supports.add(BeamSupport.pin(at == 0.5 ? 0 : 0.25));
            BeamResponse r = solve(supports, new BeamLoad.Point(at, 100));
            assertThat(r.deflection(at)).isCloseTo(0.1, within(1e-9));
            for (BeamReaction held : r.reactions()) {
                assertThat(held.force()).isCloseTo(held.support().position() == at ? 100 : 0, within(1e-7));
            }
        }
    }

    /** A couple right on a turning spring at a lone end: the beam turns as one piece, by C/k. */
    @Example
    void aCoupleRightOnATurningSpringGoesStraightIntoIt() {
        for (double at : new double[] {0, 1}) {
            BeamResponse r = solve(List.of(BeamSupport.pin(at).turning(50)), new BeamLoad.Couple(at, 10));
            assertThat(r.slope(at)).isCloseTo(0.2, within(1e-12));
            assertThat(r.moment(0.5)).isCloseTo(0, within(1e-12));
            assertThat(r.deflection(1 - at)).isCloseTo(at == 0 ? 0.2 : -0.2, within(1e-12));
        }
    }

    @Example
    void tenSupportsThatOnlyPushAreNotTooMany() {
        List<BeamSupport> ten = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            ten.add(BeamSupport.pin(i / 9.0).pushesOnly());
        }
        assertThat(solve(ten, BeamLoad.Line.uniform(0, 1, 100)).reactions())
                .hasSize(10)
                .noneMatch(BeamReaction::lifted);
    }

    /** Which supports a beam lifts off is a matter of where its loads stand, not of how large they are. */
    @Property
    void aBillionthOfTheLoadLiftsOffTheSameSupports(@ForAll long seed) {
        Random r = new Random(seed);
        List<BeamSupport> supports = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            supports.add(BeamSupport.pin(i / 4.0).pushesOnly());
        }
        List<BeamLoad> heavy = new ArrayList<>();
        List<BeamLoad> light = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            BeamLoad load = new BeamLoad.Point(r.nextDouble(), 1000 * r.nextDouble());
            heavy.add(load);
            light.add(load.times(1e-9));
        }
        List<Boolean> lifted = lifted(supports, heavy);
        assertThat(lifted(supports, light)).isEqualTo(lifted);
    }

    private static List<Boolean> lifted(List<BeamSupport> supports, List<BeamLoad> loads) {
        BeamResponse r = GeneralBeam.solve(List.of(BeamStretch.withoutShear(1, 1000)), supports, loads);
        return r.reactions().stream().map(BeamReaction::lifted).toList();
    }

    /** A uniform load w on one span sags most at mid-span, by 5 w/384, also where the beam is looked at from 0.3 m on. */
    @Example
    void theLargestSagOfAPartIsFoundInsideIt() {
        BeamResponse r = GeneralBeam.solve(
                List.of(BeamStretch.withoutShear(0.2, 1), BeamStretch.withoutShear(0.8, 1)),
                List.of(BeamSupport.pin(0), BeamSupport.pin(1)),
                List.of(BeamLoad.Line.uniform(0, 1, 1)));
        Extreme most = r.largestSagBetween(0.3, 1);
        assertThat(most.position()).isCloseTo(0.5, within(1e-6));
        assertThat(most.value()).isCloseTo(5.0 / 384, within(1e-12));
        assertThat(r.largestSagBetween(0.75, 0.9).position()).isCloseTo(0.75, within(1e-12));
        assertThat(r.largestSagBetween(0.25, 0.4).position()).isCloseTo(0.4, within(1e-12));
        assertThat(r.largestSagBetween(0.25, 0.4).value()).isEqualTo(r.deflection(0.4));
    }

    @Example
    void aPlaceAHairBeyondTheEndIsTheEnd() {
        BeamResponse r = solve(OVERHUNG_RIGHT, new BeamLoad.Point(1, 1));
        assertThat(r.deflection(1 + 5e-10)).isEqualTo(r.deflection(1));
    }

    @Example
    void refusesLoadsThatAreNowhere() {
        refuses(() -> new BeamLoad.Couple(-0.1, 1), "position of the load must be from 0 to 100 m, but was -0.1");
        refuses(() -> BeamLoad.Line.uniform(-0.1, 1, 1), "position of the load must be from 0 to 100 m, but was -0.1");
        refuses(() -> BeamLoad.Line.uniform(0, 900, 1), "position of the load must be from 0 to 100 m, but was 900");
        refuses(
                () -> BeamLoad.Line.uniform(0.5, 0.5, 1),
                "a load along the beam must end to the right of where it begins, but runs from 0.5 to 0.5 m");
    }

    private static void refuses(ThrowingCallable load, String message) {
        assertThatIllegalArgumentException().isThrownBy(load).withMessage(message);
    }

    /** x⁴ - 4 x³ + 6 x² - 4 x + 1 is (x - 1)⁴: flat at the bottom, where its slope and that slope's own slope are nothing. */
    @Example
    void aFlatTurningPointIsFoundToo() {
        assertThat(Polynomial.turningPoints(new double[] {1, -4, 6, -4, 1}, 2)).containsExactly(0, 1, 2);
    }

    /** Lengths that are added up end a hair beside the sum: a support or load there is meant to be at the end. */
    @Example
    void aSupportOrLoadAHairBesideTheEndIsAtTheEnd() {
        for (double end : new double[] {1 - 5e-10, 1, 1 + 5e-10}) {
            BeamResponse r = solve(List.of(BeamSupport.pin(0), BeamSupport.pin(end)), new BeamLoad.Point(end, 1));
            assertThat(r.reactions().get(1).support().position()).isEqualTo(1);
            assertThat(r.reactions().get(1).force()).isEqualTo(1);
            assertThat(r.largestMoment().value()).isZero();
        }
    }
}
