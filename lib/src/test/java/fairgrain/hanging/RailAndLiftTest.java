package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.fastener.RailRolling;
import fairgrain.fastener.SplittingForce;
import fairgrain.finding.Check;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Length;
import fairgrain.quantity.Mass;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** The rail splits or not; the cabinet gets up. */
class RailAndLiftTest {
    private static Hanging on(double kg, double depth, double up, Rail.Held held, OptionalDouble across) {
        Hanging h = Hung.cabinet(kg, 2, 12.7);
        return h.fixing(h.fixing()
                .rail(new Rail(
                        "a rail",
                        Rail.Kind.SOLID,
                        0.42,
                        Length.mm(19),
                        Optional.of(Length.mm(depth)),
                        Optional.of(Length.mm(up)),
                        held,
                        across,
                        Hung.ANY)));
    }

    @Test
    void aRailSplitsByTheForceAcrossItsGrain() {
        Hanging hanging = on(30, 80, 40, Rail.Held.BOTH_EDGES, OptionalDouble.empty());
        RailStrength.Holds holds = new RailStrength(hanging).answer();
        assertThat(holds.checks().get(0).demand())
                .isCloseTo(2 * hanging.answer().uses().get(0).shear().newtons(), within(1e-9));
        // 14 * 19 * sqrt(40/(1 - 40/80)) N, times 0.6/1.3/1.5
        assertThat(holds.checks().get(0).capacity()).isCloseTo(14 * 19 * Math.sqrt(80) * 0.6 / 1.3 / 1.5, within(1e-6));
        assertThat(holds.checks()).hasSize(4);
        assertThat(holds.endForce().newtons())
                .isCloseTo(
                        Math.hypot(
                                        hanging.answer().weight().newtons(),
                                        hanging.answer().pull().newtons())
                                / 2,
                        within(1e-9));
    }

    @Test
    void aRollingRailBendsAcrossItsGrainByThePullOfTheCase() {
        Hanging hanging = on(30, 80, 40, Rail.Held.TOP_EDGE, OptionalDouble.of(4e6));
        RailStrength.Holds holds = new RailStrength(hanging).answer();
        double onStud = hanging.answer().pull().newtons() / 2; // two studs, level with each other about the middle
        double stress = RailRolling.crossGrainStress(onStud, 0.040, 0.080, 0.019);
        assertThat(holds.checks().get(3).demand()).isBetween(stress, 1.05 * stress);
        assertThat(holds.checks().get(3).capacity()).isCloseTo(4e6 * (1 - 1.645 * 0.25) / 2.1, within(1e-3));
    }

    @Test
    void aRollingRailOfUnknownStrengthIsNotJudged() {
        Finding finding = new RailStrength(on(5, 80, 40, Rail.Held.TOP_EDGE, OptionalDouble.empty()))
                .findings()
                .get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        Finding held = new RailStrength(on(5, 80, 40, Rail.Held.BOTH_EDGES, OptionalDouble.empty()))
                .findings()
                .get(0);
        assertThat(held.verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Property(tries = 50)
    void screwsFartherFromTheUpperEdgeNeverSplitItSooner(@ForAll @DoubleRange(min = 15, max = 60) double up) {
        double nearer = new RailStrength(on(30, 80, up + 5, Rail.Held.BOTH_EDGES, OptionalDouble.empty()))
                .answer()
                .checks()
                .get(0)
                .capacity();
        double farther = new RailStrength(on(30, 80, up, Rail.Held.BOTH_EDGES, OptionalDouble.empty()))
                .answer()
                .checks()
                .get(0)
                .capacity();
        assertThat(farther).isGreaterThan(nearer);
        assertThat(farther)
                .isCloseTo(
                        SplittingForce.allowable(SplittingForce.characteristic(0.019, 0.080, 0.080 - up / 1000), 0.6),
                        within(1e-6));
    }

    @Test
    void aLagScrewNeedsFourDiametersToTheUpperEdgeOfTheRail() {
        Hanging one = on(5, 80, 56, Rail.Held.BOTH_EDGES, OptionalDouble.empty());
        Fixing f = one.fixing();
        Hanging lag = one.fixing(new Fixing(Hung.screw("lag-screw-1-4"), f.length(), f.rows(), f.studs(), f.rail()));
        assertThat(new RailStrength(one).findings().get(0).verdict()).isEqualTo(Verdict.HOLDS);
        // 80 - 56 = 24 mm against 4 x 6.35
        assertThat(new RailStrength(lag).answer().checks().get(1).demand()).isCloseTo(0.0254, within(1e-9));
        assertThat(new RailStrength(lag).findings().get(0).verdict()).isEqualTo(Verdict.FAILS);
    }

    @Test
    void aRailOfUnknownDepthIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RailStrength(Hung.cabinet(5, 2, 0)))
                .withMessage("the depth of the rail must be known to judge it");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> on(5, 80, 79, Rail.Held.TOP_EDGE, OptionalDouble.empty()))
                .withMessageStartingWith(
                        "place of the screws above the rail's lower edge must be from 0.003 to 0.077 m, but was 0.079");
    }

    @Test
    void onePersonLiftsTwentyThreeKilogramsAtTheVeryBest() {
        assertThat(LiftingLimit.mass(0.25, 0.75, 0.25)).isCloseTo(23, within(1e-9));
        // 23 (25/40)(1 - 0.003 75)(0.82 + 4.5/75)
        assertThat(LiftingLimit.mass(0.40, 1.50, 0.75)).isCloseTo(23 * 0.625 * 0.775 * 0.88, within(1e-9));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LiftingLimit.mass(40, 1.5, 0.75))
                .withMessage("reach must be from 0 to 0.63 m, but was 40");
    }

    @Property(tries = 100)
    void fartherOrHigherNobodyLiftsMore(
            @ForAll @DoubleRange(min = 0.2, max = 0.55) double reach,
            @ForAll @DoubleRange(min = 0.8, max = 1.6) double height) {
        double once = LiftingLimit.mass(reach, height, height - 0.75);
        assertThat(LiftingLimit.mass(reach + 0.05, height, height - 0.75)).isLessThanOrEqualTo(once);
        assertThat(LiftingLimit.mass(reach, height + 0.1, height + 0.1 - 0.75)).isLessThanOrEqualTo(once);
    }

    @Test
    void theLiftCountsTheCaseAloneAndEnoughPeople() {
        Lift lift = new Lift(Hung.cabinet(60, 2, 12.7), Length.mm(1370));
        Lift.Plan plan = lift.answer();
        assertThat(plan.lifted()).isEqualTo(new Mass(20));
        assertThat(plan.takenOff().kilograms()).isCloseTo(8.8, within(1e-9));
        assertThat(plan.forOne().kilograms() * plan.people()).isGreaterThanOrEqualTo(20);
        assertThat(plan.people()).isEqualTo(2);
        assertThat(plan.checks()).hasSize(2).allMatch(Check::holds);
        Finding finding = lift.findings().get(0);
        assertThat(finding.notes()).anyMatch(note -> note.sentence().contains("never by the crest"));
        assertThat(finding.sizes())
                .anyMatch(size ->
                        size.what().equals("people to lift it") && size.value().equals(Amount.count(2)));
        assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS);
    }

    private static Hanging between(double kg, Rail.Held held, LongGrain along, LoadCases cases) {
        Hanging h = on(kg, 80, 40, held, OptionalDouble.of(4e6)).cases(cases);
        return h.fixing(h.fixing().rail(h.fixing().rail().along(along)));
    }

    /** Studs at 182 and 588 mm of 764 mm between the sides, half the load and a little more on each. */
    @Test
    void aRailThatOnlyTheSidesHoldBendsBetweenThem() {
        Hanging hanging = between(30, Rail.Held.ENDS, LongGrain.of(80e6, 9e6), LoadCases.ALWAYS);
        RailStrength.Holds holds = new RailStrength(hanging).answer();
        double v = hanging.answer().weight().newtons() / 2;
        double t = hanging.answer().pull().newtons() / 2;
        double arm = 0.182; // the studs stand 182 and 176 mm from the sides
        double least = t * 0.176 / (0.080 * 0.019 * 0.019 / 6) + v * 0.176 / (0.019 * 0.080 * 0.080 / 6);
        double most = t * arm / (0.080 * 0.019 * 0.019 / 6) + v * arm / (0.019 * 0.080 * 0.080 / 6);
        assertThat(holds.checks().get(4).what()).startsWith("bending of the rail between the sides");
        assertThat(holds.checks().get(4).demand()).isBetween(least, 1.1 * most);
        assertThat(holds.checks().get(4).capacity()).isCloseTo(80e6 * 0.7368 * 0.65 * 0.9 / 2.3, within(1e3));
        assertThat(new RailStrength(between(30, Rail.Held.ENDS, LongGrain.UNKNOWN, LoadCases.ALWAYS))
                        .findings()
                        .get(0)
                        .missing())
                .containsExactly(new Missing(
                        "how strong a rail is in bending",
                        "fix the rail to the top of the case along its edge, or make it of a wood whose strength is in"
                                + " the table"));
    }

    @Test
    void peopleWorkTheRailHarderThanItsContents() {
        RailStrength alone = new RailStrength(on(30, 80, 40, Rail.Held.BOTH_EDGES, OptionalDouble.empty()));
        RailStrength adult = new RailStrength(alone.hanging().cases(LoadCases.of(LoadCase.ADULT_LEANING)));
        assertThat(alone.answer().checks())
                .extracting(Check::what)
                .contains("use of the rail where it is worked hardest, doors open, against all of it");
        Check leaning = adult.answer().checks().get(4);
        assertThat(leaning.what())
                .isEqualTo("use of the rail where it is worked hardest, adult leaning, against all of it");
        assertThat(leaning.demand())
                .isGreaterThan(alone.answer().checks().get(0).demand()
                        / alone.answer().checks().get(0).capacity());
    }

    @Test
    void everyCureOfARailAskedAgainHolds() {
        int cures = 0;
        for (Rail.Held held : Rail.Held.values()) {
            for (double kg : new double[] {20, 60, 120}) {
                Finding finding = new RailStrength(
                                between(kg, held, LongGrain.of(80e6, 9e6), LoadCases.of(LoadCase.ADULT_LEANING)))
                        .findings()
                        .get(0);
                assertThat(finding.remedies().isEmpty() || finding.verdict() == Verdict.FAILS)
                        .isTrue();
                for (Remedy remedy : finding.remedies()) {
                    cures++;
                    assertThat(remedy.then().findings().get(0).outcomes())
                            .as(remedy.words().sentence())
                            .allMatch(o -> o.planned().holds());
                }
            }
        }
        assertThat(cures).isGreaterThan(3);
    }

    /** 2 in of screw through 19 mm of ledger and 12.7 mm of board reach 19 mm, where a No. 10 needs 29. */
    @Test
    void aLedgerWithScrewsTooShortIsMendedByLongerOnes() {
        Hanging hanging = Hung.cabinet(10, 2, 12.7);
        Lift lift = new Lift(hanging, Length.mm(1370), Length.inches(2), false);
        Finding finding = lift.findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.remedies()).hasSize(1);
        Remedy remedy = finding.remedies().get(0);
        assertThat(remedy.words().sentence()).isEqualTo("Use screws {} long in the ledger.");
        assertThat(remedy.then().findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
    }

    @Test
    void aCaseThatIsHookedOverARailNeedsNoLedger() {
        Finding hooked = Lift.overARail(Hung.cabinet(10, 2, 12.7), Length.mm(1370))
                .findings()
                .get(0);
        assertThat(hooked.outcomes()).hasSize(1);
        assertThat(hooked.notes()).noneMatch(note -> note.sentence().contains("ledger"));
        assertThat(hooked.sizes()).noneMatch(size -> size.what().contains("ledger"));
        Hanging near = Hung.cabinet(10, new Row(Length.mm(720), 2), 12.7, Hung.at(50, 606));
        assertThat(new Lift(near, Length.mm(1370)).findings().get(0).notes())
                .filteredOn(note -> note.sentence().contains("want a long bit"))
                .extracting(note -> note.numbers().get(0))
                .containsExactly(Length.mm(50));
    }
}
