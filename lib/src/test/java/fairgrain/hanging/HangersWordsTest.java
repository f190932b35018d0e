package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Caution;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Reliability;
import fairgrain.finding.Words;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is said of hangers on a case 800 mm wide, and which of them are refused. */
class HangersWordsTest {
    private static final String FALLS = "If one of the two lets go the case falls: no verdict here covers that. A third"
            + " hanger, or a screw through a rail into a stud, holds it then.";

    private static HangerHold hold(LoadCases cases, Optional<Force> out, double height, double... at) {
        Hangers hangers = new Hangers(
                "plates", Hung.at(at), Length.mm(height), new Force(4000), out, DeclaredScrew.Given.ULTIMATE, 5.5);
        return new HangerHold(Hung.cabinet(20, 2, 0).cases(cases), hangers);
    }

    private static HangerHold hold(double... at) {
        return hold(LoadCases.ALWAYS, Optional.of(new Force(2000)), 700, at);
    }

    private static List<String> notes(HangerHold hold) {
        return hold.findings().get(0).notes().stream().map(Words::sentence).toList();
    }

    @Test
    void aPairIsSaidToFallWhenOneLetsGoAndThreeAreJudgedForIt() {
        assertThat(notes(hold(100, 700))).contains(FALLS);
        assertThat(hold(100, 700).answer().checks())
                .noneMatch(check -> check.what().contains("gone"));
        assertThat(notes(hold(100, 400, 700))).doesNotContain(FALLS);
        assertThat(hold(100, 400, 700).answer().checks())
                .anyMatch(check -> check.what().contains("hanger gone"));
    }

    @Test
    void placesAreCountedFromTheLeftAndGiven() {
        Finding finding = hold(100, 400, 700).findings().get(0);
        assertThat(finding.sizes())
                .extracting(size -> size.what())
                .containsExactly(
                        "hangers above the lower edge",
                        "hanger 1 from the left end",
                        "hanger 2 from the left end",
                        "hanger 3 from the left end");
        assertThat(finding.sizes().get(2).value()).isEqualTo(Length.mm(400));
        assertThat(finding.part()).isEqualTo("cabinet");
        assertThat(hold(100, 700).spreads())
                .isEqualTo(Hung.cabinet(20, 2, 0).spreads())
                .isNotEmpty();
    }

    @Test
    void childrenAreWarnedOfUnlessTheyWereReckonedWith() {
        assertThat(hold(100, 700).findings().get(0).cautions()).contains(Caution.CHILDREN);
        LoadCases children = LoadCases.of(LoadCase.CHILD_CLIMBING, LoadCase.CHILD_ON_DOOR);
        assertThat(hold(children, Optional.empty(), 700, 100, 700)
                        .findings()
                        .get(0)
                        .cautions())
                .doesNotContain(Caution.CHILDREN);
    }

    @Test
    void whatTheMakerDoesNotSayAndWhatAnEarthquakeDoesAreNotJudged() {
        LoadCases shaken = new LoadCases(List.of(), 1.5, OptionalDouble.of(0.3));
        assertThat(hold(shaken, Optional.empty(), 700, 100, 700)
                        .findings()
                        .get(0)
                        .missing())
                .containsExactly(
                        new Missing(
                                "what a hanger holds against a pull away from the wall",
                                "ask its maker and enter 'out'"),
                        new Missing(
                                "what keeps the case on its hangers in an earthquake",
                                "screw the case to the studs through a rail"));
    }

    /** At nineteen in twenty things weigh what the maker said that they weigh at most. */
    @Test
    void heavyContentsAreThoseOfTheirOwnFigure() {
        HangerHold middle = hold(200, 600);
        double heavy = middle.model()
                .at(spread -> Reliability.NINETEEN_IN_TWENTY)
                .checks()
                .get(0)
                .demand();
        Hanging like = Hung.cabinet(20, 2, 0);
        Demand demand = like.demand(LoadCase.STANDING, 1, Demand.Side.RIGHT);
        // two hangers: half of the weight down and of the pull out each, 680 mm above the contact
        double down = demand.weight() / 2 / (4000 / 5.5);
        double out = demand.moment(0.020) / 0.680 / 2 / (2000 / 5.5);
        assertThat(heavy).isCloseTo(down + out, within(1e-6));
    }

    @Test
    void hangersBesideTheCaseOrNearItsLowerEdgeAreRefused() {
        assertThat(hold(0, 800).hangers().at()).hasSize(2);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> hold(100, 800.1))
                .withMessage("every hanger must sit on the case, between its ends");
        assertThat(hold(LoadCases.ALWAYS, Optional.empty(), 60, 100, 700)
                        .hangers()
                        .height())
                .isEqualTo(Length.mm(60));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> hold(LoadCases.ALWAYS, Optional.empty(), 59.9, 100, 700))
                .withMessage("the hangers must sit well above the lower edge of the case");
    }
}
