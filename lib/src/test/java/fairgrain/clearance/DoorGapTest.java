package fairgrain.clearance;

import static fairgrain.clearance.Gaps.door;
import static fairgrain.clearance.Gaps.frame;
import static fairgrain.clearance.Gaps.height;
import static fairgrain.clearance.Gaps.width;
import static fairgrain.clearance.Panels.setting;
import static fairgrain.clearance.Panels.unknownDay;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.clearance.HungDoor.Hung;
import fairgrain.finding.Finding;
import fairgrain.finding.Remedy;
import fairgrain.finding.Size;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.part.Board;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class DoorGapTest {
    private static final Setting IN = setting(0.08, 0.06, 0.11);

    private static double size(Finding finding, String what) {
        return finding.sizes().stream()
                .filter(size -> size.what().startsWith(what))
                .map(Size::value)
                .findFirst()
                .orElseThrow()
                .si();
    }

    private static Setting shop(Setting in, boolean inches) {
        return inches ? new Setting(in.year(), in.day(), ShopRule.INCHES, in.deviations()) : in;
    }

    @Property(tries = 60)
    void aDoorMadeAsPlannedNeitherBindsNorGapesAtEitherEndNorBetween(
            @ForAll @Scale(5) @DoubleRange(min = 0.03, max = 0.10) double tangential,
            @ForAll @DoubleRange(min = 40, max = 70) double stile,
            @ForAll boolean pair,
            @ForAll boolean inches) {
        DoorGap asked = width(door(frame(tangential, stile), Hung.INSET, pair), null, shop(IN, inches));
        Assume.that(asked.plan().set().isPresent());
        Finding finding = asked.findings().get(0);
        assertThat(finding.verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        Board wood = asked.door().frame().stile();
        int leaves = pair ? 2 : 1;
        double made = size(finding, pair ? "make each door wide" : "make the door wide");
        double hinge = size(finding, "gap to leave at the hinge side");
        for (double moisture = 0.06; moisture <= 0.1101; moisture += 0.0025) {
            double swelling = 2 * leaves * stile / 1000 * (wood.widthRatio(0.08, moisture, 0, 1) - 1);
            double gap = asked.door().width().metres() - leaves * hinge - leaves * made - swelling;
            assertThat(gap).isBetween(0.0005 - 1e-9, Reveal.USUAL_MOST.metres() + 1e-9);
        }
    }

    @Property(tries = 30)
    void everyCureOfADoorToBeMadeAskedAgainHolds(
            @ForAll @Scale(5) @DoubleRange(min = 0.05, max = 0.13) double tangential,
            @ForAll @DoubleRange(min = 50, max = 110) double stile,
            @ForAll boolean pair,
            @ForAll boolean known,
            @ForAll boolean inches) {
        Setting in = setting(0.08, 0.05, 0.13);
        DoorGap asked = width(
                door(frame(tangential, stile), Hung.INSET, pair), null, shop(known ? in : unknownDay(in), inches));
        Finding finding = asked.findings().get(0);
        if (asked.plan().set().isEmpty()) {
            assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
            assertThat(finding.sizes()).noneMatch(size -> size.what().startsWith("make"));
            assertThat(finding.remedies()).isNotEmpty();
        } else {
            assertThat(finding.remedies()).isEmpty();
        }
        for (Remedy remedy : finding.remedies()) {
            assertThat(remedy.then().findings().get(0).verdict())
                    .as(remedy.words().sentence())
                    .isIn(Verdict.HOLDS, Verdict.CLOSE);
        }
    }

    @Property(tries = 60)
    void everyCureOfADoorThatHangsAskedAgainHolds(
            @ForAll @Scale(5) @DoubleRange(min = 0.05, max = 0.11) double tangential,
            @ForAll @DoubleRange(min = 0, max = 6) double gap,
            @ForAll boolean pair) {
        DoorGap asked = width(door(frame(tangential, 55), Hung.INSET, pair), Length.mm(gap), IN);
        Finding finding = asked.findings().get(0);
        assertThat(finding.verdict() == Verdict.FAILS).isEqualTo(!asked.set().holds());
        assertThat(finding.remedies().isEmpty()).isEqualTo(asked.set().holds());
        for (Remedy remedy : finding.remedies()) {
            assertThat(remedy.then().findings().get(0).verdict())
                    .as(remedy.words().sentence())
                    .isIn(Verdict.HOLDS, Verdict.CLOSE);
        }
    }

    @Test
    void fourStilesCloseTheGapOfAPair() {
        DoorGap one = width(door(frame(0.086, 55), Hung.INSET, false), Length.mm(2), IN);
        DoorGap two = width(door(frame(0.086, 55), Hung.INSET, true), Length.mm(2), IN);
        double single = one.answer().today().minus(one.answer().atDamp()).metres();
        double pair = two.answer().today().minus(two.answer().atDamp()).metres();
        assertThat(pair).isCloseTo(2 * single, within(1e-12));
    }

    @Test
    void theHeightMovesByTheRailsAndTheWidthByTheStilesOnly() {
        Board wood = frame(0.086, 55).stile();
        DoorFrame frame = new DoorFrame(wood, Length.mm(50), wood, Length.mm(100));
        double across = moved(width(door(frame, Hung.INSET, false), null, IN));
        double up = moved(height(door(frame, Hung.INSET, false), IN));
        assertThat(across).isCloseTo(up, within(1e-12)); // two stiles of 50 mm, one rail of 100 mm at each end
    }

    private static double moved(DoorGap asked) {
        return asked.answer().today().minus(asked.answer().atDamp()).metres();
    }

    @Test
    void anOverlayDoorIsMadeToItsOverlapAndAPairToItsMeetingGap() {
        Finding single = width(door(frame(0.06, 50), Hung.OVERLAY, false), null, IN)
                .findings()
                .get(0);
        assertThat(size(single, "make the door wide")).isCloseTo(0.420, within(1e-9));
        assertThat(single.verdict()).isEqualTo(Verdict.HOLDS);
        Finding high = height(door(frame(0.06, 50), Hung.OVERLAY, false), IN)
                .findings()
                .get(0);
        assertThat(size(high, "make the door high")).isCloseTo(0.780, within(1e-9));
        Finding pair = width(door(frame(0.03, 40), Hung.OVERLAY, true), null, IN)
                .findings()
                .get(0);
        double gap = size(pair, "gap to leave where the doors meet");
        assertThat(size(pair, "make each door wide")).isCloseTo((0.820 - gap) / 2, within(1e-9));
        assertThat(pair.outcomes()).hasSize(2); // nothing swings past an edge
    }

    @Test
    void theSizesFillTheOpening() {
        Finding finding = width(door(frame(0.06, 50), Hung.INSET, false), null, IN)
                .findings()
                .get(0);
        double gap = size(finding, "gap to leave at the closing edge");
        double hinge = size(finding, "gap to leave at the hinge side");
        assertThat(size(finding, "make the door wide") + gap + hinge).isCloseTo(0.400, within(1e-9));
        assertThat(size(finding, "let in each hinge leaf")).isCloseTo(0.002 - hinge / 2, within(1e-9));
        assertThat(finding.notes().stream().map(Words::sentence))
                .anyMatch(note -> note.startsWith("How far the stiles will twist or bow is not predicted"));
    }

    @Test
    void aThickDoorWithANarrowGapIsGivenABackBevel() {
        Board thick = Gaps.thick(frame(0.06, 50).stile(), 45);
        DoorFrame heavy = new DoorFrame(thick, Length.mm(50), thick, Length.mm(50));
        Finding finding =
                width(door(heavy, Hung.INSET, false), null, IN).findings().get(0);
        assertThat(size(finding, "plane the back of the closing edge back")).isPositive();
        assertThat(finding.verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        Finding hung = width(door(heavy, Hung.INSET, false), Length.mm(2), IN)
                .findings()
                .get(0);
        assertThat(hung.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(hung.remedies().get(0).words().sentence()).contains("farther back than the front");
    }

    @Test
    void refusesAnOverlapThatContradictsTheDoor() {
        DoorFrame frame = frame(0.06, 50);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new HungDoor(
                        frame,
                        Length.mm(400),
                        Length.mm(760),
                        Hung.INSET,
                        false,
                        Length.mm(10),
                        Reveal.USUAL,
                        Length.ZERO,
                        null,
                        Length.ZERO))
                .withMessage("an inset door has no overlap");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new HungDoor(
                        frame,
                        Length.mm(400),
                        Length.mm(760),
                        Hung.OVERLAY,
                        false,
                        Length.mm(3),
                        Reveal.USUAL,
                        Length.mm(3),
                        null,
                        Length.ZERO))
                .withMessage("the overlap must be more than what is wanted of it at the dry end");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new HungDoor(
                        frame,
                        new Length(400),
                        Length.mm(760),
                        Hung.INSET,
                        false,
                        Length.ZERO,
                        Reveal.USUAL,
                        Length.ZERO,
                        null,
                        Length.ZERO))
                .withMessage("width of the opening must be from 0.1 to 3 m, but was 400");
    }
}
