package fairgrain.clearance;

import static fairgrain.clearance.Gaps.frame;
import static fairgrain.clearance.Panels.setting;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.clearance.HungDoor.Hung;
import fairgrain.finding.Finding;
import fairgrain.finding.Size;
import fairgrain.finding.Words;
import fairgrain.part.Setting;
import fairgrain.place.MoistureYear;
import fairgrain.place.Month;
import fairgrain.place.YearByMonth;
import fairgrain.quantity.Length;
import fairgrain.quantity.Quantity;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What a maker reads about a door beyond its gap: hinges, back bevel, and what it comes out at. */
class DoorWordsTest {
    private static final Setting IN = setting(0.08, 0.06, 0.11);
    private static final DoorFrame LIGHT = frame(0.06, 50);

    private static HungDoor hung(DoorFrame frame, Hung hung, boolean pair, @Nullable Length leaf) {
        HungDoor like = Gaps.door(frame, hung, pair);
        return new HungDoor(
                frame,
                like.width(),
                like.height(),
                hung,
                pair,
                like.overlap(),
                like.reveal(),
                like.overlapWanted(),
                leaf,
                like.setBack());
    }

    private static DoorGap asked(HungDoor door, DoorGap.Side side, @Nullable Length hungGap, @Nullable Length made) {
        return new DoorGap("door", door, side, hungGap, made, IN);
    }

    private static DoorGap inset(@Nullable Length leaf) {
        return asked(hung(LIGHT, Hung.INSET, false, leaf), DoorGap.Side.WIDTH, null, null);
    }

    private static Finding finding(DoorGap asked) {
        return asked.findings().get(0);
    }

    private static Optional<Words> note(Finding finding, String starts) {
        return finding.notes().stream()
                .filter(note -> note.sentence().startsWith(starts))
                .findFirst();
    }

    private static Optional<Double> size(Finding finding, String what) {
        return finding.sizes().stream()
                .filter(size -> size.what().equals(what))
                .map(Size::value)
                .map(Quantity::si)
                .findFirst();
    }

    private static List<Double> numbers(Words words) {
        return words.numbers().stream().map(Quantity::si).toList();
    }

    @Test
    void theQuestionIsAboutTheSideThatIsAskedFor() {
        HungDoor door = Gaps.door(LIGHT, Hung.INSET, false);
        HungDoor pair = Gaps.door(LIGHT, Hung.INSET, true);
        assertThat(finding(asked(door, DoorGap.Side.WIDTH, Length.mm(2), null)).question())
                .isEqualTo("does the gap of its closing edge last all year");
        assertThat(finding(asked(door, DoorGap.Side.HEIGHT, Length.mm(2), null)).question())
                .isEqualTo("do its gaps at top and bottom last all year");
        assertThat(finding(asked(door, DoorGap.Side.WIDTH, null, null)).question())
                .isEqualTo("how wide to make it");
        assertThat(finding(asked(pair, DoorGap.Side.HEIGHT, null, null)).question())
                .isEqualTo("how high to make it");
        assertThat(size(finding(asked(pair, DoorGap.Side.HEIGHT, null, null)), "make each door high"))
                .isPresent();
        assertThat(size(finding(asked(door, DoorGap.Side.HEIGHT, null, null)), "make the door high"))
                .isPresent();
        for (DoorGap.Side side : DoorGap.Side.values()) {
            assertThat(finding(asked(door, side, null, null)).evidence().sources())
                    .contains(DoorGap.SOURCE);
        }
    }

    @Test
    void onlyAnOverlayDoorIsWarnedOfItsConcealedHinge() {
        String hinge = "How a concealed hinge carries the door past its neighbour as it opens is not reckoned";
        HungDoor over = Gaps.door(LIGHT, Hung.OVERLAY, false);
        assertThat(note(finding(asked(over, DoorGap.Side.WIDTH, null, null)), hinge))
                .isPresent();
        assertThat(note(finding(asked(over, DoorGap.Side.HEIGHT, null, null)), hinge))
                .isEmpty();
        assertThat(note(finding(inset(Length.mm(2))), hinge)).isEmpty();
    }

    /** A leaf thicker than half the gap is let in, a thinner one packed out, one just as thick is let in by nothing. */
    @Test
    void hingeLeavesAreLetInOrPackedOutToHalfTheGap() {
        Length gap = inset(null).set().today();
        Finding thick = finding(inset(gap.times(0.5).plus(Length.mm(0.4))));
        assertThat(size(thick, "let in each hinge leaf").orElseThrow()).isCloseTo(0.0004, within(1e-12));
        Finding thin = finding(inset(gap.times(0.5).minus(Length.mm(0.3))));
        assertThat(size(thin, "pack out behind each hinge leaf").orElseThrow()).isCloseTo(0.0003, within(1e-12));
        assertThat(size(thin, "let in each hinge leaf")).isEmpty();
        Finding just = finding(inset(gap.times(0.5)));
        assertThat(size(just, "let in each hinge leaf")).contains(0.0);
        assertThat(size(just, "pack out behind each hinge leaf")).isEmpty();
        Words unknown = note(finding(inset(null)), "Two hinge leaves that are not let in")
                .orElseThrow();
        assertThat(numbers(unknown)).containsExactly(gap.metres());
        assertThat(note(thick, "Two hinge leaves that are not let in")).isEmpty();
    }

    /** 22 mm on 400 mm swing out 22²/800 = 0.605 mm; two doors of 400 mm in 800 mm as much each. */
    @Test
    void aThinDoorMayStaySquare() {
        for (boolean pair : new boolean[] {false, true}) {
            DoorFrame frame = frame(0.04, 40);
            Finding finding =
                    finding(asked(hung(frame, Hung.INSET, pair, Length.mm(2)), DoorGap.Side.WIDTH, null, null));
            Words square = note(finding, "The closing edge may stay square").orElseThrow();
            assertThat(numbers(square).get(0)).isCloseTo(0.000605, within(1e-12));
            assertThat(size(finding, "plane the back of the closing edge back from the front"))
                    .isEmpty();
            assertThat(finding.evidence().sources()).doesNotContain(DoorWords.BEVEL);
        }
    }

    /** 45 mm on 400 mm swing out 45²/800 = 2.531 mm; 2 degrees set the back of 45 mm back by 1.571 mm. */
    @Test
    void aThickDoorGetsABackBevelAndIsToldTheUsualOne() {
        var wood = Gaps.thick(LIGHT.stile(), 45);
        DoorFrame heavy = new DoorFrame(wood, Length.mm(50), wood, Length.mm(50));
        Finding finding = finding(asked(hung(heavy, Hung.INSET, false, null), DoorGap.Side.WIDTH, null, null));
        Words told = note(finding, "Square, the back of the closing edge would swing out {}")
                .orElseThrow();
        assertThat(numbers(told).get(0)).isCloseTo(0.00253125, within(1e-12));
        assertThat(numbers(told).get(1)).isCloseTo(0.0015714, within(1e-7));
        assertThat(finding.evidence().sources()).contains(DoorWords.BEVEL);
        assertThat(note(finding, "The closing edge may stay square")).isEmpty();
    }

    /** It says so from half a step of 0.2 mm on. */
    @Test
    void aDoorThatComesOutOtherwiseThanPlannedIsToldSo() {
        HungDoor door = Gaps.door(LIGHT, Hung.INSET, false);
        for (DoorGap.Side side : DoorGap.Side.values()) {
            Length planned = asked(door, side, null, null).size();
            String way = side == DoorGap.Side.WIDTH ? "wide" : "high";
            String comesOut = "As its stiles and rails are entered it comes out {} " + way;
            String more = comesOut + ": {} to plane off.";
            String less = comesOut + ", {} less: that will do too.";
            for (double hair : new double[] {-0.09, 0, 0.09}) {
                Finding finding = finding(asked(door, side, null, planned.plus(Length.mm(hair))));
                assertThat(note(finding, more)).isEmpty();
                assertThat(note(finding, less)).isEmpty();
            }
            Length longer = planned.plus(Length.mm(0.11));
            assertThat(numbers(
                            note(finding(asked(door, side, null, longer)), more).orElseThrow()))
                    .satisfiesExactly(
                            made -> assertThat(made).isEqualTo(longer.metres()),
                            over -> assertThat(over).isCloseTo(0.00011, within(1e-12)));
            assertThat(note(finding(asked(door, side, null, planned.minus(Length.mm(0.11)))), less))
                    .isPresent();
            assertThat(note(finding(asked(door, side, Length.mm(2), longer)), more))
                    .as("it hangs already")
                    .isEmpty();
        }
    }

    /** 400 mm less two gaps of 2 mm, unless the maker said what it measures. */
    @Test
    void aHangingDoorIsAsWideAsItIsSaidOrAsItsGapLeavesIt() {
        HungDoor door = Gaps.door(LIGHT, Hung.INSET, false);
        Length two = Length.mm(2);
        assertThat(asked(door, DoorGap.Side.WIDTH, two, null).size().toMm()).isCloseTo(396, within(1e-9));
        assertThat(asked(door, DoorGap.Side.WIDTH, two, Length.mm(395.5)).size())
                .isEqualTo(Length.mm(395.5));
        DoorGap planned = asked(door, DoorGap.Side.WIDTH, null, Length.mm(395.5));
        assertThat(planned.size().metres())
                .isCloseTo(0.400 - 2 * planned.set().today().metres(), within(1e-12));
    }

    @Test
    void monthByMonthADoorIsWiderByWhatBothItsStilesSwell() {
        YearByMonth months = YearByMonth.between(
                Month.JANUARY, IN.year().dry(), Month.AUGUST, IN.year().damp());
        MoistureYear year =
                new MoistureYear(IN.year().dry(), IN.year().damp(), 0.005, "a test", Panels.ANY, Optional.of(months));
        Setting in = new Setting(year, IN.day(), IN.rule(), IN.deviations());
        DoorGap asked = new DoorGap(
                "door", Gaps.door(LIGHT, Hung.INSET, true), DoorGap.Side.WIDTH, Length.mm(2), Length.mm(397), in);
        List<Length> wide = asked.widthByMonth().orElseThrow().sizes();
        double swells = LIGHT.stile().widthRatio(0.08, 0.11, 0, 1) - 1;
        double shrinks = LIGHT.stile().widthRatio(0.08, 0.06, 0, 1) - 1;
        assertThat(wide.get(7).metres()).isCloseTo(0.397 + 0.100 * swells, within(1e-9));
        assertThat(wide.get(0).metres()).isCloseTo(0.397 + 0.100 * shrinks, within(1e-9));
        assertThat(finding(asked).evidence().sources()).contains(YearByMonth.DRAWN);
        assertThat(asked.spreads()).isEqualTo(asked.set().spreads()).isNotEmpty();
        assertThat(inset(null).widthByMonth()).as("no months").isEmpty();
    }

    @Test
    void waysToHangAreNamedAsInADesign() {
        assertThat(Hung.INSET.word()).isEqualTo("inset");
        assertThat(Hung.OVERLAY.word()).isEqualTo("overlay");
    }
}
