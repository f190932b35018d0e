package fairgrain.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
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
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Blocks, glue lines, screws near an end, pocket screws by their length, screws under a load that was told. */
class JointKindsTest {
    private static final Evidence TOLD = Evidence.of(Citation.of("maker", "made up for a test", Basis.ENTERED));
    private static final ScrewSize NO_8 =
            new ScrewSize("No. 8 wood screw", 0.0041656, 0.0033274, 0.0079248, 620e6, 0.66, TOLD);
    private static final Length SIDE = Length.inches(1);

    private static JointWood wood(double gravity) {
        return new JointWood(
                "a wood",
                OptionalDouble.of(11.7e6),
                OptionalDouble.of(4.8e6),
                OptionalDouble.of(gravity),
                OptionalDouble.of(gravity * 0.95),
                TOLD);
    }

    private static JointWood plywood() {
        return new JointWood(
                "plywood",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(0.42),
                OptionalDouble.empty(),
                true,
                TOLD);
    }

    private static OnBlock block(int number, double thickMm, double highMm) {
        return new OnBlock(
                number,
                NO_8,
                Length.mm(thickMm + 22),
                wood(0.5),
                Length.mm(thickMm),
                Length.mm(highMm),
                SIDE,
                Length.mm(1000));
    }

    private static double working(EndJoint joint) {
        return joint.strength(wood(0.55), wood(0.55)).working();
    }

    private static EndJoint.ThroughSide near(double fromEndMm) {
        return new EndJoint.ThroughSide(
                3, NO_8, Length.inches(2), Length.inches(0.75), Optional.of(Length.mm(fromEndMm)), Optional.empty());
    }

    private static ScrewsHold hold(int number, double sideways, double pull, boolean endGrain, JointWood into) {
        ScrewFit fit = new ScrewFit(
                "batten to panel",
                NO_8,
                Length.inches(1.5),
                wood(0.5),
                Length.inches(0.75),
                into,
                Length.inches(1),
                Optional.empty(),
                Optional.empty(),
                endGrain,
                List.of());
        return new ScrewsHold(fit, number, Force.newtons(sideways), Force.newtons(pull), false);
    }

    private static PocketFit pocket(double lengthMm, double thicknessMm, double stileMm, Optional<Length> groove) {
        return new PocketFit(
                NO_8, Length.mm(lengthMm), Length.mm(13), Length.mm(thicknessMm), Length.mm(stileMm), groove);
    }

    private static JointStrength tenon(double thicknessMm) {
        return new Corner.Tenon(Length.mm(38), Length.mm(32), Length.mm(thicknessMm), Length.mm(24))
                .strength(wood(0.55), false);
    }

    @Property
    void moreScrewsAndAHigherBlockNeverCarryLess(
            @ForAll @IntRange(min = 1, max = 20) int number,
            @ForAll @DoubleRange(min = 12, max = 25) double thick,
            @ForAll @DoubleRange(min = 12, max = 80) double high,
            @ForAll @DoubleRange(min = 1, max = 1.25) double more) {
        assertThat(working(block(number + 1, thick, high))).isGreaterThan(working(block(number, thick, high)));
        assertThat(working(block(number, thick, high * more)))
                .isGreaterThanOrEqualTo(working(block(number, thick, high)) * (1 - 1e-12));
    }

    @Property
    void aBlockCarriesLessThanItsScrewsSideways(
            @ForAll @DoubleRange(min = 12, max = 25) double thick,
            @ForAll @DoubleRange(min = 12, max = 80) double high) {
        ScrewedTogether one =
                new ScrewedTogether(NO_8, Length.mm(thick + 22), wood(0.5), Length.mm(thick), wood(0.55), false);
        assertThat(working(block(3, thick, high))).isLessThan(3 * 0.9 * one.sideways());
    }

    @Test
    void aBlockIsAskedAgainWithMoreScrewsAndThenHolds() {
        Finding finding = new EndJointHolds(
                        "ends", block(2, 19, 38), wood(0.55), wood(0.55), Force.newtons(600), "as you entered it")
                .findings()
                .get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.remedies().get(0).then().findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        assertThat(finding.sizes()).extracting("what").contains("hole in the block for the shank");
    }

    @Test
    void screwsOfABlockMustNotComeThroughTheSide() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new OnBlock(
                        2, NO_8, Length.mm(43), wood(0.5), Length.mm(19), Length.mm(38), Length.mm(25), Length.mm(280)))
                .withMessage("the screws come through the side, or all but: leave 2 mm of it");
    }

    @Test
    void screwsOfABlockMayLeaveTwoMillimetresExactly() {
        assertThat(new OnBlock(
                                2,
                                NO_8,
                                Length.mm(50),
                                wood(0.5),
                                Length.mm(22),
                                Length.mm(45),
                                Length.mm(30),
                                Length.mm(280))
                        .number())
                .isEqualTo(2);
    }

    @Property
    void nearerToTheEndNeverCarriesMore(
            @ForAll @DoubleRange(min = 3, max = 100) double fromEnd,
            @ForAll @DoubleRange(min = 1, max = 3) double further) {
        assertThat(working(near(fromEnd * further))).isGreaterThanOrEqualTo(working(near(fromEnd)));
    }

    @Test
    void veryNearToTheEndTheWoodTearsOutFirst() {
        JointStrength strength = near(3).strength(wood(0.55), wood(0.55));
        assertThat(strength.working()).isCloseTo(3 * 11.7e6 * 0.01905 * 0.003 * 0.67 * 0.56 * 0.8, within(1e-6));
        assertThat(strength.notes())
                .contains(
                        "They stand nearer than ten diameters to the end of the side that they are pressed toward:"
                                + " what tears out is reckoned, but of splitting nothing is published so near an end. Bore"
                                + " every hole, or house the board.",
                        "The end of the side would tear out first.");
    }

    @Test
    void aBottomFlushWithTheEndOfTheSidesHasItsScrewsHalfItsThicknessFromIt() {
        EndJoint far = new EndJoint.ThroughSide(3, NO_8, Length.inches(2), Length.inches(0.75));
        assertThat(far.flush(Length.mm(19))).isEqualTo(near(9.5));
        assertThat(near(40).flush(Length.mm(19))).isEqualTo(near(40));
    }

    @Test
    void screwsThatStandTooNearToEachOtherAreNotJudgedAndNeverACure() {
        EndJoint three = new EndJoint.ThroughSide(
                3, NO_8, Length.inches(2), Length.inches(0.75), Optional.empty(), Optional.of(Length.mm(50)));
        assertThat(three.strength(wood(0.55), wood(0.55)).missing()).isEmpty();
        assertThat(three.withAtLeast(4).strength(wood(0.55), wood(0.55)).missing())
                .containsExactly(new Missing(
                        "what screws hold that stand so near to each other: they split the wood along their row",
                        "use fewer of them, or thinner ones"));
        Finding finding = new EndJointHolds("end", three, wood(0.55), wood(0.55), Force.newtons(5000), "it")
                .findings()
                .get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.remedies()).isEmpty();
        OnBlock crowded =
                new OnBlock(6, NO_8, Length.mm(41), wood(0.5), Length.mm(19), Length.mm(38), SIDE, Length.mm(200));
        assertThat(crowded.strength(wood(0.55), wood(0.55)).missing()).containsExactly(JointStrength.CROWDED);
    }

    @Test
    void aRailIsPulledOutOfAHousingAndOffABlock() {
        EndJoint housed = new EndJoint.Housed(Length.mm(6), Length.mm(100), Length.mm(280));
        for (EndJoint joint : new EndJoint[] {housed, block(3, 19, 38), new InDamp(housed)}) {
            assertThat(joint.ofRail(Optional.of(Length.mm(100)))
                            .strength(wood(0.55), wood(0.55))
                            .missing())
                    .containsExactly(new Missing(
                            "what keeps the wall from pulling the rail out of its housing or off its block",
                            "screw through the sides into the ends of the rail, and enter that"));
        }
        assertThat(near(40).ofRail(Optional.of(Length.mm(100))))
                .isEqualTo(new EndJoint.ThroughSide(
                        3,
                        NO_8,
                        Length.inches(2),
                        Length.inches(0.75),
                        Optional.of(Length.mm(40)),
                        Optional.of(Length.mm(100))));
    }

    @Test
    void theEdgeOfPlywoodIsNotJudged() {
        JointStrength strength = near(100).strength(plywood(), wood(0.55));
        assertThat(strength.missing())
                .containsExactly(new Missing(
                        "what a screw holds sideways in the edge of plywood: no figure stands for it",
                        "glue a strip of solid wood on or in, and screw into that"));
    }

    @Test
    void aGlueLineCarriesWhatTheWoodBesideItDoes() {
        JointStrength glued = new GluedAlong(Length.mm(100), Length.mm(19)).strength(wood(0.55), wood(0.55));
        assertThat(glued.low()).isCloseTo(11.7e6 * 0.1 * 0.019, within(1e-6));
        assertThat(glued.working()).isCloseTo(glued.low() * 0.67 * 0.56 * 0.8, within(1e-6));
        assertThat(new GluedAlong(Length.mm(100), Length.mm(19))
                        .strength(plywood(), wood(0.55))
                        .missing())
                .containsExactly(new Missing(
                        "the shear strength of plywood and a wood",
                        "choose a wood whose strength and its basis are in the table"));
    }

    @Test
    void whereItIsDampForMonthsTwoThirdsCount() {
        EndJoint dry = near(100);
        EndJoint damp = InDamp.where(0.20, dry);
        assertThat(InDamp.where(0.19, dry)).isEqualTo(dry);
        assertThat(working(damp)).isCloseTo(0.67 * working(dry), within(1e-9));
        assertThat(damp.withAtLeast(9)).isEqualTo(new InDamp(dry.withAtLeast(9)));
        assertThat(damp.flush(Length.mm(19)).plain()).isEqualTo(dry);
        assertThat(hold(4, 10, 0, false, wood(0.55))
                        .where(0.2)
                        .answer()
                        .mayCarrySideways()
                        .newtons())
                .isCloseTo(
                        0.67
                                * hold(4, 10, 0, false, wood(0.55))
                                        .answer()
                                        .mayCarrySideways()
                                        .newtons(),
                        within(1e-9));
    }

    @Test
    void withoutALoadTheStrengthIsToldAndNothingIsJudged() {
        EndJointAlone alone = new EndJointAlone("shelf ends", block(3, 19, 38), wood(0.55), wood(0.55));
        Finding finding = alone.findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(finding.missing())
                .containsExactly(new Missing(
                        "what it carries",
                        "enter 'under' with the name of shelves of this piece, or the 'load' on one end"));
        assertThat(alone.answer().mayCarry().newtons()).isCloseTo(working(block(3, 19, 38)), within(1e-9));
        assertThat(finding.why().sentence())
                .isEqualTo("Its load was not told; a block with 3 No. 8 wood screws may carry {} for good.");
    }

    @Property
    void screwsThatHoldAskedAgainWithMoreOfThemStillHold(
            @ForAll @DoubleRange(min = 1, max = 6000) double sideways,
            @ForAll @DoubleRange(min = 0, max = 3000) double pull,
            @ForAll @IntRange(min = 1, max = 20) int number) {
        ScrewsHold asked = hold(number, sideways, pull, false, wood(0.55));
        Verdict once = asked.findings().get(0).verdict();
        Verdict more = hold(number + 1, sideways, pull, false, wood(0.55))
                .findings()
                .get(0)
                .verdict();
        assertThat(once.worse(more)).isEqualTo(once);
        asked.findings()
                .get(0)
                .remedies()
                .forEach(remedy ->
                        assertThat(remedy.then().findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE));
    }

    @Test
    void loadAndPullTogetherAreAddedUp() {
        ScrewsHold held = hold(4, 500, 300, false, wood(0.55));
        double z = held.answer().mayCarrySideways().newtons();
        double w = held.answer().mayPull().newtons();
        assertThat(held.answer().checks()).hasSize(3);
        assertThat(held.answer().checks().get(2).demand()).isCloseTo(500 / z + 300 / w, within(1e-12));
    }

    @Test
    void aPullOutOfEndGrainIsNotJudged() {
        Finding pulled = hold(4, 0, 10, true, wood(0.55)).findings().get(0);
        assertThat(pulled.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(pulled.missing())
                .containsExactly(new Missing(
                        "what a screw holds that is pulled out of end grain: no code grants it anything",
                        "screw into side grain"));
    }

    @Test
    void aScrewFourToSixDiametersDeepCountsInProportionAndOneLessDeepIsNotJudged() {
        ScrewedTogether deep = together(19.05 + 25.01);
        ScrewedTogether five = together(19.05 + 5 * 4.1656);
        assertThat(deep.depthNotes()).isEmpty();
        assertThat(five.depthNotes())
                .containsExactly(
                        "Each reaches less than the six diameters that the code asks for; it is counted less in"
                                + " proportion, which is a judgement.");
        assertThat(five.sideways()).isLessThan(deep.sideways() * 5 / 6);
        assertThat(together(19.05 + 16).missingSideways())
                .containsExactly(new Missing(
                        "what a screw holds that reaches less than four diameters into the second piece",
                        "use longer screws, as long as they do not come through"));
    }

    private static ScrewedTogether together(double lengthMm) {
        return new ScrewedTogether(NO_8, Length.mm(lengthMm), wood(0.5), Length.inches(0.75), wood(0.55), false);
    }

    @Test
    void theFaceOfPlywoodHoldsThreeQuartersOfAPull() {
        double solid = hold(1, 0, 10, false, wood(0.42)).answer().mayPull().newtons();
        double layered = hold(1, 0, 10, false, plywood()).answer().mayPull().newtons();
        assertThat(layered).isCloseTo(0.75 * solid, within(1e-9));
    }

    @Test
    void aTenonWithinTheThicknessesOfTestsKeepsAllAndOneOutsideLess() {
        assertThat(tenon(8).shares()).hasSize(3);
        assertThat(tenon(6).working()).isEqualTo(tenon(12).working());
        assertThat(tenon(3).working()).isCloseTo(tenon(8).working() / 2, within(1e-9));
        assertThat(tenon(18).working()).isCloseTo(tenon(8).working() / 2, within(1e-9));
        assertThat(tenon(3).sharesInWords()).endsWith("thinner than any tested 0.5");
        assertThat(tenon(18).sharesInWords()).endsWith("thicker than any tested 0.5");
    }

    @Test
    void aPocketScrewOfTheUsualLengthFitsThreeQuarterInchStock() {
        assertThat(pocket(32, 19, 57, Optional.empty()).thread().toMm()).isCloseTo(19, within(1e-9));
    }

    @Test
    void aGrooveThatRunsThroughCostsAPocketScrewItsThread() {
        assertThat(pocket(32, 19, 57, Optional.of(Length.mm(6))).thread().toMm())
                .isCloseTo(19 - 6 / Math.cos(Math.toRadians(15)), within(1e-9));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> pocket(32, 19, 57, Optional.of(Length.mm(17))).thread())
                .withMessage(
                        "the groove of the panel runs through where the screws go in, and hardly any of their thread"
                                + " is left in the stile: stop the groove before ('groove stopped: yes'), or use tenons");
    }

    @Test
    void aPocketScrewThatComesThroughIsRefusedWithTheLongestThatFits() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> pocket(38, 19, 57, Optional.empty()))
                .withMessage("the points come through the face of the stile, or all but: use screws no longer than"
                        + " 33.9 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> pocket(44, 40, 30, Optional.empty()))
                .withMessage("the points come through the edge of the stile, or all but: use screws no longer than"
                        + " 41.9 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> pocket(13, 19, 57, Optional.empty()))
                .withMessage("the screws do not leave the rail: they must be longer than the wood under their heads");
    }

    @Property
    void theLongestPocketScrewFitsAndALongerOneDoesNot(@ForAll @DoubleRange(min = 16, max = 30) double thickness) {
        double longest = PocketHole.longest(thickness / 1000, 0.013, 0.0041656, 0.002);
        assertThat(PocketHole.left(thickness / 1000, longest, 0.013, 0.0041656)).isCloseTo(0.002, within(1e-12));
        assertThat(PocketHole.left(thickness / 1000, longest * 1.01, 0.013, 0.0041656))
                .isLessThan(0.002);
    }

    @Test
    void formulasRefuseMillimetresPassedAsMetres() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ScrewTearOut.load(12e6, 19, 0.01))
                .withMessage("thickness of the board must be from 5.0E-4 to 1 m, but was 19");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LongGrainGlue.shearsOff(12e6, 1900))
                .withMessage("glued area must be from 1.0E-6 to 1 m^2, but was 1900");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LoadOnBlock.most(3, Double.NaN, 100, 0.02, 0.04))
                .withMessage("sideways strength of a screw must be from 0.1 to 100000 N, but was NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TenonGlueFaces.thicknessShare(33))
                .withMessage("thickness of the tenon by its rail must be from 0.01 to 0.99 (a ratio), but was 33");
    }
}
