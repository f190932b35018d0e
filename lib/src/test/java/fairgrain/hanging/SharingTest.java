package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.fastener.StudShares;
import fairgrain.quantity.Length;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Forces and moments on the screws add up to what hangs, whoever shares them. */
class SharingTest {
    @ParameterizedTest(name = "{0}, {8}")
    @CsvFileSource(resources = "/published/hanging-shares.csv", useHeadersInDisplayName = true)
    void agreesWithTheWorkedShares(
            String name,
            String how,
            String studsMm,
            double widthMm,
            double atMm,
            double first,
            double last,
            double tolerance,
            String source,
            String basis) {
        double[] studs = Arrays.stream(studsMm.split(";"))
                .mapToDouble(s -> Double.parseDouble(s) / 1000)
                .toArray();
        double[] shares;
        if (how.equals("stiff")) {
            shares = Arrays.stream(ScrewGroup.forces(studs, new double[studs.length], 1, atMm / 1000, 0, 0))
                    .mapToDouble(ScrewGroup.Force::up)
                    .toArray();
        } else {
            shares = LimberRail.even(studs, widthMm / 1000, 0, widthMm / 1000);
        }
        assertThat(shares[0]).as(source).isCloseTo(first, within(tolerance));
        assertThat(shares[shares.length - 1]).as(source).isCloseTo(last, within(tolerance));
    }

    @Property(tries = 200)
    void theForcesOfAGroupBalanceItsLoad(
            @ForAll @DoubleRange(min = -1, max = 1) double x1,
            @ForAll @DoubleRange(min = 1.1, max = 2) double x2,
            @ForAll @DoubleRange(min = 0, max = 1) double y,
            @ForAll @DoubleRange(min = 0, max = 3000) double weight,
            @ForAll @DoubleRange(min = -1, max = 3) double weightAt,
            @ForAll @DoubleRange(min = -1000, max = 1000) double level,
            @ForAll @DoubleRange(min = 0, max = 1) double levelAt) {
        double[] xs = {x1, x1, x2, x2, x1};
        double[] ys = {0.7, 0.75, 0.7, 0.75, y};
        ScrewGroup.Force[] forces = ScrewGroup.forces(xs, ys, weight, weightAt, level, levelAt);
        double up = 0;
        double left = 0;
        double moment = 0;
        for (int i = 0; i < xs.length; i++) {
            up += forces[i].up();
            left += forces[i].left();
            moment += xs[i] * forces[i].up() + ys[i] * forces[i].left();
        }
        assertThat(up).isCloseTo(weight, within(1e-9));
        assertThat(left).isCloseTo(level, within(1e-9));
        assertThat(moment).isCloseTo(weight * weightAt + level * levelAt, within(1e-8));
    }

    @Property(tries = 100)
    void aRowOnSeveralStudsSharesAsTheStudsDo(
            @ForAll @DoubleRange(min = 0, max = 0.3) double a,
            @ForAll @DoubleRange(min = 0.4, max = 0.6) double b,
            @ForAll @DoubleRange(min = 0.7, max = 1) double c,
            @ForAll @DoubleRange(min = 0, max = 1) double at) {
        double[] studs = {a, b, c};
        ScrewGroup.Force[] forces = ScrewGroup.forces(studs, new double[] {1, 1, 1}, 1, at, 0, 0);
        double[] shares = StudShares.ofWeight(studs, at);
        for (int i = 0; i < 3; i++) {
            assertThat(forces[i].up()).isCloseTo(shares[i], within(1e-12));
            assertThat(forces[i].left()).isCloseTo(0, within(1e-12));
        }
    }

    @Test
    void oneStudWithTwoScrewsTakesACouple() {
        ScrewGroup.Force[] forces = ScrewGroup.forces(new double[] {0.4, 0.4}, new double[] {0.6, 0.7}, 500, 0.5, 0, 0);
        assertThat(forces[1].left()).isCloseTo(StudShares.coupleOnOneStud(500, 0.1, 0.1), within(1e-9));
        assertThat(forces[0].left()).isCloseTo(-forces[1].left(), within(1e-9));
        assertThat(forces[0].up()).isCloseTo(250, within(1e-9));
    }

    @Test
    void screwsInOnePlaceAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ScrewGroup.forces(new double[] {0.4, 0.4}, new double[] {0.7, 0.7}, 500, 0.4, 0, 0))
                .withMessage("screws in one place cannot keep a cabinet level");
    }

    @Property(tries = 100)
    void aLimberRailBalancesEvenLeaningAndPointLoads(
            @ForAll @Scale(4) @DoubleRange(min = 0.01, max = 0.3) double a,
            @ForAll @Scale(4) @DoubleRange(min = 0.4, max = 0.6) double b,
            @ForAll @Scale(4) @DoubleRange(min = 0.7, max = 0.99) double c,
            @ForAll @Scale(4) @DoubleRange(min = 0, max = 1) double at) {
        double[] studs = {a, b, c};
        balances(studs, LimberRail.even(studs, 1, 0, 1), 1, 0.5);
        balances(studs, LimberRail.even(studs, 1, a, c), 1, (a + c) / 2);
        balances(studs, LimberRail.point(studs, 1, at), 1, at);
        double[] leaning = LimberRail.leaning(studs, 1);
        assertThat(Arrays.stream(leaning).sum()).isCloseTo(0, within(1e-8));
        double moment = 0;
        for (int i = 0; i < 3; i++) {
            moment += leaning[i] * studs[i];
        }
        assertThat(moment).isCloseTo(1, within(1e-8));
    }

    private static void balances(double[] studs, double[] shares, double sum, double at) {
        double moment = 0;
        for (int i = 0; i < studs.length; i++) {
            moment += shares[i] * studs[i];
        }
        assertThat(Arrays.stream(shares).sum()).isCloseTo(sum, within(1e-9));
        assertThat(moment).isCloseTo(sum * at, within(1e-9));
    }

    /** What the screws hold back together, without the factor of a rolling rail, is never less than the moment. */
    @Property(tries = 100)
    void screwsInTwoRowsHoldTheWholeWeightAndMoment(
            @ForAll @IntRange(min = 1, max = 4) int upper,
            @ForAll @IntRange(min = 1, max = 3) int lower,
            @ForAll @DoubleRange(min = 10, max = 150) double kg) {
        Hanging one = Hung.cabinet(kg, upper, 12.7);
        Hanging hanging = one.fixing(one.fixing().with(new Row(Length.mm(60), lower)));
        Demand demand = hanging.demand(LoadCase.STANDING, 0, Demand.Side.RIGHT);
        List<ScrewLoads.OnScrew> all = hanging.loads().stiff(demand);
        assertThat(all).hasSize(2 * (upper + lower));
        double moment = 0;
        double shear = 0;
        for (ScrewLoads.OnScrew on : all) {
            moment += on.pull() * (on.height() - 0.020);
            shear += on.shear();
        }
        assertThat(moment).isGreaterThanOrEqualTo(demand.moment(0.020) * (1 - 1e-9));
        assertThat(shear).isGreaterThanOrEqualTo(demand.weight() * (1 - 1e-9));
    }

    @Test
    void aStudThatWouldBePushedIsDroppedFromThePullButKeepsItsLever() {
        Hanging hanging = Hung.cabinet(60, new Row(Length.mm(720), 1), 0, Hung.at(50, 150))
                .cases(LoadCases.of(LoadCase.ADULT_LEANING));
        Demand right = hanging.demand(LoadCase.ADULT_LEANING, 0, Demand.Side.RIGHT);
        List<ScrewLoads.OnScrew> screws = hanging.loads().stiff(right);
        assertThat(screws.get(0).pull()).isEqualTo(0);
        assertThat(screws.get(1).pull()).isCloseTo(right.pull(0.720, 0.020), within(1e-6));
        assertThat(screws.get(1).shear()).isGreaterThan(right.weight());
        assertThat(screws.get(1).shear() - screws.get(0).shear()).isCloseTo(right.weight(), within(1e-6));
    }

    @Test
    void thePatternSaysWhichStudsTheRailCatches() {
        Cabinet cabinet = new Cabinet(Length.inches(30), Optional.empty(), Length.inches(0.75), List.of());
        List<Length> studs = StudPattern.spaced(Length.inches(1), Length.inches(14), Length.inches(30));
        assertThat(studs).hasSize(3);
        // five diameters of a No. 10 beside the side: the first is too near its end, so is the last
        assertThat(StudPattern.caught(studs, cabinet, Hung.screw("wood-screw-10")))
                .singleElement()
                .satisfies(at -> assertThat(at.toInches()).isCloseTo(15, within(1e-9)));
    }

    /** Overhangs by the general beam against the closed form of two equal spans. */
    @Property(tries = 100)
    void overhangsAtBothEndsAreThoseOfTheClosedForm(
            @ForAll @DoubleRange(min = 0.3, max = 0.8) double span,
            @ForAll @DoubleRange(min = 0, max = 0.4) double over) {
        double width = 2 * span + 2 * over;
        double[] parts = LimberRail.even(new double[] {over, over + span, over + 2 * span}, width, 0, width);
        double end = (3 * span / 8 + over + 0.75 * over * over / span) / width;
        assertThat(parts[0]).isCloseTo(end, within(1e-9));
        assertThat(parts[2]).isCloseTo(end, within(1e-9));
        assertThat(parts[1]).isCloseTo(1 - 2 * end, within(1e-9));
        if (over == 0) {
            assertThat(parts[1]).isCloseTo(0.625, within(1e-9));
        }
    }

    /** An overhang at one end only: 0.625 in place of 0.75 there. */
    @Property(tries = 100)
    void anOverhangAtOneEndIsThatOfTheClosedForm(
            @ForAll @DoubleRange(min = 0.3, max = 0.8) double span,
            @ForAll @DoubleRange(min = 0, max = 0.4) double over) {
        double width = 2 * span + over;
        double[] parts = LimberRail.even(new double[] {over, over + span, width}, width, 0, width);
        assertThat(parts[0]).isCloseTo((3 * span / 8 + over + 0.625 * over * over / span) / width, within(1e-9));
    }

    /** Screws one above the other at known heights, in one row or two, under any case: one more in each stud never hurts. */
    @Property(tries = 100)
    void anotherScrewAtAKnownHeightInAStudAlreadyUsedNeverRaisesTheUse(
            @ForAll @IntRange(min = 1, max = 5) int perStud,
            @ForAll @DoubleRange(min = 30, max = 60) double apart,
            @ForAll @DoubleRange(min = 5, max = 120) double kg,
            @ForAll boolean secondRow,
            @ForAll boolean lag) {
        Hanging once = row(perStud, apart, kg, secondRow, lag);
        Hanging more = row(perStud + 1, apart, kg, secondRow, lag);
        assertThat(Hung.used(more)).isLessThanOrEqualTo(Hung.used(once) * (1 + 1e-9));
        for (int i = 0; i < once.answer().others().size(); i++) {
            assertThat(more.answer().others().get(i).demand())
                    .as(once.answer().others().get(i).what())
                    .isLessThanOrEqualTo(once.answer().others().get(i).demand() * (1 + 1e-9));
        }
    }

    private static Hanging row(int perStud, double apart, double kg, boolean secondRow, boolean lag) {
        Hanging h = Hung.cabinet(
                        kg,
                        new Row(Length.mm(600), perStud, Optional.of(Length.mm(apart))),
                        12.7,
                        Hung.at(150, 400, 650))
                .cases(LoadCases.of(LoadCase.CHILD_CLIMBING, LoadCase.ADULT_LEANING));
        Fixing f = h.fixing();
        Fixing with = new Fixing(
                Hung.screw(lag ? "lag-screw-1-4" : "wood-screw-10"), f.length(), f.rows(), f.studs(), f.rail());
        return h.fixing(secondRow ? with.with(new Row(Length.mm(45), 1)) : with);
    }
}
