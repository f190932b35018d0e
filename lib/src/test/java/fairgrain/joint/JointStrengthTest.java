package fairgrain.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fairgrain.fastener.ScrewSize;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Verdict;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** What joints carry, and what nobody can say they do. */
class JointStrengthTest {
    private static final double MM = 1e-3;
    private static final Evidence TOLD = Evidence.of(Citation.of("maker", "made up for a test", Basis.ENTERED));
    private static final ScrewSize NO_8 =
            new ScrewSize("No. 8 wood screw", 0.00417, 0.00333, 0.0079, 620e6, 0.66, TOLD);

    private static JointWood wood(double gravity) {
        return new JointWood(
                "a wood",
                OptionalDouble.of(11.7e6),
                OptionalDouble.of(4.8e6),
                OptionalDouble.of(gravity),
                OptionalDouble.of(gravity * 0.95),
                TOLD);
    }

    private static double mean(double height, double length) {
        return TenonGlueFaces.mean(11e6, height * MM, length * MM);
    }

    private static JointWood unknown() {
        return new JointWood(
                "a wood",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                TOLD);
    }

    private static EndJointHolds held(EndJoint joint, double load) {
        return new EndJointHolds("bottom to sides", joint, wood(0.55), wood(0.55), Force.newtons(load), "half of it");
    }

    @Property
    void aLongerOrHigherTenonIsNeverWeaker(
            @ForAll @DoubleRange(min = 10, max = 80) double height,
            @ForAll @DoubleRange(min = 10, max = 80) double length,
            @ForAll @DoubleRange(min = 1, max = 2) double more) {
        double base = mean(height, length);
        assertThat(mean(height * more, length)).isGreaterThanOrEqualTo(base * (1 - 1e-12));
        assertThat(mean(height, length * more)).isGreaterThanOrEqualTo(base * (1 - 1e-12));
    }

    @Property
    void firstYieldLiesBelowFullyPlastic(
            @ForAll @DoubleRange(min = 5, max = 200) double height,
            @ForAll @DoubleRange(min = 5, max = 200) double length) {
        assertThat(TenonGlueFaces.firstYield(11e6, height * MM, length * MM))
                .isLessThan(TenonGlueFaces.plastic(11e6, height * MM, length * MM));
    }

    @Property
    void theLowerBoundOfAStubTenonNeverLiesAboveTheUpperOne(
            @ForAll @DoubleRange(min = 20, max = 100) double height,
            @ForAll @DoubleRange(min = 4, max = 20) double length) {
        JointStrength stub = new Corner.StubTenon(Length.mm(height), Length.mm(length)).strength(wood(0.55), false);
        assertThat(stub.low()).isLessThanOrEqualTo(stub.high());
        assertThat(stub.working()).isLessThan(0.26 * stub.low());
    }

    @Property
    void moreScrewsNeverCarryLess(@ForAll @IntRange(min = 1, max = 20) int number) {
        assertThat(through(number + 1).strength(wood(0.55), wood(0.55)).working())
                .isGreaterThan(through(number).strength(wood(0.55), wood(0.55)).working());
    }

    private static EndJoint.ThroughSide through(int number) {
        return new EndJoint.ThroughSide(number, NO_8, Length.inches(2), Length.inches(0.75));
    }

    @Property
    void aCureAskedAgainHolds(@ForAll @DoubleRange(min = 10, max = 4000) double load) {
        held(through(2), load)
                .findings()
                .get(0)
                .remedies()
                .forEach(remedy ->
                        assertThat(remedy.then().findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE));
    }

    @Test
    void theWorkingValueIsTheMeanTimesItsShares() {
        JointStrength tenon =
                new Corner.Tenon(Length.mm(38), Length.mm(32), Length.mm(7), Length.mm(22)).strength(wood(0.55), false);
        assertThat(tenon.working()).isCloseTo(tenon.low() * 0.67 * 0.56 * 0.80, within(1e-9));
        assertThat(tenon.sharesInWords())
                .isEqualTo("what nearly all joints reach 0.67, loaded for good 0.56, made by hand 0.8");
    }

    @Test
    void endGrainIsWorthTwoThirdsSideways() {
        JointStrength screws = through(1).strength(wood(0.55), wood(0.55));
        assertThat(screws.shares()).extracting(Share::value).contains(2.0 / 3, 0.9);
        assertThat(screws.notes())
                .contains("A screw in end grain holds no pull along itself: nothing is counted for that.");
    }

    @Test
    void screwsUpIntoTheEndOfASideAreNotJudged() {
        Finding finding =
                held(EndJoint.Unproved.SCREWS_INTO_END, 100).findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(finding.missing())
                .containsExactly(new Missing(
                        "what a screw holds that is pulled out of end grain: no code grants it anything",
                        "screw through the side into the end of the board instead, or house the board"));
    }

    @Test
    void biscuitsAndGlueOnEndGrainCountNothing() {
        for (EndJoint joint : new EndJoint[] {EndJoint.Unproved.BISCUITS, EndJoint.Unproved.GLUE}) {
            assertThat(held(joint, 1).findings().get(0).verdict()).isEqualTo(Verdict.NOT_JUDGED);
        }
        assertThat(new Corner.Aligned("biscuits").strength(wood(0.55), false).missing())
                .hasSize(1);
    }

    @Test
    void aWoodOfWhichNothingIsKnownIsNotJudged() {
        EndJointHolds asked = new EndJointHolds("end", through(3), unknown(), unknown(), Force.newtons(10), "it");
        assertThat(asked.findings().get(0).verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(new Corner.StubTenon(Length.mm(57), Length.mm(10))
                        .strength(unknown(), false)
                        .missing())
                .containsExactly(new Missing(
                        "the shear strength of a wood", "choose a wood whose strength and its basis are in the table"));
    }

    @Test
    void screwsThroughASideIntoTheEdgeOfPlywoodAreNotJudgedButThroughPlywoodTheyAre() {
        JointWood plywood = new JointWood(
                "birch plywood",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(0.42),
                OptionalDouble.empty(),
                true,
                TOLD);
        assertThat(through(3).strength(plywood, wood(0.55)).missing())
                .containsExactly(new Missing(
                        "what a screw holds sideways in the edge of birch plywood: no figure stands for it",
                        "glue a strip of solid wood on or in, and screw into that"));
        assertThat(through(3).strength(wood(0.55), plywood).missing()).isEmpty();
    }

    @Test
    void aScrewThatReachesTooLittleIsNotJudged() {
        EndJoint shallow = new EndJoint.ThroughSide(3, NO_8, Length.inches(1.25), Length.inches(0.75));
        assertThat(held(shallow, 10).findings().get(0).missing())
                .containsExactly(new Missing(
                        "what a screw holds that reaches less than six diameters into the second piece",
                        "use longer screws, as long as they do not come through"));
    }

    @Test
    void aHousingAtTheVeryEndOfASideCarriesNothingThatIsKnown() {
        EndJoint rabbet = new EndJoint.Housed(Length.mm(6), Length.ZERO, Length.mm(280));
        assertThat(held(rabbet, 10).findings().get(0).verdict()).isEqualTo(Verdict.NOT_JUDGED);
    }

    @Test
    void aHousedEndBearsOnItsWall() {
        JointStrength housed =
                new EndJoint.Housed(Length.mm(6), Length.mm(100), Length.mm(280)).strength(wood(0.55), wood(0.55));
        assertThat(housed.low()).isCloseTo(4.8e6 * 0.006 * 0.280, within(1e-6));
        assertThat(housed.notes()).contains("The wall of the housing would dent the board first.");
    }

    @Test
    void aTenonIsNoThickerThanItsRail() {
        assertThatThrownBy(() -> new Corner.Tenon(Length.mm(38), Length.mm(32), Length.mm(23), Length.mm(22)))
                .hasMessageContaining("thickness of the tenon");
    }
}
