package fairgrain.movement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.material.StraightCurve;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class MovementTest {
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/published/dimensional-change.csv", useHeadersInDisplayName = true)
    void agreesWithThePublishedExample(
            String name,
            double dimension,
            double coefficient,
            double from,
            double to,
            double expected,
            double tolerance,
            String source,
            String basis) {
        assertThat(DimensionalChange.byCoefficient(dimension, coefficient, from / 100, to / 100))
                .as(source)
                .isCloseTo(expected, within(tolerance));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/published/dimensional-change-second-form.csv", useHeadersInDisplayName = true)
    void theSecondFormAgreesWithTheHandCalculation(
            String name,
            double dimension,
            double shrinkage,
            double start,
            double from,
            double to,
            double expected,
            double tolerance,
            String source,
            String basis) {
        // the length passes through: it is taken as millimetres here
        double change =
                DimensionalChange.byShrinkage(dimension / 1000, shrinkage / 100, start / 100, from / 100, to / 100);
        assertThat(change * 1000).as(source).isCloseTo(expected, within(tolerance));
    }

    @Property
    void theSecondFormIsTheStraightCurve(
            @ForAll @Scale(5) @DoubleRange(min = 0.02, max = 0.2) double shrinkage,
            @ForAll @Scale(5) @DoubleRange(min = 0.2, max = 0.35) double start,
            @ForAll @Scale(5) @DoubleRange(min = 0, max = 0.2) double from,
            @ForAll @Scale(5) @DoubleRange(min = 0, max = 0.2) double to) {
        StraightCurve curve = new StraightCurve(shrinkage, start);
        assertThat(1 + DimensionalChange.byShrinkage(1, shrinkage, start, from, to))
                .isCloseTo(curve.at(to) / curve.at(from), within(1e-12));
    }

    @Property
    void drierIsNarrowerAndAWoodThatShrinksMoreMovesMore(
            @ForAll @Scale(5) @DoubleRange(min = 0.02, max = 0.15) double shrinkage,
            @ForAll @Scale(5) @DoubleRange(min = 0.05, max = 0.15) double from,
            @ForAll @Scale(5) @DoubleRange(min = 0.01, max = 0.1) double swing) {
        double swelling = DimensionalChange.byShrinkage(1, shrinkage, 0.3, from, from + swing);
        assertThat(swelling).isPositive();
        assertThat(DimensionalChange.byShrinkage(1, shrinkage, 0.3, from + swing, from))
                .isNegative();
        assertThat(DimensionalChange.byShrinkage(1, shrinkage + 0.01, 0.3, from, from + swing))
                .isGreaterThan(swelling);
    }

    @Test
    void atTheEndsTheRingDirectionIsTheTangentialAndTheRadial() {
        assertThat(RingDirection.shrinkage(0.08, 0.04, 0)).isEqualTo(0.08);
        assertThat(RingDirection.shrinkage(0.08, 0.04, Math.PI / 2)).isCloseTo(0.04, within(1e-15));
        assertThat(RingDirection.shrinkage(0.08, 0.04, Math.PI / 4)).isCloseTo(0.06, within(1e-15));
    }

    @Test
    void refusesMillimetresAndPercentTakenForMetresAndFractions() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DimensionalChange.byCoefficient(232, 0.00245, 0.08, 0.11))
                .withMessage("dimension must be from 0 to 10 m, but was 232");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DimensionalChange.byCoefficient(0.232, 0.245, 0.08, 0.11))
                .withMessage("dimensional change coefficient must be from 0 to 0.02 per 1 %, but was 0.245");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DimensionalChange.byCoefficient(0.232, 0.00245, 8, 0.11))
                .withMessage("moisture content at the start must be from 0 to 0.3 (a fraction), but was 8");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DimensionalChange.byShrinkage(0.232, 7, 0.3, 0.08, 0.11))
                .withMessage("shrinkage must be from 1.0E-6 to 0.3 (a fraction), but was 7");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DimensionalChange.byShrinkage(0.232, 0.07, 0.3, 0.08, 0.31))
                .withMessage("moisture content at the end must be from 0 to 0.3 (a fraction), but was 0.31");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DimensionalChange.byShrinkage(0.232, 0.07, 0.3, Double.NaN, 0.1))
                .withMessage("moisture content at the start must be from 0 to 0.3 (a fraction), but was NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RingDirection.shrinkage(0.08, 0.04, 45))
                .withMessage("ring angle must be from 0 to 1.5707963267948966 rad, but was 45");
    }

    @Property
    void goingThereInTwoStepsIsGoingThereInOne(
            @ForAll @Scale(5) @DoubleRange(min = 0.02, max = 0.28) double a,
            @ForAll @Scale(5) @DoubleRange(min = 0.02, max = 0.28) double b,
            @ForAll @Scale(5) @DoubleRange(min = 0.02, max = 0.28) double c) {
        double atB = 1 + DimensionalChange.byShrinkage(1, 0.08, 0.3, a, b);
        double atC = atB + DimensionalChange.byShrinkage(atB, 0.08, 0.3, b, c);
        assertThat(atC).isCloseTo(1 + DimensionalChange.byShrinkage(1, 0.08, 0.3, a, c), within(1e-12));
    }

    @Property
    void aSlantedLineShrinksBetweenTheTwoDirections(@ForAll @Scale(5) @DoubleRange(min = 0, max = 1.57) double angle) {
        assertThat(RingDirection.shrinkage(0.08, 0.04, angle)).isBetween(0.04, 0.08);
    }

    /** Against the circle of strains: the mean of both, and half their difference times the cosine of twice the angle. */
    @Test
    void shrinkageTurnsAsAStrainOnItsCircle() {
        for (int degrees = 0; degrees <= 90; degrees += 5) {
            double angle = Math.toRadians(degrees);
            double circle = (0.08 + 0.04) / 2 + (0.08 - 0.04) / 2 * Math.cos(2 * angle);
            assertThat(RingDirection.between(0.08, 0.04, RingDirection.radialShare(angle)))
                    .isCloseTo(circle, within(1e-15));
        }
    }
}
