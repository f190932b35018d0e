package fairgrain.moisture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TwoFacesTest {
    private static final double D = 1e-10;
    private static final double YEAR = PeriodicResponse.YEAR;
    private static final double NONE = Double.POSITIVE_INFINITY;

    @Property
    void likeFacesFollowByTheFormForLikeFaces(
            @ForAll @Scale(9) @DoubleRange(min = 0.002, max = 0.5) double thickness,
            @ForAll @Scale(12) @DoubleRange(min = 1e-10, max = 1e-6) double surface) {
        Swing one = TwoFaces.mean(thickness, D, surface, surface, YEAR);
        Swing other = PeriodicResponse.mean(thickness / 2, D, surface, YEAR);
        assertThat(one.amplitude()).isCloseTo(other.amplitude(), within(1e-9));
        assertThat(one.lag()).isCloseTo(other.lag(), within(1.0));
        assertThat(TwoFaces.difference(thickness, D, surface, surface, 0.03, 0.03, YEAR))
                .isCloseTo(0, within(1e-12));
    }

    @Property
    void aSealedFaceLeavesTheFormForTheWholeThickness(
            @ForAll @Scale(9) @DoubleRange(min = 0.002, max = 0.2) double thickness) {
        Swing one = TwoFaces.mean(thickness, D, 1e-14, 5e-8, YEAR);
        Swing other = PeriodicResponse.mean(thickness, D, 5e-8, YEAR);
        assertThat(one.amplitude()).isCloseTo(other.amplitude(), within(1e-4));
        assertThat(one.lag()).isCloseTo(other.lag(), within(1e-3 * YEAR));
    }

    @Property
    void turningTheSlabRoundChangesNothing(
            @ForAll @Scale(12) @DoubleRange(min = 1e-10, max = 1e-6) double front,
            @ForAll @Scale(12) @DoubleRange(min = 1e-10, max = 1e-6) double back) {
        assertThat(TwoFaces.difference(0.02, D, front, back, 0.03, 0.01, YEAR))
                .isCloseTo(TwoFaces.difference(0.02, D, back, front, 0.01, 0.03, YEAR), within(1e-12));
        assertThat(TwoFaces.mean(0.02, D, front, back, YEAR).amplitude())
                .isCloseTo(TwoFaces.mean(0.02, D, back, front, YEAR).amplitude(), within(1e-12));
        assertThat(TwoFaces.steadyDifference(0.02, D, front, back, 0.06, 0.1))
                .isCloseTo(-TwoFaces.steadyDifference(0.02, D, back, front, 0.1, 0.06), within(1e-12));
    }

    @ParameterizedTest(name = "{0} mm, faces {1} and {2} m/s, swings {3} and {4}")
    @CsvSource({
        "6,   5e-8, 5e-9,  0.04, 0.04",
        "19,  5e-8, 5e-9,  0.04, 0.04",
        "19,  5e-8, 5e-8,  0.04, 0.01",
        "38,  5e-8, 7e-10, 0.03, 0.03",
        "100, 5e-8, 5e-9,  0.03, 0.05"
    })
    void steppingThroughTheYearsComesToTheSame(double mm, double front, double back, double swing1, double swing2) {
        double t = mm / 1000;
        double middle = 0.10;
        SlabSimulation run = new SlabSimulation(new Slab(t, m -> D, front, back), middle);
        double damp = 0;
        double dry = 1;
        double apart = 0;
        int days = 365;
        for (int day = 1; day <= 8 * days; day++) {
            double wave = Math.sin(2 * Math.PI * day / days);
            run.ramp(middle + swing1 * wave, middle + swing2 * wave, YEAR / days);
            if (day > 7 * days) {
                damp = Math.max(damp, run.mean());
                dry = Math.min(dry, run.mean());
                apart = Math.max(apart, Math.abs(run.slope() * t));
            }
        }
        assertThat(apart).isCloseTo(TwoFaces.difference(t, D, front, back, swing1, swing2, YEAR), within(0.0002));
        if (swing1 == swing2) {
            assertThat((damp - dry) / 2)
                    .isCloseTo(swing1 * TwoFaces.mean(t, D, front, back, YEAR).amplitude(), within(0.0002));
        }
    }

    @Test
    void airThatStaysLeavesAStraightLineAcross() {
        // no resistance at the faces: the whole difference; as much outside as inside: half of it
        assertThat(TwoFaces.steadyDifference(0.02, D, NONE, NONE, 0.06, 0.10)).isCloseTo(0.04, within(1e-15));
        assertThat(TwoFaces.steadyDifference(0.02, D, 1e-8, 1e-8, 0.10, 0.06)).isCloseTo(-0.02, within(1e-15));
        SlabSimulation run = new SlabSimulation(new Slab(0.02, m -> D, 5e-8, 5e-9), 0.08);
        run.hold(0.06, 0.10, 20 * YEAR);
        assertThat(run.slope() * 0.02)
                .isCloseTo(TwoFaces.steadyDifference(0.02, D, 5e-8, 5e-9, 0.06, 0.10), within(1e-9));
    }

    @Test
    void refusals() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TwoFaces.mean(19, D, 5e-8, 5e-8, YEAR))
                .withMessage("thickness must be from 1.0E-4 to 1 m, but was 19");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TwoFaces.mean(0.019, D, 0, 5e-8, YEAR))
                .withMessage("surface coefficient must be from 1.0E-14 to Infinity m/s, but was 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TwoFaces.difference(0.019, D, 5e-8, 5e-9, 4, 4, YEAR))
                .withMessage("swing of the air at the front must be from 0 to 1 (fraction; 8 % is 0.08), but was 4");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TwoFaces.steadyDifference(0.019, D, 5e-8, 5e-9, Double.NaN, 0.1))
                .withMessage("moisture content of the air at the front must be from 0 to 1 (fraction; 8 % is 0.08),"
                        + " but was NaN");
    }
}
