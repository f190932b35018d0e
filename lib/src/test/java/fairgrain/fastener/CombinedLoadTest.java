package fairgrain.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class CombinedLoadTest {
    private static final double ROUNDING = 1e-12;

    @Property(edgeCases = EdgeCasesMode.NONE) // seven ranges make too many; the next test starts from zero
    void moreWeightOrMorePullNeverLowersTheUse(
            @ForAll @DoubleRange(max = 2000) double v,
            @ForAll @DoubleRange(max = 2000) double t,
            @ForAll @DoubleRange(max = 500) double moreV,
            @ForAll @DoubleRange(max = 500) double moreT,
            @ForAll @DoubleRange(min = 50, max = 2000) double z,
            @ForAll @DoubleRange(min = 50, max = 5000) double w,
            @ForAll @DoubleRange(min = 50, max = 5000) double head) {
        double before = CombinedLoad.screw(v, t, z, w, head) * (1 - ROUNDING);
        assertThat(CombinedLoad.screw(v + moreV, t, z, w, head)).isGreaterThanOrEqualTo(before);
        assertThat(CombinedLoad.screw(v, t + moreT, z, w, head)).isGreaterThanOrEqualTo(before);
        double interaction = CombinedLoad.interaction(v, t, z, w) * (1 - ROUNDING);
        assertThat(CombinedLoad.interaction(v + moreV, t, z, w)).isGreaterThanOrEqualTo(interaction);
        assertThat(CombinedLoad.interaction(v, t + moreT, z, w)).isGreaterThanOrEqualTo(interaction);
    }

    @Test
    void fromNothingUpEveryStepUsesMore() {
        for (double w : new double[] {100, 400, 399.9, 400.1, 1600}) {
            for (int v = 0; v <= 400; v += 20) {
                for (int t = 0; t <= 400; t += 20) {
                    double here = CombinedLoad.interaction(v, t, 200, w) * (1 - ROUNDING);
                    assertThat(CombinedLoad.interaction(v + 20, t, 200, w)).isGreaterThanOrEqualTo(here);
                    assertThat(CombinedLoad.interaction(v, t + 20, 200, w)).isGreaterThanOrEqualTo(here);
                }
            }
        }
    }

    @Property
    void theStraightLineIsNeverBelowTheOtherForms(
            @ForAll @DoubleRange(max = 2000) double v,
            @ForAll @DoubleRange(max = 2000) double t,
            @ForAll @DoubleRange(min = 50, max = 2000) double z,
            @ForAll @DoubleRange(min = 50, max = 5000) double w) {
        double line = CombinedLoad.straightLine(v, t, z, w) * (1 + ROUNDING);
        assertThat(CombinedLoad.interaction(v, t, z, w)).isLessThanOrEqualTo(line);
        assertThat(CombinedLoad.code(v, t, z, w)).isLessThanOrEqualTo(CombinedLoad.interaction(v, t, z, w));
    }

    @Property
    void theCodeFormIsTheLoadOverItsHankinsonValue(
            @ForAll @DoubleRange(min = 1, max = 2000) double v,
            @ForAll @DoubleRange(min = 1, max = 2000) double t,
            @ForAll @DoubleRange(min = 50, max = 2000) double z,
            @ForAll @DoubleRange(min = 50, max = 5000) double w) {
        double angle = Math.atan2(t, v);
        double allowed = w * z / (w * Math.pow(Math.cos(angle), 2) + z * Math.pow(Math.sin(angle), 2));
        double expected = Math.hypot(v, t) / allowed;
        assertThat(CombinedLoad.code(v, t, z, w)).isCloseTo(expected, within(1e-12 * expected));
    }

    @Test
    void theCodeFormAloneFallsWhenPullIsAdded() {
        assertThat(CombinedLoad.code(200, 60, 200, 1000)).isLessThan(CombinedLoad.code(200, 0, 200, 1000));
        assertThat(CombinedLoad.interaction(200, 60, 200, 1000)).isEqualTo(1.0);
        // its least value is 2 √(r (1 − r)) of the shear alone, r = z′/W′
        double v = 200;
        double t = v * Math.sqrt(1000.0 / 200 - 2);
        assertThat(CombinedLoad.code(v, t, 200, 1000)).isCloseTo(2 * Math.sqrt(0.2 * 0.8), within(1e-12));
    }

    @Test
    void theStraightLineIsTakenWhereTheHeadIsTheWeakerEnd() {
        assertThat(CombinedLoad.screw(100, 50, 200, 400, 300)).isEqualTo(CombinedLoad.straightLine(100, 50, 200, 300));
        assertThat(CombinedLoad.screw(100, 50, 200, 300, 300)).isEqualTo(CombinedLoad.straightLine(100, 50, 200, 300));
        assertThat(CombinedLoad.screw(100, 50, 200, 300, 400)).isEqualTo(CombinedLoad.interaction(100, 50, 200, 300));
    }

    @Test
    void nothingOnTheScrewUsesNothing() {
        assertThat(CombinedLoad.screw(0, 0, 200, 300, 400)).isEqualTo(0);
    }
}
