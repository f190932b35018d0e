package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.fastener.LoadDuration;
import fairgrain.finding.Check;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * The worked pair of strips by hand: 19 mm thick, 45 degrees, so a bevel 19 mm high; wall strip 79.5 mm deep, its bevel 70 and its screws 40 mm
 * above the heel, 60.5 mm of it left; case strip 69.5 mm deep, its bevel 60 and its ten screws 40 mm below the top, 50.5 mm of it left. 81.1 kg on
 * a metre: V and V tan β are 795.3 N, and as much on each metre; a spacer bears, so the case strip is pulled by H_need alone.
 */
class BevelledByHandTest {
    private static final double V = 81.1 * Force.STANDARD_GRAVITY;
    private static final double T = 0.019;
    private static final double NEEDED = (V / 81.1 * (25 * 0.165 + 56.1 * 0.150) + V * T - V * 0.0095) / 0.680;

    private static BevelledRails rails(double offCentre) {
        return rails(offCentre, List.of(), 94, 500, 906);
    }

    private static BevelledRails rails(double offCentre, List<Leaf> doors, double... studs) {
        Rail strip = new Rail(
                "a strip",
                Rail.Kind.SOLID,
                0.6,
                Length.mm(19),
                Optional.of(Length.mm(79.5)),
                Optional.of(Length.mm(40)),
                Rail.Held.BOTH_EDGES,
                OptionalDouble.of(6e6),
                LongGrain.of(100e6, 12e6),
                Hung.ANY);
        CaseScrews screws = new CaseScrews(
                10,
                Hung.screw("wood-screw-8"),
                Length.mm(38),
                Length.mm(40),
                CaseScrews.Driven.FROM_INSIDE,
                Rail.solid("the rail in the case", 0.6, Length.mm(19), Hung.ANY));
        BevelledPair pair = new BevelledPair(
                Math.toRadians(45),
                Length.mm(69.5),
                screws,
                BevelledPair.Bearing.SPACER,
                Optional.of(true),
                Optional.of(Length.mm(40)));
        HungWeight hung = new HungWeight(List.of(
                new HungWeight.Item("case", 25, 25, 0.165, offCentre, OptionalDouble.empty(), HungWeight.Stays.ON),
                new HungWeight.Item(
                        "contents", 56.1, 56.1, 0.150, offCentre, OptionalDouble.empty(), HungWeight.Stays.NOT_YET)));
        Fixing fixing = new Fixing(
                Hung.screw("wood-screw-10"), Length.inches(3), new Row(Length.mm(670), 2), Hung.at(studs), strip);
        Hanging hanging = new Hanging(
                "cabinet",
                hung,
                new Cabinet(Length.mm(1000), Optional.of(Length.mm(300)), Length.mm(18), doors),
                fixing,
                Hung.stud("spruce-pine-fir"),
                List.of(),
                Hung.IN);
        return new BevelledRails(hanging.carries(Force.newtons(5000)), pair);
    }

    private static Check check(BevelledRails rails, String start) {
        return rails.answer().checks().stream()
                .filter(c -> c.what().startsWith(start))
                .findFirst()
                .orElseThrow();
    }

    private static void stress(String what, double pascals) {
        assertThat(check(rails(0), what + ", against what is allowed for good").demand())
                .as(what)
                .isCloseTo(pascals, within(pascals * 1e-6));
    }

    /** w L²/8 upright on 19 by d and level on d by 19. */
    private static double bending(double span, double depth) {
        double m = V * span * span / 8;
        return m / (T * depth * depth / 6) + m / (depth * T * T / 6);
    }

    @Test
    void bothStripsBendAlongTheirGrain() {
        stress("bending of the wall strip from stud to stud", bending(0.406, 0.0605));
        stress("bending of the case strip from screw to screw", bending(0.1, 0.0505));
    }

    /** The bevel lies 70 − 30.25 mm off the middle of what is left: half of what pulls between two studs twists it. */
    @Test
    void theWallStripTwistsByTheBevelAboveItsMiddle() {
        double torque = V * 0.03975 * 0.406 / 2;
        stress("twist of the wall strip from stud to stud", torque * (3 + 1.8 * 19 / 60.5) / (0.0605 * T * T));
    }

    /** The middle stud takes 5/8 of weight and pull; the lever is 30 mm, the weight sits 9.5 mm out, the head is 9.22 mm wide. */
    @Test
    void acrossItsGrainTheWallStripBendsAtTheMiddleStud() {
        double stud = 0.625 * V;
        double above = 6 * stud * 0.030 / ((0.060 + 0.00922) * T * T);
        double below = 6 * stud * (0.030 + 0.0095) / ((0.080 + 0.00922) * T * T);
        assertThat(check(rails(0), "bending of the wall strip across its grain at a stud")
                        .demand())
                .isCloseTo(Math.max(above, below), within(100.0));
        // on two depths of 60.5 mm, 9.5 mm thick at the root of the feather edge
        stress("rolling shear at the feather edge of the wall strip", stud / (0.121 * 0.0095));
    }

    /** A tenth of the weight and of H_need at each of ten screws, 100 mm apart; their heads are 7.92 mm wide. */
    @Test
    void acrossItsGrainTheCaseStripBendsAtEachScrew() {
        assertThat(rails(0).answer().needed().newtons()).isCloseTo(NEEDED, within(1e-6));
        double pull = NEEDED / 10;
        double above = 6 * pull * 0.020 / ((0.040 + 0.312 * 0.0254) * T * T);
        double below = 6 * (pull * 0.020 + V / 10 * 0.0095) / ((0.080 + 0.312 * 0.0254) * T * T);
        stress("bending of the case strip across its grain at a screw", Math.max(above, below));
        stress("rolling shear at the feather edge of the case strip", V / 10 / (0.1 * 0.0095));
    }

    /** T_cab = (H_need q_c + V (t − x_b))/s_c; nine screws when one is gone; a load a tenth off the middle presses 1.6 times at its end. */
    @Test
    void theScrewsOfTheCaseStripShareWhatPullsThem() {
        double pull = (NEEDED * 0.060 + V * 0.0095) / 0.040;
        BevelledRails middle = rails(0);
        ScrewHold hold = middle.pair()
                .screws()
                .hold(middle.hanging().fixing().rail(), middle.hanging().dampest());
        String use = "use of the hardest worked screw of the case strip, ";
        assertThat(check(middle, use + "standing").demand()).isCloseTo(hold.used(V / 10, pull / 10), within(1e-9));
        assertThat(check(middle, use + "one screw gone").demand())
                .isCloseTo(hold.used(V / 9, pull / 9, LoadDuration.TWO_MONTHS), within(1e-9));
        for (double off : new double[] {-0.1, 0.1}) {
            assertThat(check(rails(off), use + "standing").demand())
                    .isCloseTo(hold.used(1.6 * V / 10, 1.6 * pull / 10), within(1e-9));
        }
    }

    /** T_strip = (H q + V x_b)/s with H = V at 45 degrees, and all of the weight beside it. */
    @Test
    void blockingCarriesWeightAndPullOfTheWallStrip() {
        double pull = (V * 0.070 + V * 0.0095) / 0.040;
        Check carries = check(rails(0), "weight and pull, against what the blocking or backing may carry, standing");
        assertThat(carries.demand()).isCloseTo(Math.hypot(V, pull), within(1e-6));
        assertThat(carries.capacity()).isEqualTo(5000);
    }

    @Test
    void edgesDepthsAndHeightsAreThoseOfTheDrawing() {
        BevelledRails rails = rails(0);
        Check wall = check(rails, "least distance of a screw from the edges of the wall strip");
        assertThat(wall.demand()).isCloseTo(2.5 * 0.19 * 0.0254, within(1e-9));
        assertThat(wall.capacity()).isCloseTo(0.0205, within(1e-9));
        Check ofCase = check(rails, "least distance of a screw from the edges of the case strip");
        assertThat(ofCase.demand()).isCloseTo(2.5 * 0.164 * 0.0254, within(1e-9));
        assertThat(ofCase.capacity()).isCloseTo(0.0105, within(1e-9));
        Check lift = check(rails, "height to lift it over its mate");
        assertThat(lift.demand()).isCloseTo(0.022, within(1e-9));
        assertThat(lift.capacity()).isCloseTo(0.040, within(1e-9));
        Check through = check(rails, "screws of the case strip, against the wood");
        assertThat(through.demand()).isCloseTo(0.038, within(1e-9));
        assertThat(through.capacity()).isCloseTo(0.038, within(1e-9));
        Check depth = check(rails, "least depth of the screws of the case strip");
        assertThat(depth.demand()).isCloseTo(6 * 0.164 * 0.0254, within(1e-9));
        assertThat(depth.capacity()).isCloseTo(0.019, within(1e-9));
    }

    /** V x_b less than M: H_need is what is over, on the 680 mm from the contact to the bevel. */
    @Test
    void theBevelMustDrawInWhatTheCaseTurnsOut() {
        Check hooked = check(
                rails(0), "pull that keeps it on the wall, against what the bevel draws in without friction, standing");
        assertThat(hooked.demand()).isCloseTo(NEEDED, within(1e-6));
        assertThat(hooked.capacity()).isCloseTo(V, within(1e-6));
    }

    /** A door that weighs nothing changes nothing but the time: for a week the strips carry 1.25/0.9 of what they carry for good. */
    @Test
    void forAWhileTheStripsCarryMore() {
        BevelledRails doors = rails(0, List.of(new Leaf("door", 1, Length.mm(500), Length.mm(20), 0, 0)), 94, 500, 906);
        double worst = doors.answer().checks().stream()
                .filter(c -> c.what().endsWith("against what is allowed for good"))
                .mapToDouble(c -> c.demand() / c.capacity())
                .max()
                .orElseThrow();
        assertThat(check(doors, "use of the strips themselves where they are worked hardest, doors open")
                        .demand())
                .isCloseTo(worst * 0.9 / 1.25, within(1e-9));
    }

    /** Studs at 300, 500 and 700 mm: 300 mm past them, w a²/2, and the twist of twice as much. A load off the middle presses 1.6 times. */
    @Test
    void pastTheLastStudAndUnderALoadToOneSideItBendsMore() {
        BevelledRails inner = rails(0, List.of(), 300, 500, 700);
        double m = V * 0.3 * 0.3 / 2;
        assertThat(check(inner, "bending of the wall strip from stud to stud").demand())
                .isCloseTo(m / (T * 0.0605 * 0.0605 / 6) + m / (0.0605 * T * T / 6), within(10.0));
        double torque = V * 0.03975 * 0.6 / 2;
        assertThat(check(inner, "twist of the wall strip").demand())
                .isCloseTo(torque * (3 + 1.8 * 19 / 60.5) / (0.0605 * T * T), within(10.0));
        assertThat(check(rails(0.1), "bending of the case strip from screw to screw")
                        .demand())
                .isCloseTo(1.6 * bending(0.1, 0.0505), within(10.0));
    }
}
