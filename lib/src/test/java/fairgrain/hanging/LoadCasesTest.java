package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Caution;
import fairgrain.finding.Check;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Outcome;
import fairgrain.finding.Reliability;
import fairgrain.finding.Verdict;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** People, doors, an earthquake, a missing screw. */
class LoadCasesTest {
    private static final LoadCases PEOPLE =
            LoadCases.of(LoadCase.CHILD_CLIMBING, LoadCase.CHILD_ON_DOOR, LoadCase.ADULT_LEANING);

    @Test
    void theDemandOfEachCaseIsTheStatics() {
        Hanging hanging = Hung.cabinet(40, 2, 12.7).cases(PEOPLE);
        double g = Force.STANDARD_GRAVITY;
        Demand standing = hanging.demand(LoadCase.STANDING, 0, Demand.Side.RIGHT);
        double moment = g * (18 * 0.15 + 8 * 0.31 + 40 * 0.22);
        assertThat(standing.weight()).isCloseTo(g * 66, within(1e-9));
        assertThat(standing.moment(0.020)).isCloseTo(moment, within(1e-9));
        assertThat(standing.pull(0.720, 0.020)).isCloseTo(moment / 0.7, within(1e-9));
        // two doors of 4 kg swing out by half their width less half their thickness; one alone aside
        Demand open = hanging.demand(LoadCase.DOORS_OPEN, 0, Demand.Side.LEFT);
        assertThat(open.moment(0.020)).isCloseTo(moment + 2 * 4 * g * (0.199 - 0.010), within(1e-9));
        assertThat(open.turning()).isCloseTo(-4 * g * 0.199, within(1e-9));
        Demand climbing = hanging.demand(LoadCase.CHILD_CLIMBING, 0, Demand.Side.RIGHT);
        assertThat(climbing.weight()).isCloseTo(g * 66 + 1.5 * 267, within(1e-9));
        assertThat(climbing.moment(0.020)).isCloseTo(moment + 1.5 * 267 * 0.300, within(1e-9));
        assertThat(climbing.turning()).isCloseTo(1.5 * 267 * 0.400, within(1e-9));
        Demand onDoor = hanging.demand(LoadCase.CHILD_ON_DOOR, 0, Demand.Side.RIGHT);
        assertThat(onDoor.pointReach()).isCloseTo(0.300 + 0.398 - 0.040, within(1e-12));
        Demand adult = hanging.demand(LoadCase.ADULT_LEANING, 0, Demand.Side.RIGHT);
        assertThat(adult.point()).isCloseTo(1.5 * 1112, within(1e-9));
    }

    /** Half of the way to the heavy figures: case 19, doors 4.2 each, 8.4 in all, contents 45 kg; the child at 658 mm, 400 mm aside. */
    @Test
    void aChildOnADoorSwingsItOutAndHangsOnItsHandle() {
        Hanging hanging = Hung.cabinet(40, 2, 12.7).cases(PEOPLE);
        double g = Force.STANDARD_GRAVITY;
        double person = 1.5 * 267;
        for (Demand.Side side : Demand.Side.values()) {
            int sign = side == Demand.Side.LEFT ? -1 : 1;
            Demand on = hanging.demand(LoadCase.CHILD_ON_DOOR, 0.5, side);
            assertThat(on.even()).isCloseTo((19 + 8.4 + 45) * g, within(1e-9));
            assertThat(on.evenMoment())
                    .isCloseTo(g * (19 * 0.15 + 8.4 * 0.31 + 45 * 0.22) + 2 * 4.2 * g * (0.199 - 0.010), within(1e-9));
            assertThat(on.evenTurning()).isCloseTo(sign * 4.2 * g * 0.199, within(1e-9));
            assertThat(on.point()).isCloseTo(person, within(1e-9));
            assertThat(on.pointAt()).isCloseTo(sign * 0.4, within(1e-12));
            assertThat(on.turning()).isCloseTo(sign * (4.2 * g * 0.199 + person * 0.4), within(1e-9));
            assertThat(on.moment(0.020)).isCloseTo(on.evenMoment() + person * 0.658, within(1e-9));
        }
        // lighter than expected nothing is ever taken
        assertThat(hanging.demand(LoadCase.DOORS_OPEN, -1, Demand.Side.RIGHT))
                .isEqualTo(hanging.demand(LoadCase.DOORS_OPEN, 0, Demand.Side.RIGHT));
    }

    @Test
    void anEarthquakePullsOutwardAtTheCentreOfGravityAndSideways() {
        Hanging hanging = Hung.cabinet(40, 2, 0).cases(new LoadCases(List.of(), 1.5, OptionalDouble.of(0.5)));
        Demand quake = hanging.demand(LoadCase.EARTHQUAKE, 0, Demand.Side.RIGHT);
        double weight = 66 * Force.STANDARD_GRAVITY;
        double height = (26 * 0.38 + 40 * 0.4) / 66;
        assertThat(quake.level()).isCloseTo(weight / 2, within(1e-9));
        assertThat(quake.shear()).isCloseTo(Math.hypot(weight, weight / 2), within(1e-9));
        Demand standing = hanging.demand(LoadCase.STANDING, 0, Demand.Side.RIGHT);
        assertThat(quake.moment(0.020)).isCloseTo(standing.moment(0.020) + weight / 2 * (height - 0.020), within(1e-9));
        assertThat(hanging.answer().others())
                .anyMatch(
                        check -> check.what().equals("use of the hardest worked screw, earthquake, against all of it"));
    }

    @ParameterizedTest
    @EnumSource(LoadCase.class)
    void everyCaseUsesTheDurationItSays(LoadCase which) {
        assertThat(which.duration().factor())
                .isEqualTo(
                        switch (which) {
                            case STANDING -> 0.9;
                            case DOORS_OPEN -> 1.25;
                            case SCREW_GONE -> 1.15;
                            default -> 1.6;
                        });
    }

    @Property(tries = 50)
    void peopleNeverMakeItSaferAndAHigherFactorNever(
            @ForAll @DoubleRange(min = 5, max = 100) double kg,
            @ForAll @IntRange(min = 1, max = 4) int perStud,
            @ForAll @DoubleRange(min = 1, max = 3) double factor) {
        Hanging hanging = Hung.cabinet(kg, perStud, 12.7);
        LoadCases less = new LoadCases(PEOPLE.people(), factor, OptionalDouble.empty());
        LoadCases more = new LoadCases(PEOPLE.people(), factor + 0.5, OptionalDouble.empty());
        List<Check> once = hanging.cases(less).answer().others();
        List<Check> higher = hanging.cases(more).answer().others();
        for (int i = 0; i < once.size(); i++) {
            assertThat(higher.get(i).demand())
                    .isGreaterThanOrEqualTo(once.get(i).demand() * (1 - 1e-12));
        }
        assertThat(hanging.cases(less).answer().worst())
                .isEqualTo(hanging.answer().worst());
    }

    /** The short way to the likely worst case gives what the search gives. */
    @Property(tries = 20)
    void theHeavyCaseIsTheLikelyWorstOfEveryCheck(
            @ForAll @DoubleRange(min = 5, max = 100) double kg, @ForAll @IntRange(min = 1, max = 4) int perStud) {
        Hanging hanging = Hung.cabinet(kg, perStud, 12.7).cases(PEOPLE);
        List<Outcome> searched = Reliability.outcomes(hanging, Reliability.NINETEEN_IN_TWENTY);
        List<Outcome> outcomes = hanging.outcomes();
        for (int i = 0; i < outcomes.size(); i++) {
            assertThat(outcomes.get(i).planned().demand())
                    .isCloseTo(searched.get(i).planned().demand(), within(1e-9));
            assertThat(outcomes.get(i).expected()).isEqualTo(searched.get(i).expected());
        }
    }

    @Test
    void aCabinetOnTwoScrewsFallsWhenOneIsGone() {
        Finding finding = Hung.cabinet(2, 1, 0).findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.outcomes())
                .anyMatch(o -> o.planned().what().contains("one screw gone")
                        && !o.planned().holds());
        assertThat(finding.remedies()).isNotEmpty();
        assertThat(Hung.cabinet(2, 2, 0).findings().get(0).verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void theCautionOfChildrenGoesOnlyWhenBothTheirCasesAreAsked() {
        Hanging hanging = Hung.cabinet(5, 4, 0);
        assertThat(hanging.findings().get(0).cautions()).contains(Caution.CHILDREN);
        assertThat(hanging.cases(LoadCases.of(LoadCase.CHILD_CLIMBING))
                        .findings()
                        .get(0)
                        .cautions())
                .contains(Caution.CHILDREN);
        assertThat(hanging.cases(LoadCases.of(LoadCase.CHILD_CLIMBING, LoadCase.CHILD_ON_DOOR))
                        .findings()
                        .get(0)
                        .cautions())
                .doesNotContain(Caution.CHILDREN);
    }

    @Test
    void whatIsSaidMustGoTogether() {
        Hanging hanging = Hung.cabinet(5, 2, 0);
        Hanging bare = new Hanging(
                "cabinet",
                hanging.hung(),
                Cabinet.wide(Length.mm(800)),
                hanging.fixing(),
                hanging.stud(),
                List.of(),
                Hung.IN);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bare.cases(LoadCases.of(LoadCase.CHILD_ON_DOOR)))
                .withMessage("there is no door for a child to hang on");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bare.cases(LoadCases.of(LoadCase.ADULT_LEANING)))
                .withMessage("the depth of the cabinet must be known for the case adult leaning");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LoadCases.of(LoadCase.STANDING))
                .withMessage("the case standing has nobody in it; it counts anyway");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LoadCases(List.of(), 0.9, OptionalDouble.empty()))
                .withMessage("people factor must be from 1 to 5 (a ratio), but was 0.9");
    }

    @Test
    void blockingIsAskedWhatItCarriesAndHeldToIt() {
        Hanging hanging = Hung.cabinet(40, 3, 0);
        Hanging weak = hanging.carries(Force.newtons(500));
        assertThat(weak.findings().get(0).verdict()).isEqualTo(Verdict.FAILS);
        assertThat(hanging.carries(Force.newtons(5000)).findings().get(0).verdict())
                .isEqualTo(hanging.findings().get(0).verdict());
        Hanging open = new Hanging(
                "cabinet",
                hanging.hung(),
                hanging.cabinet(),
                hanging.fixing(),
                hanging.stud(),
                List.of(),
                LoadCases.ALWAYS,
                Optional.empty(),
                List.of(new Missing("what the blocking carries", "ask")),
                Hung.IN);
        assertThat(open.findings().get(0).verdict()).isEqualTo(Verdict.NOT_JUDGED);
    }
}
