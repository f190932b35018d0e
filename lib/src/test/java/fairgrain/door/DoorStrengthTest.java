package fairgrain.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fairgrain.fastener.ScrewSize;
import fairgrain.finding.Basis;
import fairgrain.finding.Caution;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Verdict;
import fairgrain.joint.Corner;
import fairgrain.joint.JointWood;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Doors on their hinges. */
class DoorStrengthTest {
    private static final Evidence TOLD = Evidence.of(Citation.of("maker", "made up for a test", Basis.ENTERED));
    private static final ScrewSize NO_6 = new ScrewSize("No. 6 wood screw", 0.0035, 0.00287, 0.0067, 690e6, 0.66, TOLD);
    private static final JointWood CHERRY = new JointWood(
            "a wood",
            OptionalDouble.of(11.72e6),
            OptionalDouble.of(4.76e6),
            OptionalDouble.of(0.53),
            OptionalDouble.of(0.50),
            TOLD);

    private static LeafIn solid(double gravity) {
        return new LeafIn("a wood", LeafIn.Kind.SOLID, OptionalDouble.of(gravity), Length.mm(45), TOLD);
    }

    private static Hinges hinges(double apart, int screws, double length) {
        return new Hinges(2, new Length(apart), screws, NO_6, new Length(length), Length.mm(1.5), false);
    }

    private static HingesHold door(double weight, Hinges hinges, LeafIn side) {
        return new HingesHold(
                "door",
                weight,
                Length.mm(450),
                Length.mm(700),
                hinges,
                solid(0.53),
                side,
                Force.newtons(100),
                ShopRule.INCHES);
    }

    private static FrameHolds frame(Corner corner, FrameHolds.Filled filled, double weight) {
        return new FrameHolds(
                "door",
                12 * weight,
                25 * weight,
                8 * weight,
                Length.mm(393),
                Length.mm(57),
                filled,
                corner,
                CHERRY,
                false);
    }

    private static double use(HingesHold asked) {
        return asked.answer().checks().get(0).demand();
    }

    @Property
    void aHeavierDoorNeverUsesLess(
            @ForAll @DoubleRange(min = 5, max = 100) double weight,
            @ForAll @DoubleRange(min = 1, max = 2) double times) {
        Hinges two = hinges(0.5, 3, 0.019);
        assertThat(use(door(weight * times, two, solid(0.6))))
                .isGreaterThanOrEqualTo(use(door(weight, two, solid(0.6))));
    }

    @Property
    void hingesFartherApartAndMoreScrewsNeverUseMore(
            @ForAll @DoubleRange(min = 0.1, max = 0.6) double apart, @ForAll @IntRange(min = 1, max = 5) int screws) {
        double base = use(door(60, hinges(apart, screws, 0.019), solid(0.6)));
        assertThat(use(door(60, hinges(apart + 0.05, screws, 0.019), solid(0.6))))
                .isLessThan(base);
        assertThat(use(door(60, hinges(apart, screws + 1, 0.019), solid(0.6)))).isLessThan(base);
    }

    @Property
    void theCoupleBalancesTheDoor(
            @ForAll @DoubleRange(min = 1, max = 200) double weight,
            @ForAll @DoubleRange(min = 0.1, max = 1) double width,
            @ForAll @DoubleRange(min = 0.1, max = 1) double apart) {
        double pull = HingeCouple.pull(weight, width, 50, width, apart);
        assertThat(pull * apart).isCloseTo(weight * width / 2 + 50 * width, within(1e-9 * (1 + weight)));
    }

    @Property
    void aCureAskedAgainHolds(@ForAll @DoubleRange(min = 20, max = 2000) double weight) {
        door(weight, hinges(0.2, 2, 0.016), solid(0.5))
                .findings()
                .get(0)
                .remedies()
                .forEach(remedy ->
                        assertThat(remedy.then().findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE));
    }

    @Property
    void aTestThatHangsMoreUsesMoreAndTheDoorAloneLess(@ForAll @DoubleRange(min = 5, max = 200) double weight) {
        List<HingesHold.InTest> tests =
                door(weight, hinges(0.5, 3, 0.019), solid(0.6)).answer().tests();
        assertThat(tests)
                .extracting(HingesHold.InTest::test)
                .containsExactly(OpenDoorLoad.KITCHEN_CABINETS, OpenDoorLoad.WOODWORK, OpenDoorLoad.STORAGE_FURNITURE);
        assertThat(tests.get(1).use()).isGreaterThan(tests.get(0).use());
        List<HingesHold.InTest> lighter =
                door(weight / 2, hinges(0.5, 3, 0.019), solid(0.6)).answer().tests();
        for (int i = 0; i < tests.size(); i++) {
            assertThat(lighter.get(i).use()).isLessThan(tests.get(i).use());
        }
    }

    /** By hand for one screw: the pull of the test by its short-time strength is a part of its use, never more than that. */
    @Test
    void aTestIsHeldAgainstTwoThirdsOfTheMeanPull() {
        double pull = HingeCouple.pull(60, 0.45, 65 * 4.4482216152605, 0.254, 0.5);
        double thread = Math.min(0.0175, 0.66 * 0.019);
        double strength = 0.67 * 15700 * 0.53 * 0.53 * (0.0035 / 0.0254) * (thread / 0.0254) * 4.4482216152605;
        double use = door(60, hinges(0.5, 3, 0.019), solid(0.53))
                .answer()
                .tests()
                .get(0)
                .use();
        double withoutWeight = 1.5 * pull / 3 / strength;
        assertThat(use).isGreaterThan(withoutWeight).isLessThan(3 * withoutWeight);
    }

    @ParameterizedTest(name = "a door {0} m wide, {1}: {2} m")
    @CsvSource({
        "0.45, KITCHEN_CABINETS, 0.254",
        "0.20, KITCHEN_CABINETS, 0.20",
        "0.45, WOODWORK, 0.3048",
        "0.45, STORAGE_FURNITURE, 0.35",
        "0.08, STORAGE_FURNITURE, 0"
    })
    void aTestHangsItsWeightWhereItSays(double width, OpenDoorLoad test, double arm) {
        assertThat(test.arm(width)).isCloseTo(arm, within(1e-12));
    }

    @Test
    void aHighDoorOnTwoHingesIsToldOfAThird() {
        HingesHold high = new HingesHold(
                "door",
                60,
                Length.mm(450),
                Length.mm(1000),
                hinges(0.8, 3, 0.019),
                solid(0.53),
                solid(0.53),
                Force.newtons(100),
                ShopRule.INCHES);
        assertThat(high.findings().get(0).notes())
                .extracting(words -> words.sentence())
                .contains("A furniture rule wants two hinges up to {} of height and three up to {}: the third keeps the"
                        + " stile straight; it is not counted for strength.");
        assertThat(door(60, hinges(0.5, 3, 0.019), solid(0.6)).findings().get(0).notes())
                .noneMatch(words -> words.sentence().startsWith("A furniture rule"));
    }

    @Test
    void hingesInBoardAreNotJudged() {
        LeafIn mdf = new LeafIn("MDF", LeafIn.Kind.BOARD, OptionalDouble.empty(), Length.mm(18), TOLD);
        Finding finding = door(60, hinges(0.5, 3, 0.016), mdf).findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(finding.missing())
                .containsExactly(new Missing(
                        "what hinge screws hold sideways in MDF",
                        "let a strip of solid wood in behind the hinges, or use hinges with their maker's value for"
                                + " such a board"));
    }

    @Test
    void aScrewThatComesThroughTheSideFails() {
        LeafIn thin = new LeafIn("a wood", LeafIn.Kind.SOLID, OptionalDouble.of(0.6), Length.mm(18), TOLD);
        assertThat(door(60, hinges(0.5, 3, 0.025), thin).findings().get(0).verdict())
                .isEqualTo(Verdict.FAILS);
    }

    @Test
    void hingesStandWithinTheDoor() {
        assertThatThrownBy(() -> door(60, hinges(0.7, 3, 0.019), solid(0.5)))
                .hasMessage("the hinges must be less far apart than the door is high");
    }

    @Test
    void aGluedSheetTakesFourFifthsAndAFloatingPanelNothing() {
        Corner stub = new Corner.StubTenon(Length.mm(57), Length.mm(10));
        double floats =
                frame(stub, FrameHolds.Filled.PANEL, 1).answer().atCorner().si();
        assertThat(floats).isCloseTo(3.19, within(0.01));
        assertThat(frame(stub, FrameHolds.Filled.GLASS, 1).answer().atCorner().si())
                .isEqualTo(floats);
        assertThat(frame(stub, FrameHolds.Filled.GLUED_SHEET, 1)
                        .answer()
                        .atCorner()
                        .si())
                .isCloseTo(floats / 5, within(1e-12));
    }

    private static FrameHolds glued(JointWood wood, Optional<FrameHolds.Glue> glue) {
        return new FrameHolds(
                "door",
                12,
                25,
                8,
                Length.mm(393),
                Length.mm(57),
                FrameHolds.Filled.GLUED_SHEET,
                new Corner.Dowels(2, Length.mm(8), Length.mm(25), Length.mm(30), Length.mm(12)),
                wood,
                false,
                glue);
    }

    /** By hand: 12.77 N m over 393 mm is 32.5 N along a stile; 2 x 10 mm x 586 mm at 1 MPa x 0.67 x 0.56 x 0.80 is 3518 N. */
    @Test
    void theGlueOfASheetIsCheckedAsByHand() {
        Check glue = glued(CHERRY, Optional.of(new FrameHolds.Glue(Length.mm(586), Length.mm(10))))
                .answer()
                .checks()
                .get(1);
        assertThat(glue.what())
                .isEqualTo(
                        "shear along the edge of the glued sheet from the door's own weight, against what its glue may"
                                + " carry");
        assertThat(glue.demand()).isCloseTo(32.5, within(0.05));
        assertThat(glue.capacity()).isCloseTo(3518, within(1.0));
    }

    @Test
    void aGluedSheetOfWhichTooLittleIsKnownIsNotJudged() {
        Finding unsaid = glued(CHERRY, Optional.empty()).findings().get(0);
        assertThat(unsaid.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(unsaid.missing())
                .containsExactly(
                        new Missing("how the glued sheet sits in its grooves", "enter the depth of the groove"));
        JointWood unknown = new JointWood(
                "a wood",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(0.53),
                OptionalDouble.of(0.50),
                TOLD);
        Finding weak = glued(unknown, Optional.of(new FrameHolds.Glue(Length.mm(586), Length.mm(10))))
                .findings()
                .get(0);
        assertThat(weak.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(weak.missing())
                .containsExactly(new Missing(
                        "the shear strength of a wood under the glue of the sheet",
                        "choose a wood whose strength and its basis are in the table"));
    }

    @Test
    void betweenTheTwoBoundsOfAStubTenonNobodyCanSay() {
        Corner stub = new Corner.StubTenon(Length.mm(57), Length.mm(10));
        assertThat(verdict(stub, 1)).isIn(Verdict.HOLDS, Verdict.CLOSE);
        assertThat(verdict(stub, 2)).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(verdict(stub, 5)).isEqualTo(Verdict.FAILS);
    }

    private static Verdict verdict(Corner corner, double weight) {
        return frame(corner, FrameHolds.Filled.PANEL, weight).findings().get(0).verdict();
    }

    @Test
    void aGlassFrameCarriesItsCaution() {
        Corner tenon = new Corner.Tenon(Length.mm(45), Length.mm(32), Length.mm(7), Length.mm(20));
        Finding finding = frame(tenon, FrameHolds.Filled.GLASS, 1).findings().get(0);
        assertThat(finding.cautions()).contains(Caution.GLASS);
        assertThat(finding.outcomes())
                .allSatisfy(o -> assertThat(o.planned().factor()).isGreaterThan(10));
    }

    @Test
    void theDropOfTheClosingEdgeGrowsWithTheDoorAndShrinksWithTheSpacing() {
        assertThat(HingeCouple.drop(0.0001, 0.45, 0.5)).isCloseTo(0.00009, within(1e-12));
    }

    /** A check of the sum of all moments about the bottom hinge. */
    @Test
    void everyCheckSaysWhatItCompares() {
        assertThat(door(60, hinges(0.5, 3, 0.019), solid(0.6)).answer().checks())
                .extracting(Check::what)
                .containsExactly(
                        "use of a screw in the top hinge, the door's own weight, against all of it",
                        "use of a screw in the top hinge, a hand on the open door, against all of it",
                        "how deep a hinge screw goes, against the a wood behind the leaf less 2 mm",
                        "how deep a hinge screw goes, against the a wood behind the leaf less 2 mm");
    }
}
