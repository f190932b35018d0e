package fairgrain.fixing;

import static fairgrain.fixing.Made.across;
import static fairgrain.fixing.Made.along;
import static fairgrain.fixing.Made.house;
import static fairgrain.fixing.Made.sheet;
import static fairgrain.fixing.Made.wood;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Finding;
import fairgrain.finding.Size;
import fairgrain.finding.Verdict;
import fairgrain.fixing.Fastening.Glued;
import fairgrain.fixing.Fastening.Pinned;
import fairgrain.fixing.Fastening.SlottedScrews;
import fairgrain.fixing.Fastening.TightScrews;
import fairgrain.movement.RestraintStress;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FixedTest {
    private static final Length SCREW = Length.mm(4.2);

    private static Finding asked(Fixed fixed) {
        assertThat(fixed.findings()).hasSize(1);
        return fixed.findings().get(0);
    }

    private static String why(Fixed fixed) {
        return asked(fixed).why().in(fixed.in().rule());
    }

    private static Fixed tenon(String wood, double widthMm) {
        return Joints.tenon("rail", across(wood), wood(wood), Length.mm(widthMm), house());
    }

    private static Fixed cleat(Fastening by) {
        return new Fixed("cleat", along("white-oak"), across("white-oak"), Length.mm(260), by, house());
    }

    @ParameterizedTest(name = "{0}, {1} mm of glue: {2}")
    @CsvSource({
        "white-oak, 57, HOLDS",
        "white-oak, 76, HOLDS",
        "sugar-maple, 57, HOLDS",
        "white-oak, 80, CLOSE",
        "white-oak, 101, CLOSE",
        "white-oak, 102, FAILS",
        "sugar-maple, 150, FAILS",
        "black-cherry, 280, FAILS"
    })
    void glueAcrossTheGrainHoldsToThreeInchesIsCloseToFourAndFailsBeyond(String wood, double mm, Verdict verdict) {
        assertThat(asked(tenon(wood, mm)).verdict()).isEqualTo(verdict);
    }

    @Test
    void aWideTenonIsToldTheReasonAndToBeDivided() {
        Finding finding = asked(tenon("white-oak", 150));
        assertThat(why(tenon("white-oak", 150)))
                .startsWith(
                        "Glued over 150 mm it cannot move: there the flatsawn white oak across its grain would shrink ")
                .endsWith(" more than the other by the dry end, and wood or glue gives way. Across the grain 76.2 mm is"
                        + " glued safely and 101.6 mm at the most.");
        assertThat(finding.remedies().stream().map(r -> r.words().in(house().rule())))
                .hasSize(3)
                .contains(
                        "Glue only the middle 76 mm, and let the rest slide.",
                        "Divide it, as a wide tenon is divided: glue one part no wider than 76 mm, and leave the other"
                                + " dry with room to move.");
    }

    @Test
    void sidesAndTopOfOneWoodWithTheGrainRunningRoundMoveTogetherAndMayBeGluedOverTheirWholeDepth() {
        Fixed corner = Joints.cornerOfCase(
                "corner", across("red-oak-commercial"), across("red-oak-commercial"), Length.mm(280), house());
        assertThat(asked(corner).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(why(corner))
                .isEqualTo(
                        "No conflict: the two are alike and move together, so glue or screw them over all of 280 mm as"
                                + " you like.");
        assertThat(asked(corner).notes().stream().map(n -> n.in(house().rule())))
                .contains("Both are taken as of one lot: pieces of different trees may differ a little even so.");
    }

    @Test
    void theThicknessOfTwoPartsDoesNotMakeThemMoveApart() {
        Member.Across thin = new Member.Across(Board.of(wood("white-oak"), RingAngle.FLATSAWN, Length.mm(6)), null);
        Fixed bottom = Joints.cornerOfCase("corner", across("white-oak"), thin, Length.mm(280), house());
        assertThat(bottom.isOneLot()).isTrue();
        assertThat(asked(bottom).verdict()).isEqualTo(Verdict.HOLDS);
    }

    @ParameterizedTest
    @CsvSource({"plywood", "birch plywood"})
    void aPlywoodBackScrewedTightAlongTheRearEdgesIsNoConflict(String kind) {
        Fixed back = Joints.backOnSides("back", sheet(kind), wood("white-oak"), Length.mm(900), house());
        assertThat(asked(back).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(why(back)).startsWith("No conflict: over 900 mm the two move together, never more than ");
    }

    @Test
    void aSolidBackScrewedTightAcrossTheSidesIsAConflict() {
        Fixed back = Joints.backOnSides("back", across("white-oak"), wood("white-oak"), Length.mm(700), house());
        assertThat(asked(back).verdict()).isEqualTo(Verdict.FAILS);
        assertThat(asked(back).remedies()).isNotEmpty();
    }

    @Test
    void aCleatScrewedTightAcrossASolidSideFailsAndSlotsCureIt() {
        Finding finding = asked(cleat(TightScrews.SNUG));
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.outcomes()).hasSize(2);
        assertThat(why(cleat(TightScrews.SNUG)))
                .startsWith("Screwed tight over 260 mm, the flatsawn white oak across its grain would shrink ")
                .endsWith("; the screws give 0.5 mm each, and the rest is more than the wood stands: it splits.");
        assertThat(finding.remedies()).hasSize(1);
        assertThat(finding.remedies().get(0).words().in(house().rule()))
                .startsWith("Screw it through slots, fixed at the front: the slots farthest from there ");
    }

    @Test
    void tightScrewsInAWoodOfUnknownStrengthAreNotJudgedUnlessTheStrainAloneIsTooMuch() {
        Setting narrow = Made.setting(0.08, 0.075, 0.095);
        Fixed some = new Fixed(
                "cleat", along("sugar-maple"), across("sugar-maple"), Length.mm(140), TightScrews.SNUG, narrow);
        assertThat(asked(some).verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(asked(some).missing().get(0).what()).isEqualTo("how stiff and strong this wood is across its grain");
        assertThat(asked(some).remedies()).isNotEmpty();
        Fixed much = new Fixed(
                "cleat", along("sugar-maple"), across("sugar-maple"), Length.mm(700), TightScrews.SNUG, house());
        assertThat(asked(much).verdict()).isEqualTo(Verdict.FAILS);
    }

    @Test
    void slotsAreAsLongAsTheNotesSayAndATenthOfTheMovementLonger() {
        Fixed fixed = cleat(new SlottedScrews(3, SCREW, FixedAt.FRONT, null));
        double towards = 260 * fixed.worst().towards();
        double away = 260 * fixed.worst().away();
        List<Size> sizes = asked(fixed).sizes();
        assertThat(sizes.stream().map(Size::what))
                .containsExactly(
                        "slot 130 mm from the fixed place",
                        "its screw that day, from the end of the slot nearer the fixed place",
                        "slot 260 mm from the fixed place",
                        "its screw that day, from the end of the slot nearer the fixed place");
        double slot = sizes.get(2).value().si() * 1000;
        double near = sizes.get(3).value().si() * 1000;
        assertThat(near).isBetween(2.1 + 1.1 * towards + 0.499, 2.1 + 1.1 * towards + 1.001);
        assertThat(slot).isBetween(near + 2.1 + 1.1 * away + 0.499, near + 2.1 + 1.1 * away + 1.001);
        assertThat(asked(fixed).verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void theSlotIsInTheCleatSoTheScrewGoesTowardsTheFixedPlaceWhenTheSideDries() {
        Fixed fixed = cleat(new SlottedScrews(2, SCREW, FixedAt.FRONT, null));
        assertThat(fixed.answer().atDry().metres()).isNegative();
        assertThat(fixed.answer().atDamp().metres()).isPositive();
        assertThat(fixed.answer().towards().metres())
                .isCloseTo(-fixed.answer().atDry().metres(), within(1e-12));
        assertThat(fixed.answer().away().metres())
                .isCloseTo(fixed.answer().atDamp().metres(), within(1e-12));
    }

    @Test
    void aBreadboardEndIsFixedInTheMiddleAndItsOuterPinsGoAwayWhenThePanelDries() {
        Fixed end = Joints.breadboardEnd(
                "end", across("white-oak"), wood("white-oak"), Length.mm(800), Length.mm(6), house());
        assertThat(asked(end).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(asked(end).sizes()).hasSize(2);
        assertThat(asked(end).sizes().get(0).what()).isEqualTo("slot 400 mm from the fixed place");
        assertThat(end.answer().away().metres()).isCloseTo(end.answer().atDry().metres() / 2, within(1e-12));
        assertThat(why(end)).startsWith("Fixed at the middle, the screw farthest from there comes up to ");
    }

    @Test
    void anEvenRowFixedInTheMiddleNeedsOneMoreScrewThere() {
        Fixed four = cleat(new SlottedScrews(4, SCREW, FixedAt.MIDDLE, null));
        assertThat(asked(four).notes().stream().map(n -> n.in(house().rule())))
                .anyMatch(n -> n.startsWith("One more screw in the middle goes through a round hole"));
        assertThat(asked(four).sizes()).hasSize(4);
    }

    @Test
    void slotsThatAreCutTooShortFailAndAreLengthened() {
        Fixed shortSlots = cleat(new SlottedScrews(3, SCREW, FixedAt.FRONT, Length.mm(6)));
        assertThat(asked(shortSlots).verdict()).isEqualTo(Verdict.FAILS);
        assertThat(why(shortSlots)).endsWith(", which is more than its slot lets it.");
        assertThat(asked(shortSlots).remedies().get(0).words().in(house().rule()))
                .startsWith("Lengthen the slots farthest from the fixed place to ");
        Fixed longSlots = cleat(new SlottedScrews(3, SCREW, FixedAt.FRONT, Length.mm(20)));
        assertThat(asked(longSlots).verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void aDrawerBottomHeldAtTheFrontNeedsItsRoomBehind() {
        Fixed none = Joints.drawerBottom(
                "bottom", across("white-oak"), wood("white-oak"), Length.mm(400), Length.mm(1), house());
        assertThat(asked(none).verdict()).isEqualTo(Verdict.FAILS);
        assertThat(asked(none).remedies()).hasSize(1);
        assertThat(asked(none).remedies().get(0).words().in(house().rule())).startsWith("Leave its free end ");
        Fixed open =
                Joints.drawerBottom("bottom", across("white-oak"), wood("white-oak"), Length.mm(400), null, house());
        assertThat(asked(open).verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void aTopOfAnotherCutOnItsCaseIsFixedAtTheFront() {
        Fixed top = new Fixed(
                "top",
                across("white-oak", RingAngle.QUARTERSAWN),
                across("white-oak"),
                Length.mm(280),
                new SlottedScrews(3, SCREW, FixedAt.FRONT, null),
                house());
        assertThat(top.isOneLot()).isFalse();
        assertThat(asked(top).verdict()).isEqualTo(Verdict.HOLDS);
        Fixed plywood = Joints.topOnCase("top", across("white-oak"), sheet("plywood"), Length.mm(280), SCREW, house());
        assertThat(asked(plywood).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(plywood.place()).isEqualTo(FixedAt.FRONT);
    }

    @Test
    void aCrestReturnGluedAllAlongASideFailsAndGluedAtItsEndHolds() {
        Fixed all = Joints.crestReturn(
                "return", wood("white-oak"), across("white-oak"), Length.mm(280), Length.mm(280), house());
        assertThat(asked(all).verdict()).isEqualTo(Verdict.FAILS);
        Fixed end = Joints.crestReturn(
                "return", wood("white-oak"), across("white-oak"), Length.mm(280), Length.mm(50), house());
        assertThat(asked(end).verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void stockThatComesInWetRelaxesLess() {
        assertThat(cleat(TightScrews.SNUG).relaxation()).isEqualTo(RestraintStress.SEASONAL);
        Fixed wet = new Fixed(
                "cleat",
                along("white-oak"),
                across("white-oak"),
                Length.mm(260),
                TightScrews.SNUG,
                Made.setting(0.14, 0.06, 0.11));
        assertThat(wet.relaxation()).isEqualTo(RestraintStress.FIRST_SEASON);
        assertThat(wet.answer().free())
                .isGreaterThan(cleat(TightScrews.SNUG).answer().free());
    }

    @Test
    void quartersawnCherryIsStressedMoreThanFlatsawnForTheStrainAndUnknownRingsCountTheWorse() {
        double flat = across("black-cherry").holdable().orElseThrow().elasticity();
        double quarter = across("black-cherry", RingAngle.QUARTERSAWN)
                .holdable()
                .orElseThrow()
                .elasticity();
        double unknown = across("black-cherry", RingAngle.UNKNOWN)
                .holdable()
                .orElseThrow()
                .elasticity();
        assertThat(quarter).isGreaterThan(1.5 * flat);
        assertThat(unknown).isGreaterThanOrEqualTo(flat).isLessThan(quarter);
    }

    @Test
    void refusesWhatNoWorkshopMeans() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Fixed(
                        "cleat", along("white-oak"), across("white-oak"), new Length(260), TightScrews.SNUG, house()))
                .withMessage("width between the outermost fixings must be from 0.005 to 3 m, but was 260");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Glued(new Length(57)))
                .withMessage("glued width must be from 0.002 to 3 m, but was 57");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> cleat(new Glued(Length.mm(300))))
                .withMessage("the glued width must not be wider than the joint");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SlottedScrews(1, SCREW, FixedAt.FRONT, null))
                .withMessage("screws in a row must be from 2 to 40 (screws), but was 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SlottedScrews(3, SCREW, FixedAt.FRONT, Length.mm(4)))
                .withMessage("a slot must be at least as long as its screw is thick");
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        new Member.Sheet(sheet("plywood").good(), sheet("mdf").movement()))
                .withMessage("movement of mdf does not speak for plywood");
    }

    @Test
    void heldAtOnePlaceNothingIsStrained() {
        Fixed pinned = cleat(new Pinned(FixedAt.MIDDLE, null));
        assertThat(pinned.answer().strain()).isZero();
        assertThat(pinned.answer().free()).isGreaterThan(0.008);
        assertThat(asked(pinned).verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void noWoodWhoseStrengthIsKnownIsHarmedByTheStrainThatIsTakenForUnknownOnes() {
        List<Member.Across> known = Made.RATIOS.stream()
                .filter(r -> wood(r.id()).shrinkage() != null)
                .flatMap(r -> List.of(RingAngle.FLATSAWN, RingAngle.degrees(90)).stream()
                        .map(cut -> across(r.id(), cut)))
                .filter(a -> a.holdable().isPresent())
                .toList();
        assertThat(known).hasSizeGreaterThan(50).allSatisfy(wood -> {
            Holdable stands = wood.holdable().orElseThrow();
            assertThat(RestraintStress.stress(
                            RestraintStress.FIRST_SEASON, stands.elasticity(), Fixed.SURE_FOR_ANY_WOOD, 0))
                    .as(wood.says())
                    .isLessThanOrEqualTo(stands.limit());
        });
    }

    @Test
    void aDrawerBottomThatOnlyShrinksNeedsNoRoom() {
        Setting damp = Made.setting(0.16, 0.06, 0.11);
        Fixed bottom = Joints.drawerBottom(
                "bottom", across("white-oak"), wood("white-oak"), Length.mm(400), Length.ZERO, damp);
        assertThat(asked(bottom).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(why(bottom))
                .startsWith("Held at the front only, nothing strains the wood; ")
                .contains(" out by up to 0 mm and ");
    }

    @Test
    void aSheetHeldByLongGrainIsAskedForNoTensionAcrossTheGrain() {
        Fixed back = Joints.backOnSides("back", sheet("mdf"), wood("white-oak"), Length.mm(900), house());
        assertThat(asked(back).outcomes()).hasSize(1);
        assertThat(back.answer().stress()).isEmpty();
    }
}
