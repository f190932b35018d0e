package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.fastener.LoadDuration;
import fairgrain.finding.Check;
import fairgrain.finding.Finding;
import fairgrain.finding.Words;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The lift by hand: a case 300 mm deep is held 200 + 150 mm from the ankles; its edge 1370 mm up, the hands are at 1570 mm and have come 820 mm
 * from a bench of 750. One person: 23 · 25/35 · (1 − 0.003 · 82) · (0.82 + 4.5/82) = 10.84 kg.
 */
class LiftByHandTest {
    private static final double ONE = 23 * 25 / 35.0 * (1 - 0.003 * 82) * (0.82 + 4.5 / 82);
    private static final String TOO_MANY = "{} people would be needed, and so many have no room: raise it with a lift"
            + " or on props, step by step, with two to steady it.";
    private static final String TOO_HIGH =
            "So high the rule for lifting ends: stand on a firm platform, not on ladders.";

    private static Hanging weighing(double kg) {
        return Hung.cabinet(5, 4, 12.7)
                .hung(new HungWeight(List.of(
                        new HungWeight.Item("case", kg / 2, kg, 0.15, 0, OptionalDouble.empty(), HungWeight.Stays.ON),
                        new HungWeight.Item(
                                "doors", 3, 4, 0.3, 0, OptionalDouble.empty(), HungWeight.Stays.COMES_OFF))));
    }

    private static List<String> notes(Finding finding) {
        return finding.notes().stream().map(Words::sentence).toList();
    }

    /** Two at least; three still have room. */
    @ParameterizedTest(name = "{0} kg: {1}")
    @CsvSource({"5, 2", "21.6, 2", "21.8, 3", "32.4, 3", "32.6, 4"})
    void soManyLiftItThatNobodyLiftsTooMuch(double kg, int people) {
        Lift lift = Lift.overARail(weighing(kg), Length.mm(1370));
        Lift.Plan plan = lift.answer();
        assertThat(plan.forOne().kilograms()).isCloseTo(ONE, within(1e-9)).isCloseTo(10.84, within(0.005));
        assertThat(plan.lifted().kilograms()).as("as heavy as it may be").isCloseTo(kg, within(1e-9));
        assertThat(plan.takenOff().kilograms()).isCloseTo(4, within(1e-9));
        assertThat(plan.people()).isEqualTo(people);
        assertThat(plan.checks()).hasSize(1);
        assertThat(plan.checks().get(0).demand()).isCloseTo(kg / people, within(1e-9));
        assertThat(plan.checks().get(0).capacity()).isCloseTo(ONE, within(1e-9));
        Finding finding = lift.findings().get(0);
        if (people <= 3) {
            assertThat(finding.sizes())
                    .anyMatch(size -> size.what().equals("people to lift it")
                            && size.value().equals(Amount.count(people)));
            assertThat(notes(finding)).doesNotContain(TOO_MANY);
        } else {
            assertThat(finding.sizes()).noneMatch(size -> size.what().equals("people to lift it"));
            assertThat(notes(finding)).contains(TOO_MANY);
        }
        assertThat(notes(finding)).contains("Take off first what comes off: {} of doors and shelves.");
    }

    @Test
    void aboveAManTheRuleEnds() {
        assertThat(notes(new Lift(weighing(10), Length.mm(1560)).findings().get(0)))
                .contains(TOO_HIGH);
        assertThat(notes(new Lift(weighing(10), Length.mm(1540)).findings().get(0)))
                .doesNotContain(TOO_HIGH);
        // up there it counts as at 1750 mm, 1000 mm above the bench
        assertThat(new Lift(weighing(10), Length.mm(1900)).answer().forOne().kilograms())
                .isCloseTo(23 * 25 / 35.0 * (1 - 0.003 * 100) * (0.82 + 4.5 / 100), within(1e-9));
        // low down the hands fall from the bench: at 200 mm, 550 below it
        assertThat(new Lift(weighing(10), Length.ZERO).answer().forOne().kilograms())
                .isCloseTo(23 * 25 / 35.0 * (1 - 0.003 * 55) * (0.82 + 4.5 / 55), within(1e-9));
    }

    /** The weight on the middle of 19 mm of ledger, 35 mm above its heel: half of it a stud in the middle, all of the screws alike. */
    @Test
    void theLedgerGetsAsManyScrewsAsItNeedsAndNoMore() {
        Hanging like = weighing(60);
        Hanging middle = like.fixing(like.fixing().studs(Hung.at(200, 600)));
        Lift.Plan plan = new Lift(middle, Length.mm(1370)).answer();
        Rail strip = Rail.solid("ledger", 0.33, Length.mm(19), Hung.ANY);
        Fixing f = middle.fixing();
        ScrewHold hold = new ScrewStrength(
                        new Fixing(f.screw(), f.length(), new Row(Length.mm(35), 1), f.studs(), strip),
                        middle.gap(),
                        middle.dampest())
                .in(middle.stud());
        double stud = 60 * Force.STANDARD_GRAVITY / 2;
        double week = 1.25 / 0.9;
        int least = 1;
        while (hold.used(stud / least / week, stud / least * 9.5 / 35 / week) > 1) {
            least++;
        }
        assertThat(plan.inEachStud()).isEqualTo(least);
        Check used = plan.checks().get(0);
        assertThat(used.demand())
                .isCloseTo(hold.used(stud / least, stud / least * 9.5 / 35, LoadDuration.SEVEN_DAYS), within(1e-9));
    }

    @Test
    void aScrewNearASideWantsALongBit() {
        String bit = "The screws at {} from the left end sit so near a side that they want a long bit.";
        // 18 mm of side and 40 mm of driver
        Hanging near = Hung.cabinet(5, new Row(Length.mm(720), 2), 0, Hung.at(57, 743));
        assertThat(notes(new Lift(near, Length.mm(1370)).findings().get(0)).stream()
                        .filter(bit::equals)
                        .count())
                .isEqualTo(2);
        Hanging clear = Hung.cabinet(5, new Row(Length.mm(720), 2), 0, Hung.at(59, 741));
        assertThat(notes(new Lift(clear, Length.mm(1370)).findings().get(0))).doesNotContain(bit);
    }

    private static Check hanger(double offCentre, double down, Optional<Force> out, String which) {
        Hanging h = Hung.cabinet(5, 2, 0)
                .hung(new HungWeight(List.of(new HungWeight.Item(
                        "all of it", 20, 20, 0.15, offCentre, OptionalDouble.empty(), HungWeight.Stays.ON))));
        return new HangerHold(
                        h,
                        new Hangers(
                                "plates",
                                Hung.at(200, 600),
                                Length.mm(720),
                                Force.newtons(down),
                                out,
                                DeclaredScrew.Given.ULTIMATE,
                                4))
                .answer().checks().stream()
                        .filter(c -> c.what().contains(which))
                        .findFirst()
                        .orElseThrow();
    }

    /** 20 kg, 100 mm off: three quarters on one hanger, weight on 500 N and pull, 150 mm over 700, on 250 N. */
    @Test
    void theHardestWorkedHangerIsTheOneTowardsWhichItLeans() {
        double most = 0.75 * 20 * Force.STANDARD_GRAVITY;
        for (double off : new double[] {-0.1, 0.1}) {
            assertThat(hanger(off, 2000, Optional.of(Force.newtons(1000)), "standing")
                            .demand())
                    .isCloseTo(most / 500 + most * 150 / 700 / 250, within(1e-9));
        }
        // one door of 4 kg open beside it, on whichever side is worse, and both swung out by 189 mm
        double g = Force.STANDARD_GRAVITY;
        double down = 20 * g / 2 + 4 * g * 0.199 / 0.4;
        double turned = 20 * g * 0.15 + 2 * 4 * g * 0.189;
        double out = turned / 0.7 * (0.5 + 4 * 0.199 / 20 / 0.4);
        assertThat(hanger(0, 2000, Optional.empty(), "doors open").demand())
                .isCloseTo((down + out) / 500, within(1e-9));
    }
}
