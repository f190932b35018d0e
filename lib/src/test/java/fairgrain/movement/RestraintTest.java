package fairgrain.movement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Wood that is held: strain, stress, what fixings give, slots, boards held flat. */
class RestraintTest {
    private static final double MPA = 1e6;

    @ParameterizedTest(name = "{0}, {7}")
    @CsvFileSource(resources = "/published/restraint-strain.csv", useHeadersInDisplayName = true)
    void strainAgrees(
            String name,
            double ca,
            double dMa,
            double cb,
            double dMb,
            double expected,
            double tolerance,
            String source,
            String basis) {
        assertThat(MismatchStrain.byCoefficients(ca, dMa / 100, cb, dMb / 100))
                .as(source)
                .isCloseTo(expected, within(tolerance));
    }

    @ParameterizedTest(name = "{0}, {8}")
    @CsvFileSource(resources = "/published/restraint-stress.csv", useHeadersInDisplayName = true)
    void stressAgrees(
            String name,
            double relaxation,
            double bending,
            double ratio,
            double strain,
            double stiffnessRatio,
            double expected,
            double tolerance,
            String source,
            String basis) {
        double elasticity = RestraintStress.elasticity(bending * MPA, ratio);
        assertThat(RestraintStress.stress(relaxation, elasticity, strain, stiffnessRatio) / MPA)
                .as(source)
                .isCloseTo(expected, within(tolerance));
    }

    @ParameterizedTest(name = "{0}, {7}")
    @CsvFileSource(resources = "/published/restraint-limit.csv", useHeadersInDisplayName = true)
    void strainAtTheLimitAgrees(
            String name,
            double relaxation,
            double bending,
            double ratio,
            double strength,
            double expected,
            double tolerance,
            String source,
            String basis) {
        double elasticity = RestraintStress.elasticity(bending * MPA, ratio);
        assertThat(RestraintStress.strainAtLimit(relaxation, elasticity, strength * MPA))
                .as(source)
                .isCloseTo(expected, within(tolerance));
    }

    @ParameterizedTest(name = "{0}, {8}")
    @CsvFileSource(resources = "/published/slot-length.csv", useHeadersInDisplayName = true)
    void slotAgrees(
            String name,
            double distance,
            double coefficient,
            double up,
            double down,
            double diameter,
            double expected,
            double tolerance,
            String source,
            String basis) {
        double away = DimensionalChange.byCoefficient(distance / 1000, coefficient, 0.08, 0.08 + up / 100);
        double towards = -DimensionalChange.byCoefficient(distance / 1000, coefficient, 0.08, 0.08 - down / 100);
        assertThat(SlotLength.length(diameter / 1000, towards, away) * 1000)
                .as(source)
                .isCloseTo(expected, within(tolerance));
    }

    @ParameterizedTest(name = "{0}, {6}")
    @CsvFileSource(resources = "/published/safe-width.csv", useHeadersInDisplayName = true)
    void safeWidthAgrees(
            String name,
            double coefficient,
            double change,
            double slip,
            double expected,
            double tolerance,
            String source,
            String basis) {
        double strain = MismatchStrain.byCoefficients(coefficient, change / 100, 0, 0);
        assertThat(FastenerSlip.safeWidth(strain, 0.004, slip / 1000) * 1000)
                .as(source)
                .isCloseTo(expected, within(tolerance));
    }

    @ParameterizedTest(name = "{0}, {6}")
    @CsvFileSource(resources = "/published/hold-flat.csv", useHeadersInDisplayName = true)
    void stressOfABoardHeldFlatAgrees(
            String name,
            double elasticity,
            double thickness,
            double curvature,
            double expected,
            double tolerance,
            String source,
            String basis) {
        assertThat(HoldFlat.stress(elasticity * MPA, thickness / 1000, curvature * 1000) / MPA)
                .as(source)
                .isCloseTo(expected, within(tolerance));
    }

    @ParameterizedTest(name = "{0}, {8}")
    @CsvFileSource(resources = "/published/movement-practice.csv", useHeadersInDisplayName = true)
    void whatTheTradeGoesByAgrees(
            String name,
            double width,
            double coefficient,
            double change,
            double sides,
            double added,
            double expected,
            double tolerance,
            String source,
            String basis) {
        double metres = Length.inches(width).metres();
        double moves = DimensionalChange.byCoefficient(metres, coefficient, 0.06, 0.06 + change / 100);
        assertThat(new Length(moves).toInches() / sides + added).as(source).isCloseTo(expected, within(tolerance));
    }

    @ParameterizedTest(name = "{0}: {1} to {2} %")
    @CsvSource({"0.15, 6, 12, 1.000300", "0.20, 0, 30, 1.002004", "0.20, 30, 0, 0.998", "0.20, 30, 60, 1"})
    void alongTheGrainItHardlyMoves(double percent, double from, double to, double expected) {
        assertThat(LongGrain.ratio(percent, from / 100, to / 100)).isCloseTo(expected, within(1e-6));
    }

    @Test
    void plywoodGrowsTwelveHundredthsOfAPercentFromThirtyToNinetyPercentHumidity() {
        assertThat(SheetExpansion.ratio(0.0002, 0.30, 0.90)).isCloseTo(1.0012, within(1e-12));
    }

    @Property
    void theStrainLeftIsNeverMoreThanTheWholeAndGrowsWithTheWidth(
            @ForAll @Scale(5) @DoubleRange(min = 0, max = 0.05) double strain,
            @ForAll @Scale(4) @DoubleRange(min = 0.01, max = 2) double width,
            @ForAll @Scale(5) @DoubleRange(min = 0, max = 0.005) double slip) {
        double left = FastenerSlip.strainLeft(strain, width, slip);
        assertThat(left).isBetween(0.0, strain);
        assertThat(FastenerSlip.strainLeft(strain, 2 * width, slip)).isBetween(left, strain);
        assertThat(FastenerSlip.strainLeft(strain, width, 0)).isEqualTo(strain);
    }

    @Property
    void atTheSafeWidthTheStrainAllowedIsLeft(
            @ForAll @Scale(5) @DoubleRange(min = 0.005, max = 0.05) double strain,
            @ForAll @Scale(5) @DoubleRange(min = 0.0001, max = 0.0005) double slip) {
        double width = FastenerSlip.safeWidth(strain, 0.004, slip);
        assertThat(FastenerSlip.strainLeft(strain, width, slip)).isCloseTo(0.004, within(1e-9));
        assertThat(FastenerSlip.safeWidth(0.004, 0.004, slip)).isInfinite();
    }

    @Property
    void stressGrowsWithTheStrainAndFallsWithWhatTheOtherGives(
            @ForAll @Scale(5) @DoubleRange(min = 0.0001, max = 0.02) double strain,
            @ForAll @DoubleRange(min = 0, max = 10) double give) {
        double rigid = RestraintStress.stress(0.3, 9e8, strain, 0);
        assertThat(RestraintStress.stress(0.3, 9e8, 2 * strain, 0)).isCloseTo(2 * rigid, within(1e-6 * rigid));
        assertThat(RestraintStress.stress(0.3, 9e8, strain, give)).isBetween(0.0, rigid);
    }

    @Property
    void theScrewHasHalfAMillimetreLeftAtEachEndOfItsSlot(
            @ForAll @Scale(5) @DoubleRange(min = 0, max = 0.02) double towards,
            @ForAll @Scale(5) @DoubleRange(min = 0, max = 0.02) double away) {
        double near = SlotLength.fromNearEnd(0.004, towards);
        double length = SlotLength.length(0.004, towards, away);
        assertThat(near - 0.002 - towards).isCloseTo(0.0005, within(1e-12));
        assertThat(length - near - 0.002 - away).isCloseTo(0.0005, within(1e-12));
    }

    @Property
    void theMomentThatHoldsABoardFlatIsThatOfItsStress(
            @ForAll @Scale(4) @DoubleRange(min = 0.005, max = 0.05) double thickness,
            @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 1) double curvature) {
        double stress = HoldFlat.stress(1e9, thickness, curvature);
        assertThat(HoldFlat.moment(1e9, thickness, curvature))
                .isCloseTo(1e9 * Math.pow(thickness, 3) * curvature / 12, within(1e-9 * stress));
        assertThat(HoldFlat.stress(1e9, thickness, 2 * curvature)).isCloseTo(2 * stress, within(1e-9 * stress));
    }

    @Test
    void theForceThatPressesABowFlatIsThatOfABeamOnTwoSupports() {
        double secondMoment = Math.pow(0.010, 3) / 12; // for each metre along the grain
        double force = HoldFlat.force(9.72e8, 0.010, 0.0002745, 0.150);
        assertThat(force).isCloseTo(316.2, within(0.05));
        assertThat(force * Math.pow(0.150, 3) / (48 * 9.72e8 * secondMoment)).isCloseTo(0.0002745, within(1e-12));
        assertThat(HoldFlat.curvature(Cup.height(0.1, 0.15), 0.15)).isCloseTo(0.1, within(1e-12));
    }

    @Test
    void theCurvatureOfABowIsEightTimesItsHeightOverItsWidthSquared() {
        assertThat(HoldFlat.curvature(0.0002745, 0.150)).isCloseTo(0.0976, within(1e-9));
    }

    @Test
    void refusesMillimetresPercentAndNaN() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FastenerSlip.strainLeft(0.01, 300, 0.0005))
                .withMessage("width between the outermost fixings must be from 0.001 to 6 m, but was 300");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FastenerSlip.ofHole(0.003, 0.004))
                .withMessage("hole diameter must be from 0.004 to 0.044 m, but was 0.003");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlotLength.length(4.2, 0, 0))
                .withMessage("screw diameter must be from 0.001 to 0.02 m, but was 4.2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RestraintStress.stress(0.3, 972, 0.01, 0))
                .withMessage("modulus of elasticity across the grain must be from 1.0E7 to 1.0E10 Pa, but was 972");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RestraintStress.limit(3.9))
                .withMessage("tension strength across the grain must be from 300000 to 2.0E7 Pa, but was 3.9");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MismatchStrain.byCoefficients(0.00248, 4, 0, 0))
                .withMessage("moisture change of the one must be from -0.3 to 0.3 (a fraction), but was 4");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SheetExpansion.ratio(0.02, 30, 90))
                .withMessage("growth for 10 points of humidity must be from 0 to 0.01 (a fraction), but was 0.02");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LongGrain.ratio(0.1, Double.NaN, 0.1))
                .withMessage("moisture content at the start must be from 0 to 2 (a fraction), but was NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HoldFlat.stress(9e8, 10, 0.1))
                .withMessage("thickness must be from 0.001 to 0.2 m, but was 10");
    }
}
