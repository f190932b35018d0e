package fairgrain.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ShrinkageCoefficientTest {
    @ParameterizedTest(name = "{0}, {7}, {8}")
    @CsvFileSource(resources = "/published/shrinkage-coefficients.csv", useHeadersInDisplayName = true)
    void theCoefficientFromTotalShrinkageIsThePrintedOne(
            String wood,
            double radial,
            double tangential,
            double start,
            double expectedRadial,
            double expectedTangential,
            double tolerance,
            String source,
            String basis) {
        assertThat(ShrinkageCoefficient.of(radial / 100, start / 100))
                .as(source)
                .isCloseTo(expectedRadial, within(tolerance));
        assertThat(ShrinkageCoefficient.of(tangential / 100, start / 100))
                .as(source)
                .isCloseTo(expectedTangential, within(tolerance));
    }

    /** Shrinkage is printed to 0.1 %, and half the last digit of the coefficient is another 0.015 % at most. */
    @ParameterizedTest(name = "{0}, {7}, {8}")
    @CsvFileSource(resources = "/published/shrinkage-coefficients.csv", useHeadersInDisplayName = true)
    void theTotalShrinkageFromThePrintedCoefficientIsThePrintedOne(
            String wood,
            double expectedRadial,
            double expectedTangential,
            double start,
            double radial,
            double tangential,
            double tolerance,
            String source,
            String basis) {
        double points = 0.05 + 0.015;
        assertThat(100 * ShrinkageCoefficient.shrinkage(radial, start / 100))
                .as(source)
                .isCloseTo(expectedRadial, within(points));
        assertThat(100 * ShrinkageCoefficient.shrinkage(tangential, start / 100))
                .as(source)
                .isCloseTo(expectedTangential, within(points));
    }

    @ParameterizedTest(name = "{0}: {7}, {8}")
    @CsvFileSource(resources = "/published/shrinkage-coefficient-exceptions.csv", useHeadersInDisplayName = true)
    void theKnownExceptionsDisagree(
            String wood,
            double radial,
            double tangential,
            double start,
            double expectedRadial,
            double expectedTangential,
            double tolerance,
            String why,
            String source,
            String basis) {
        double offRadial = Math.abs(ShrinkageCoefficient.of(radial / 100, start / 100) - expectedRadial);
        double offTangential = Math.abs(ShrinkageCoefficient.of(tangential / 100, start / 100) - expectedTangential);
        assertThat(Math.max(offRadial, offTangential)).as(why).isGreaterThan(tolerance);
    }

    @Property
    void shrinkageComesBackFromItsCoefficient(
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.25) double shrinkage,
            @ForAll @Scale(6) @DoubleRange(min = 0.15, max = 0.4) double start) {
        double coefficient = ShrinkageCoefficient.of(shrinkage, start);
        assertThat(ShrinkageCoefficient.shrinkage(coefficient, start)).isCloseTo(shrinkage, within(1e-14));
    }

    @Property
    void theCoefficientIsTheStraightLinesSlopeReferredToTenPercent(
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.2) double shrinkage,
            @ForAll @Scale(6) @DoubleRange(min = 0.2, max = 0.35) double start) {
        Curve line = new StraightCurve(shrinkage, start);
        double slope = (line.at(0.11) - line.at(0.10)) / line.at(0.10); // per 1 %
        assertThat(ShrinkageCoefficient.of(shrinkage, start)).isCloseTo(slope, within(1e-12));
    }

    @Test
    void refusesPercentWhereAFractionIsMeant() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShrinkageCoefficient.of(7.8, 0.3))
                .withMessage("shrinkage must be from 0 to 0.3 (a fraction), but was 7.8");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShrinkageCoefficient.of(0.078, 30))
                .withMessage("start of shrinkage must be from 0.15 to 0.4 (a fraction), but was 30");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShrinkageCoefficient.shrinkage(0.274, 0.3))
                .withMessage("coefficient must be from 0 to 0.02 per 1 %, but was 0.274");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShrinkageCoefficient.of(Double.NaN, 0.3))
                .withMessage("shrinkage must be from 0 to 0.3 (a fraction), but was NaN");
    }
}
