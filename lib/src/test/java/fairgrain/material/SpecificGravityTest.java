package fairgrain.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class SpecificGravityTest {
    private static final Evidence ANY = Evidence.of(Citation.of("own", "a test", Basis.JUDGEMENT));
    private static final Offset<Double> EXACT = within(1e-12);

    @ParameterizedTest(name = "{0}, {5}, {6}")
    @CsvFileSource(resources = "/published/specific-gravity.csv", useHeadersInDisplayName = true)
    void agreesWithThePrintedFigureAtTwelvePercent(
            String wood,
            double green,
            double volumetric,
            double expected,
            double tolerance,
            String source,
            String basis) {
        assertThat(of(green, VolumeBasis.GREEN, volumetric / 100).atTwelve().orElseThrow())
                .as(source)
                .isCloseTo(expected, within(tolerance));
    }

    @ParameterizedTest(name = "{0} of {1}: {2} at 12 %, {3} oven-dry, {4} kg/m3 at 10 %")
    @CsvSource({
        // 0.6 x 0.15 = 0.09; 0.85 and 0.91 are the volumes left
        "TWELVE, 0.60, 0.600000, 0.642353, 660.000",
        "GREEN, 0.60, 0.659341, 0.705882, 725.275",
        "OVEN_DRY, 0.60, 0.560440, 0.600000, 616.484",
        "DENSITY_TWELVE, 0.70, 0.625000, 0.669118, 687.500",
        "DENSITY_FIFTEEN, 0.70, 0.608696, 0.651662, 687.500",
    })
    void convertsEachBasis(VolumeBasis basis, double value, double twelve, double ovenDry, double density) {
        SpecificGravity gravity = of(value, basis, 0.15);
        assertThat(gravity.atTwelve().orElseThrow()).isCloseTo(twelve, within(5e-7));
        assertThat(gravity.ovenDry().orElseThrow()).isCloseTo(ovenDry, within(5e-7));
        assertThat(gravity.density(0.10)).isCloseTo(density, within(5e-4));
    }

    @Property
    void thereAndBackGivesTheSameWood(
            @ForAll @Scale(6) @DoubleRange(min = 0.2, max = 1) double green,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.2) double volumetric) {
        SpecificGravity asGreen = of(green, VolumeBasis.GREEN, volumetric);
        SpecificGravity asDry = of(asGreen.ovenDry().orElseThrow(), VolumeBasis.OVEN_DRY, volumetric);
        SpecificGravity asTwelve = of(asGreen.atTwelve().orElseThrow(), VolumeBasis.TWELVE, volumetric);
        assertThat(asDry.atTwelve().orElseThrow()).isCloseTo(asGreen.atTwelve().orElseThrow(), EXACT);
        assertThat(asTwelve.ovenDry().orElseThrow()).isCloseTo(asGreen.ovenDry().orElseThrow(), EXACT);
        assertThat(asGreen.ovenDry().orElseThrow()).isCloseTo(green / (1 - volumetric), EXACT);
        assertThat(asDry.density(0.12)).isCloseTo(asGreen.density(0.12), within(1e-9));
    }

    @Property
    void withoutShrinkageAFastenerNeverGetsMoreAndAWeightNeverLess(
            @ForAll VolumeBasis basis,
            @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 0.8) double value,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.1) double volumetric) {
        SpecificGravity blind = of(value, basis, null);
        SpecificGravity known = of(value, basis, volumetric);
        known.ovenDry()
                .ifPresent(dry -> assertThat(blind.ovenDry().orElseThrow()).isLessThanOrEqualTo(dry));
        known.atTwelve()
                .ifPresent(twelve -> assertThat(blind.atTwelve().orElseThrow()).isLessThanOrEqualTo(twelve));
        assertThat(blind.density(0.1)).isGreaterThanOrEqualTo(known.density(0.1) - 1e-9);
    }

    @Test
    void anUnknownBasisHoldsNoFastenerButStillWeighs() {
        SpecificGravity unknown = of(0.54, VolumeBasis.UNKNOWN, null);
        assertThat(unknown.atTwelve()).isEmpty();
        assertThat(unknown.ovenDry()).isEmpty();
        for (VolumeBasis basis : VolumeBasis.values()) {
            assertThat(unknown.density(0.1))
                    .as(basis.words())
                    .isGreaterThanOrEqualTo(of(0.54, basis, null).density(0.1));
            assertThat(of(0.54, VolumeBasis.UNKNOWN, 0.18).density(0.1))
                    .as(basis.words())
                    .isGreaterThanOrEqualTo(of(0.54, basis, 0.18).density(0.1));
        }
    }

    @ParameterizedTest
    @EnumSource
    void dampWoodWeighsMoreByItsWater(VolumeBasis basis) {
        SpecificGravity gravity = of(0.5, basis, 0.12);
        assertThat(gravity.density(0.12) / gravity.density(0)).isCloseTo(1.12, EXACT);
    }

    @Test
    void refusesWhatIsNoRatioOrNoFraction() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of(560, VolumeBasis.DENSITY_TWELVE, null))
                .withMessage("specific gravity must be from 0.08 to 1.4 (a ratio), but was 560");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of(0.5, VolumeBasis.GREEN, 12.0))
                .withMessage("shrinkage of the volume must be from 0.01 to 0.4 (a fraction; 8 % is 0.08), but was 12");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of(0.5, VolumeBasis.GREEN, null).density(9))
                .withMessage("moisture content must be from 0 to 2 (a fraction; 9 % is 0.09), but was 9");
    }

    private static SpecificGravity of(double value, VolumeBasis basis, @Nullable Double volumetric) {
        return new SpecificGravity(value, basis, volumetric, ANY);
    }
}
