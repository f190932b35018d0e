package fairgrain.hanging;

import static fairgrain.hanging.BevelledRailsTest.finding;
import static fairgrain.hanging.BevelledRailsTest.thick;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Caution;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Size;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is said, and what is said to be missing, of a case on two bevelled strips of 32 mm. */
class BevelledWordsTest {
    private static final BevelledRails GOOD = thick(5);
    private static final Rail MEMBER = GOOD.pair().screws().member();

    private static BevelledRails screwed(HangingScrew screw, CaseScrews.Driven driven, Rail member, double lengthMm) {
        return GOOD.pair(
                GOOD.pair().screws(new CaseScrews(10, screw, Length.mm(lengthMm), Length.mm(40), driven, member)));
    }

    private static DeclaredScrew declared(double leastGravity, Optional<Force> pullThrough) {
        return new DeclaredScrew(
                "declared screw",
                Length.mm(5),
                new Force(900),
                new Force(700),
                pullThrough,
                DeclaredScrew.Given.ALLOWABLE,
                1,
                leastGravity,
                Optional.empty(),
                Length.ZERO);
    }

    private static BevelledRails stop(Optional<Boolean> stop, LoadCases cases) {
        return thick(5, BevelledPair.Bearing.SPACER, stop, cases);
    }

    private static List<String> notes(BevelledRails rails) {
        return finding(rails).notes().stream().map(Words::sentence).toList();
    }

    private static double size(Finding finding, String what) {
        return finding.sizes().stream()
                .filter(size -> size.what().equals(what))
                .map(Size::value)
                .mapToDouble(Quantity::si)
                .findFirst()
                .orElseThrow();
    }

    // What is missing: each keeps the verdict open

    /** The rule of heads ends at 1 1/2 in; what lies under the heads is what they are driven through. */
    @Test
    void headsThroughAMemberOfTheCaseThatIsTooThickAreNotJudged() {
        Rail post = Rail.solid("a post in the case", 0.6, Length.mm(40), Hung.ANY);
        BevelledRails inside = screwed(Hung.screw("wood-screw-8"), CaseScrews.Driven.FROM_INSIDE, post, 64);
        assertThat(finding(inside).missing())
                .containsExactly(new Missing(
                        "whether the heads pull through a rail so thin or so thick",
                        "use a rail from 5/16 to 1 1/2 in (8 to 38 mm) thick under round heads or washers"));
        assertThat(finding(screwed(Hung.screw("wood-screw-8"), CaseScrews.Driven.FROM_BEHIND, post, 64))
                        .missing())
                .as("from behind the heads lie on the strip")
                .isEmpty();
    }

    @Test
    void headsOnABoardAreNotJudged() {
        Rail board = new Rail(
                "MDF",
                Rail.Kind.BOARD,
                0.7,
                Length.mm(19),
                Optional.empty(),
                Optional.empty(),
                Rail.Held.BOTH_EDGES,
                OptionalDouble.empty(),
                Hung.ANY);
        Finding finding = finding(screwed(Hung.screw("wood-screw-8"), CaseScrews.Driven.FROM_INSIDE, board, 51));
        assertThat(finding.missing())
                .containsExactly(new Missing(
                        "when a head pulls through MDF",
                        "use a rail of solid wood or plywood, or put a strip of wood under the heads"));
        assertThat(finding.verdict()).isIn(Verdict.NOT_JUDGED, Verdict.FAILS);
    }

    @Test
    void whatTheMakerOfTheScrewsOfTheCaseStripDoesNotSayIsMissing() {
        BevelledRails unsaid = screwed(declared(0.61, Optional.empty()), CaseScrews.Driven.FROM_INSIDE, MEMBER, 51);
        assertThat(finding(unsaid).missing())
                .containsExactly(
                        new Missing(
                                "what the screw holds in wood as light as a strip",
                                "ask its maker for values in such wood, or take a screw of the table"),
                        new Missing(
                                "the pull at which its head goes through the rail",
                                "ask its maker and enter 'pull through'"));
        BevelledRails said =
                screwed(declared(0.6, Optional.of(new Force(500))), CaseScrews.Driven.FROM_INSIDE, MEMBER, 51);
        assertThat(finding(said).missing()).as("just as dense, and all said").isEmpty();
    }

    @Test
    void whereNothingStopsItAPushFromBelowNeedsTheDepthOfTheCase() {
        Hanging deep = GOOD.hanging();
        Hanging plain = new Hanging(
                deep.part(),
                deep.hung(),
                Cabinet.wide(Length.mm(1000)),
                deep.fixing(),
                deep.stud(),
                deep.layers(),
                deep.in());
        BevelledPair free = GOOD.pair().liftStop(false);
        assertThat(finding(new BevelledRails(plain, free)).missing())
                .containsExactly(new Missing("whether a push from below lifts it off", "put in a lift stop"));
        assertThat(finding(new BevelledRails(plain, GOOD.pair())).missing()).isEmpty();
        assertThat(finding(new BevelledRails(deep, free)).missing()).isEmpty();
    }

    @Test
    void anEarthquakeOnStripsIsNeverJudged() {
        LoadCases shaken = new LoadCases(List.of(), 1.5, OptionalDouble.of(0.3));
        assertThat(finding(stop(Optional.of(true), shaken)).missing())
                .containsExactly(new Missing(
                        "how an earthquake lifts and shakes it on its strips",
                        "screw the case to the studs as well, through a rail"));
        assertThat(finding(stop(Optional.of(false), shaken)).missing())
                .containsExactly(new Missing(
                        "what keeps it from being lifted off in an earthquake",
                        "put in a lift stop, and screw the case to the studs through a rail"));
    }

    // What is said

    @Test
    void childrenAreWarnedOfUnlessTheyWereReckonedWith() {
        assertThat(finding(GOOD).cautions())
                .containsExactlyInAnyOrder(
                        Caution.LOCAL_CODE,
                        Caution.STUDS_ONLY,
                        Caution.HIDDEN_SERVICES,
                        Caution.EARTHQUAKE,
                        Caution.DRY_SOUND_WOOD,
                        Caution.ASSUMED_CONTENTS,
                        Caution.CHILDREN);
        assertThat(finding(stop(Optional.of(true), LoadCases.of(LoadCase.CHILD_CLIMBING)))
                        .cautions())
                .doesNotContain(Caution.CHILDREN);
    }

    @Test
    void ofTheLiftStopItIsSaidWhatIsToBeDone() {
        String there = "Put the lift stop in once it hangs, and say so where the next owner will find it.";
        String none = "Nothing keeps it from being lifted off: a screw or a block over the case strip would.";
        assertThat(notes(stop(Optional.of(true), LoadCases.ALWAYS)))
                .contains(there)
                .doesNotContain(none);
        BevelledRails free = stop(Optional.of(false), LoadCases.ALWAYS);
        assertThat(notes(free)).contains(none).doesNotContain(there);
        assertThat(finding(free).evidence().sources()).contains(BevelledRails.LIFT_OFF);
        assertThat(notes(stop(Optional.empty(), LoadCases.ALWAYS)))
                .doesNotContain(none)
                .doesNotContain(there);
        assertThat(finding(GOOD).evidence().sources()).doesNotContain(BevelledRails.LIFT_OFF);
    }

    /** tan(45° ∓ φ) with tan φ = 0.3 is 0.7/1.3 and 1.3/0.7: of 30 kg, 294.2 N, that is 158.4 and 546.4 N. */
    @Test
    void whatFrictionMayTakeOrAddIsToldButNotCounted() {
        Words friction = finding(GOOD).notes().stream()
                .filter(note -> note.sentence().startsWith("With a friction of 0.3"))
                .findFirst()
                .orElseThrow();
        double weight = 30 * Force.STANDARD_GRAVITY;
        List<Double> told = friction.numbers().stream().map(Quantity::si).toList();
        assertThat(told.get(0)).isCloseTo(weight, within(1e-9));
        assertThat(told.get(1)).isCloseTo(weight * 0.7 / 1.3, within(1e-9));
        assertThat(told.get(2)).isCloseTo(weight * 1.3 / 0.7, within(1e-9));
    }

    @Test
    void aSteelStudsBendingIsSaidNotToBeJudged() {
        String bending = "The bending of the steel stud and its hold in the track are not judged: backing across the"
                + " studs is better.";
        BevelledRails steel = new BevelledRails(GOOD.hanging().stud(Hung.stud("steel-stud-43-mil")), GOOD.pair());
        assertThat(notes(steel)).contains(bending);
        assertThat(notes(GOOD)).doesNotContain(bending);
    }

    /** A bevel of 45 degrees through 32 mm rises 32 mm, and 3 mm are to spare; the screws sit 655 mm up. */
    @Test
    void theSizesSayWhereItHangsAndHowMuchMustBeFreeAboveIt() {
        Finding finding = finding(GOOD);
        assertThat(size(finding, "lowest screws above the lower edge")).isCloseTo(0.655, within(1e-12));
        assertThat(size(finding, "stud 2 from the left end")).isCloseTo(0.500, within(1e-12));
        assertThat(size(finding, "spacer at the bottom, as thick as the strips"))
                .isCloseTo(0.032, within(1e-12));
        assertThat(size(finding, "height free above it, to lift it over its mate"))
                .isCloseTo(0.035, within(1e-9));
        assertThat(size(finding, "screws of the case strip, evenly spaced")).isEqualTo(10);
        assertThat(size(finding, "screws of the case strip below its upper edge"))
                .isCloseTo(0.040, within(1e-12));
    }

    /** 25 kg of case, 5 kg expected in it and 12 kg at most: the bevel of 45 degrees draws with the weight of 37 kg. */
    @Test
    void theForcesToldAreThoseOfHeavyContents() {
        HungWeight heavy = new HungWeight(List.of(
                new HungWeight.Item("cabinet", 25, 25, 0.165),
                new HungWeight.Item("contents", 5, 12, 0.150, 0, OptionalDouble.empty(), HungWeight.Stays.NOT_YET)));
        Finding finding = finding(new BevelledRails(GOOD.hanging().hung(heavy), GOOD.pair()));
        assertThat(finding.why().sentence()).startsWith("With heavy contents the bevel draws it in with {}");
        assertThat(finding.why().numbers().get(0).si()).isCloseTo(37 * Force.STANDARD_GRAVITY, within(1e-6));
    }

    @Test
    void whatHoldsIsOfferedNoCure() {
        assertThat(finding(GOOD).outcomes())
                .allMatch(outcome -> outcome.planned().holds());
        assertThat(finding(GOOD).remedies()).isEmpty();
    }
}
