package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Check;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/**
 * The larger of a stiff case and of a limber rail on each screw. Studs at 100, 400 and 700 mm of 800: of an even load each end takes (3/8 ·
 * 0.3 + 0.1 + 0.75 · 0.1²/0.3)/0.8 = 0.296875, between the outer studs 3/16; of a load at one end the near stud 17/12, the middle one −1/2, the far
 * one 1/12 (three moments: 0.1 P over the near stud, 0.025 P over the middle one).
 */
class ScrewLoadsTest {
    private static final double END = 0.296875;

    private static ScrewLoads loads(Row row) {
        return new ScrewLoads(
                new Fixing(Hung.screw("wood-screw-10"), Length.inches(3), row, Hung.at(100, 400, 700), Hung.RAIL),
                Length.mm(800),
                Hanging.CONTACT);
    }

    private static ScrewLoads oneInEachStud() {
        return loads(new Row(Length.mm(720), 1));
    }

    private static Demand demand(double even, double moment, double turning, double point, double at) {
        return new Demand(LoadCase.ADULT_LEANING, even, moment, turning, point, 0.3, at, 0, 0, Demand.Side.RIGHT);
    }

    private static double[] each(List<ScrewLoads.OnScrew> all, ToDoubleFunction<ScrewLoads.OnScrew> of) {
        return all.stream().mapToDouble(of).toArray();
    }

    /** 400 N spread and 300 N at the right end. The middle screw: a third of 700 N by the stiff case. */
    @Test
    void underAPersonAtOneEndTheLimberRailLoadsTheNearStud() {
        List<ScrewLoads.OnScrew> all = oneInEachStud().of(demand(400, 70, 0, 300, 0.4));
        assertThat(each(all, ScrewLoads.OnScrew::shear))
                .containsExactly(
                        new double[] {400 * END + 300 / 12.0, 700 / 3.0, 400 * END + 300 * 17 / 12.0}, within(1e-6));
        // 70 and 90 N·m; the stiff case drops the far screw: of the other two the middle one has a quarter
        assertThat(each(all, ScrewLoads.OnScrew::pull))
                .containsExactly(
                        new double[] {(70 * END + 90 / 12.0) / 0.7, 160 / 0.7 / 4, (70 * END + 90 * 17 / 12.0) / 0.7},
                        within(1e-6));
        List<ScrewLoads.OnScrew> left = oneInEachStud().of(demand(400, 70, 0, 300, -0.4));
        for (int i = 0; i < 3; i++) {
            assertThat(left.get(i).shear()).isCloseTo(all.get(2 - i).shear(), within(1e-9));
            assertThat(left.get(i).pull()).isCloseTo(all.get(2 - i).pull(), within(1e-9));
        }
    }

    /** A load that leans by 40 N·m puts 40/0.6 N on the near stud and takes as much from the far one. */
    @Test
    void whatLeansToOneSideLoadsTheStudThere() {
        List<ScrewLoads.OnScrew> all = oneInEachStud().of(demand(400, 70, 40, 300, 0.4));
        assertThat(all.get(2).shear()).isCloseTo(400 * END + 40 / 0.6 + 300 * 17 / 12.0, within(1e-6));
        assertThat(all.get(2).pull()).isCloseTo((70 * (END + 0.1 / 0.6) + 90 * 17 / 12.0) / 0.7, within(1e-6));
        List<ScrewLoads.OnScrew> person = oneInEachStud().of(demand(0, 0, 0, 300, 0.4));
        assertThat(person.get(2).pull()).isCloseTo(90 * 17 / 12.0 / 0.7, within(1e-6));
        assertThat(person.get(2).shear()).isCloseTo(300 * 17 / 12.0, within(1e-6));
    }

    /** Along the rail between the outer studs the middle one takes 5/8 of all, weight and pull; two screws there halve it. */
    @Test
    void theMiddleStudTakesFiveEighthsOfWhatStandsBetweenTheOuterOnes() {
        List<ScrewLoads.OnScrew> all = oneInEachStud().of(demand(400, 70, 0, 0, 0.4));
        assertThat(all.get(1).shear()).isCloseTo(250, within(1e-6));
        assertThat(all.get(1).pull()).isCloseTo(62.5, within(1e-6));
        List<ScrewLoads.OnScrew> two = loads(new Row(Length.mm(720), 2)).of(demand(400, 70, 0, 0, 0.4));
        assertThat(two).hasSize(6);
        assertThat(two.get(2).shear()).isCloseTo(125, within(1e-6));
        assertThat(two.get(2).pull()).isCloseTo(31.25, within(1e-6));
        Demand quake = new Demand(LoadCase.EARTHQUAKE, 400, 70, 0, 0, 0, 0, 300, 0.72, Demand.Side.RIGHT);
        assertThat(oneInEachStud().of(quake).get(1).shear()).isCloseTo(Math.hypot(250, 100), within(1e-6));
    }

    @Test
    void anyScrewMayBeTheOneThatIsGone() {
        Demand standing = demand(400, 70, 0, 0, 0);
        assertThat(oneInEachStud().oneGone(standing)).hasSize(3).allMatch(left -> left.size() == 2);
        // two that count in one place are alike
        assertThat(loads(new Row(Length.mm(720), 2)).oneGone(standing)).hasSize(3);
        Row apart = new Row(Length.mm(650), 2, Optional.of(Length.mm(70)));
        assertThat(loads(apart).oneGone(standing)).hasSize(6).allMatch(left -> left.size() == 5);
        // without the first of three the other two stand 150 mm to the right of the middle: the middle one takes it all
        assertThat(each(oneInEachStud().oneGone(standing).get(0), ScrewLoads.OnScrew::pull))
                .containsExactly(new double[] {100, 0}, within(1e-9));
        assertThat(each(oneInEachStud().oneGone(standing).get(1), ScrewLoads.OnScrew::pull))
                .containsExactly(new double[] {50, 50}, within(1e-9));
    }

    private static Hanging leaning(double off, double... studs) {
        Hanging h = Hung.cabinet(40, new Row(Length.mm(720), 2), 12.7, Hung.at(studs))
                .cases(LoadCases.of(LoadCase.CHILD_CLIMBING, LoadCase.CHILD_ON_DOOR, LoadCase.ADULT_LEANING));
        return h.hung(new HungWeight(List.of(
                new HungWeight.Item("all of it", 40, 50, 0.2, off, OptionalDouble.of(0.4), HungWeight.Stays.ON))));
    }

    /** The wall does not know left from right. */
    @Property(tries = 30)
    void seenInAMirrorEveryUseIsTheSame(
            @ForAll @DoubleRange(min = -0.3, max = 0.3) double off,
            @ForAll @DoubleRange(min = 0, max = 300) double first,
            @ForAll @DoubleRange(min = 450, max = 800) double last) {
        List<Check> one = leaning(off, first, last).answer().checks();
        List<Check> other = leaning(-off, 800 - last, 800 - first).answer().checks();
        for (int i = 0; i < one.size(); i++) {
            assertThat(other.get(i).demand())
                    .as(one.get(i).what())
                    .isCloseTo(
                            one.get(i).demand(), within(1e-9 * (1 + one.get(i).demand())));
        }
    }

    @Test
    void aCaseIsUsedAsItsHardestWorkedScrewOnTheWorseSideIs() {
        Hanging hanging = leaning(-0.2, 200, 606);
        ScrewHold hold = hanging.hold();
        for (LoadCase which : hanging.cases().people()) {
            double worst = 0;
            for (Demand.Side side : Demand.Side.values()) {
                for (ScrewLoads.OnScrew on : hanging.loads().of(hanging.demand(which, 0, side))) {
                    worst = Math.max(worst, hold.used(on.shear(), on.pull(), which.duration()));
                }
            }
            String what = "use of the hardest worked screw, " + which.word() + ", against all of it";
            assertThat(hanging.answer().others())
                    .filteredOn(check -> check.what().equals(what))
                    .singleElement()
                    .extracting(Check::demand)
                    .isEqualTo(worst);
            assertThat(worst).isPositive();
        }
    }

    @Test
    void ofTwoRowsTheUpperOneIsWorkedHarder() {
        Hanging h = Hung.cabinet(40, 2, 12.7);
        Hanging two = h.fixing(h.fixing().with(new Row(Length.mm(45), 1)));
        assertThat(two.answer().uses())
                .hasSize(2)
                .allSatisfy(use -> assertThat(use.height()).isEqualTo(Length.mm(720)));
        assertThat(two.answer().worst().demand())
                .isEqualTo(Math.max(
                        two.answer().uses().get(0).used(),
                        two.answer().uses().get(1).used()));
    }

    /** 20, 8.8 and 50 kg at 150, 310 and 220 mm. */
    @Test
    void theHeavyFiguresAreThoseOfHeavyContents() {
        Hanging hanging = Hung.cabinet(40, 2, 12.7);
        double g = Force.STANDARD_GRAVITY;
        assertThat(hanging.heavyWeight().newtons()).isCloseTo(78.8 * g, within(1e-9));
        assertThat(hanging.heavyPull().newtons())
                .isCloseTo((20 * 0.15 + 8.8 * 0.31 + 50 * 0.22) * g / 0.7, within(1e-9));
    }
}
