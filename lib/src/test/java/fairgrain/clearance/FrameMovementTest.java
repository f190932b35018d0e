package fairgrain.clearance;

import static fairgrain.clearance.Gaps.frame;
import static fairgrain.clearance.Panels.setting;
import static fairgrain.clearance.Panels.unknownDay;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Check;
import fairgrain.finding.Finding;
import fairgrain.finding.Reliability;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.movement.LongGrain;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a frame does to the panel between its rails: 600 mm apart, grooves of 10 mm, so a panel of 620 mm and its gaps. */
class FrameMovementTest {
    private static final Setting IN = setting(0.08, 0.06, 0.11);
    private static final Setting WILD = setting(0.06, 0.05, 0.14);

    private static FrameMovement moving(double tangential, double railMm, double grooveMm, Length endGap, Setting in) {
        return new FrameMovement("door", frame(tangential, railMm), Length.mm(600), Length.mm(grooveMm), endGap, in);
    }

    /** Rails of 160 mm that swell from 5 to 14 %. */
    private static FrameMovement pressing(double grooveMm) {
        return moving(0.12, 160, grooveMm, FrameMovement.USUAL_END_GAP, WILD);
    }

    private static List<String> notes(Finding finding) {
        return finding.notes().stream().map(Words::sentence).toList();
    }

    /** Two thirds of what a rail of 55 mm swells, and half of what 620 mm grow along the grain, 0.2 % from 30 points to none. */
    @Test
    void railAndPanelGrowTowardsEachOther() {
        FrameMovement asked = moving(0.06, 55, 10, FrameMovement.USUAL_END_GAP, IN);
        double rail = 2 / 3.0 * 0.055 * (asked.frame().rail().widthRatio(0.08, 0.11, 0, 1) - 1);
        double panel = 0.310 * (LongGrain.ratio(0.2, 0.08, 0.11) - 1);
        assertThat(panel).isCloseTo(0.310 * 0.002 * 0.03 / 0.30, within(1e-7));
        assertThat(asked.answer().pressing().demand()).isCloseTo(rail + panel, within(1e-12));
        assertThat(asked.answer().pressing().capacity()).isEqualTo(0.0254 / 16);
        Check planned = Reliability.outcomes(asked, IN.deviations()).get(0).planned();
        assertThat(planned.demand()).as("planned with its spreads").isGreaterThan(rail + panel);
    }

    @Test
    void onADayNotKnownItIsReckonedAsIfItWereDryThen() {
        FrameMovement unknown = moving(0.06, 55, 10, FrameMovement.USUAL_END_GAP, unknownDay(IN));
        FrameMovement dry = moving(0.06, 55, 10, FrameMovement.USUAL_END_GAP, setting(0.06, 0.06, 0.11));
        assertThat(unknown.answer().pressing()).isEqualTo(dry.answer().pressing());
    }

    @Test
    void whatIsLeftIsTold() {
        FrameMovement asked = moving(0.06, 55, 10, FrameMovement.USUAL_END_GAP, IN);
        Finding finding = asked.findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(finding.why().sentence())
                .isEqualTo("Each rail and the end of the panel grow towards each other by {} at most, and {} is left"
                        + " for it.");
        assertThat(finding.why().numbers().get(1)).isEqualTo(FrameMovement.USUAL_END_GAP);
        assertThat(finding.remedies()).isEmpty();
        assertThat(notes(finding)).noneMatch(note -> note.startsWith("That is more than the usual"));
        assertThat(asked.planned()).isSameAs(asked);
        Finding more = moving(0.06, 55, 10, Length.mm(2), IN).findings().get(0);
        assertThat(notes(more))
                .contains("That is more than the usual {} at each end of the panel; the length to cut it to allows for"
                        + " it.");
    }

    /** The panel is cut so short that what the rails ask for is free, to the next half millimetre. */
    @Test
    void wideRailsThatPressAskForAShorterPanel() {
        FrameMovement asked = pressing(20);
        Finding finding = asked.findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.why().sentence())
                .isEqualTo("Each rail and the end of the panel may grow towards each other by {}, and only {} is left"
                        + " for it.");
        double worst = finding.why().numbers().get(0).si();
        assertThat(worst).isGreaterThan(2 / 3.0 * 0.160 * 0.12 * 0.08 / 0.3);
        assertThat(finding.remedies()).hasSize(1);
        assertThat(finding.remedies().get(0).words().sentence())
                .isEqualTo("Cut the panel so short that {} is free at each of its ends.");
        double free = finding.remedies().get(0).words().numbers().get(0).si();
        assertThat(free).isBetween(worst, worst + 0.0005);
        assertThat(free * 2000).isCloseTo(Math.rint(free * 2000), within(1e-9));
        FrameMovement then = (FrameMovement) finding.remedies().get(0).then();
        assertThat(then).isEqualTo(asked.planned());
        assertThat(then.endGap().metres()).isEqualTo(free);
        assertThat(then.findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        assertThat(notes(then.findings().get(0))).anyMatch(note -> note.startsWith("That is more than the usual"));
    }

    /** The end of a panel must stay in its groove: as much free as the groove is deep is no cure, half a millimetre less is. */
    @Test
    void aPanelIsNotCutOutOfItsGroove() {
        Length needed = pressing(20).planned().endGap();
        FrameMovement just = pressing(needed.toMm());
        assertThat(just.planned()).isSameAs(just);
        assertThat(just.findings().get(0).verdict()).isEqualTo(Verdict.FAILS);
        assertThat(just.findings().get(0).remedies()).isEmpty();
        assertThat(pressing(needed.toMm() + 0.5).planned().endGap()).isEqualTo(needed);
    }
}
