package fairgrain.bending;

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
import org.junit.jupiter.params.provider.EnumSource;

class UniformLoadTest {
    private static final double M_PER_IN = 0.0254; // exact, by definition
    private static final double PA_PER_PSI = 4.4482216152605 / (0.0254 * 0.0254);
    private static final double PA_PER_LB_PER_FT2 = 4.4482216152605 / (0.3048 * 0.3048);
    private static final double E = 1.1e10;
    private static final double I = 1e-7;

    @ParameterizedTest(name = "{0} {1}, {5}")
    @CsvFileSource(resources = "/published/beam-coefficients.csv", useHeadersInDisplayName = true)
    void handbookCoefficients(
            String row,
            String coefficient,
            String printed,
            double expected,
            double tolerance,
            String source,
            String basis) {
        var c = BeamCoefficients.valueOf(row);
        double found = coefficient.equals("bending") ? c.bending() : c.shear();
        assertThat(found).as(printed + ", " + source + ", " + basis).isCloseTo(expected, within(tolerance));
    }

    @ParameterizedTest(name = "{0}, {6}")
    @CsvFileSource(resources = "/published/uniform-load.csv", useHeadersInDisplayName = true)
    void longestShelfOfTheWoodworkStandard(
            String board,
            double elasticityPsi,
            double thicknessIn,
            double pressure,
            double expectedIn,
            double toleranceIn,
            String source,
            String basis) {
        double width = 0.3; // falls out
        double i = RectangularSection.secondMoment(width, thicknessIn * M_PER_IN);
        double span = expectedIn * M_PER_IN;
        double sag = UniformLoad.deflection(pressure * PA_PER_LB_PER_FT2 * width, span, elasticityPsi * PA_PER_PSI, i);
        double longest = span * Math.cbrt(span / 144 / sag);
        assertThat(longest / M_PER_IN).as(source + ", " + basis).isCloseTo(expectedIn, within(toleranceIn));
        // the printed spans are the whole inches below what the formula gives
        assertThat(Math.floor(longest / M_PER_IN)).as(board).isEqualTo(expectedIn);
    }

    /** The same shelves, solved for each size. A printed span is up to an inch short: so are the sizes found from it. */
    @ParameterizedTest(name = "{0}, {6}")
    @CsvFileSource(resources = "/published/uniform-load.csv", useHeadersInDisplayName = true)
    void sizesOfTheShelvesOfTheWoodworkStandard(
            String board,
            double elasticityPsi,
            double thicknessIn,
            double pressure,
            double expectedIn,
            double toleranceIn,
            String source,
            String basis) {
        double e = elasticityPsi * PA_PER_PSI;
        double t = thicknessIn * M_PER_IN;
        double p = pressure * PA_PER_LB_PER_FT2;
        double span = expectedIn * M_PER_IN;
        double part = toleranceIn / expectedIn;
        assertThat(SizeForSag.span(t, p, e, 144, 1) / M_PER_IN).as(source).isCloseTo(expectedIn, within(toleranceIn));
        assertThat(SizeForSag.thickness(span, p, e, 144, 1)).as(source).isBetween((1 - part) * t, t);
        assertThat(SizeForSag.pressure(span, t, e, 144, 1))
                .as(source)
                .isBetween(p, (1 + part) * (1 + part) * (1 + part) * p);
        assertThat(SizeForSag.spanForSag(t, p, e, span / 144, 1)).as(source).isBetween(span, (1 + part) * span);
    }

    @ParameterizedTest(name = "{0} {1}, {5}")
    @CsvFileSource(resources = "/published/semi-rigid-ends.csv", useHeadersInDisplayName = true)
    void springsAtBothEnds(
            String row, double beta, String load, double expected, double tolerance, String source, String basis) {
        double span = 1;
        double f = SemiRigidEnds.fixity(beta * E * I / span, span, E, I);
        double found = switch (load) {
            case "uniform" -> SemiRigidEnds.deflection(f, E * I, span, E, I);
            case "centre" -> SemiRigidEnds.centreLoadDeflection(f, E * I, span, E, I);
            default -> throw new IllegalArgumentException(load);
        };
        assertThat(found).as(row + ", " + source + ", " + basis).isCloseTo(expected, within(tolerance));
        assertThat(SemiRigidEnds.turningStiffness(f, span, E, I)).isCloseTo(beta * E * I, within(1e-9 * beta * E * I));
    }

    @Property
    void doublingTheSpanSagsSixteenTimes(
            @ForAll @DoubleRange(min = 1, max = 2000) double w,
            @ForAll @DoubleRange(min = 0.1, max = 3) double span,
            @ForAll UniformLoad.Ends ends) {
        double once = UniformLoad.deflection(ends, w, span, E, I);
        assertThat(UniformLoad.deflection(ends, w, 2 * span, E, I)).isCloseTo(16 * once, within(1e-12 * once));
    }

    @Property
    void halvingTheThicknessSagsEightTimes(
            @ForAll @DoubleRange(min = 1, max = 2000) double w,
            @ForAll @DoubleRange(min = 0.1, max = 3) double span,
            @ForAll @DoubleRange(min = 0.005, max = 0.1) @Scale(4) double thickness) {
        double thick = UniformLoad.deflection(w, span, E, RectangularSection.secondMoment(0.3, thickness));
        double thin = UniformLoad.deflection(w, span, E, RectangularSection.secondMoment(0.3, thickness / 2));
        assertThat(thin).isCloseTo(8 * thick, within(1e-12 * thin));
    }

    @Property
    void springsLieBetweenFreeAndClampedAndStifferNeverSagsMore(
            @ForAll @DoubleRange(min = 0, max = 1e6) double k, @ForAll @DoubleRange(min = 0, max = 1e6) double more) {
        double f = SemiRigidEnds.fixity(k, 0.9, E, I);
        double stiffer = SemiRigidEnds.fixity(k + more, 0.9, E, I);
        assertThat(SemiRigidEnds.deflection(f, 300, 0.9, E, I))
                .isBetween(
                        UniformLoad.deflection(UniformLoad.Ends.CLAMPED, 300, 0.9, E, I),
                        UniformLoad.deflection(300, 0.9, E, I))
                .isGreaterThanOrEqualTo(SemiRigidEnds.deflection(stiffer, 300, 0.9, E, I));
    }

    @Test
    void fullFixityIsClamped() {
        assertThat(SemiRigidEnds.deflection(1, 300, 0.9, E, I))
                .isCloseTo(UniformLoad.deflection(UniformLoad.Ends.CLAMPED, 300, 0.9, E, I), within(1e-18));
        assertThat(SemiRigidEnds.centreLoadDeflection(1, 300, 0.9, E, I))
                .isCloseTo(BeamCoefficients.CENTRE_CLAMPED.deflection(300, 0.9, E, I), within(1e-18));
        assertThat(SemiRigidEnds.endMoment(1, 300, 0.9)).isCloseTo(300 * 0.81 / 12, within(1e-12));
        assertThat(SemiRigidEnds.centreLoadEndMoment(1, 300, 0.9)).isCloseTo(300 * 0.9 / 8, within(1e-12));
    }

    @ParameterizedTest
    @EnumSource
    void momentAndShearSagAreThoseOfTheTextbook(UniformLoad.Ends ends) {
        double m = UniformLoad.largestMoment(ends, 100, 2);
        double s = UniformLoad.shearDeflection(ends, 100, 2, 1e9, 1e-3);
        switch (ends) {
            case SIMPLE -> assertThat(m).isEqualTo(50);
            case CLAMPED -> assertThat(m).isCloseTo(100.0 / 3, within(1e-12));
            case CANTILEVER -> assertThat(m).isEqualTo(200);
        }
        assertThat(s).isCloseTo((ends == UniformLoad.Ends.CANTILEVER ? 0.5 : 0.125) * 4e-4, within(1e-16));
        assertThat(UniformLoad.reaction(100, 2)).isEqualTo(100);
    }

    @Test
    void bendingStressAndItsInverseAgree() {
        double s = RectangularSection.sectionModulus(0.25, 0.008);
        double m = UniformLoad.largestMoment(UniformLoad.Ends.SIMPLE, 250, 0.55);
        double sigma = BendingStress.bending(m, s);
        assertThat(sigma).isCloseTo(0.75 * 1000 * 0.55 * 0.55 / (0.008 * 0.008), within(1e-6));
        assertThat(BendingStress.momentAt(sigma, s)).isCloseTo(m, within(1e-12));
        assertThat(BendingStress.bending(-m, s)).isEqualTo(sigma);
        assertThat(BendingStress.shear(-200, 2e-3)).isEqualTo(150_000);
    }

    @Test
    void torsionConstantOfASquareAndOfAThinStrip() {
        assertThat(RectangularSection.torsionConstant(1, 1)).isCloseTo(0.1406, within(1e-3)); // Roark, square: 0.1406
        assertThat(RectangularSection.torsionConstant(1, 0.001)).isCloseTo(1e-9 / 3, within(1e-12));
        assertThat(RectangularSection.torsionConstant(0.02, 0.04))
                .isEqualTo(RectangularSection.torsionConstant(0.04, 0.02));
    }

    @Test
    void refusesMillimetresAndNaN() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> UniformLoad.deflection(300, 900, E, I))
                .withMessage("span must be from 0.01 to 100 m, but was 900");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> UniformLoad.deflection(Double.NaN, 0.9, E, I))
                .withMessage("load per length must be from 0 to 1000000.0 N/m, but was NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> UniformLoad.deflection(300, 0.9, 11_000, I))
                .withMessage("modulus of elasticity must be from 1.0E7 to 1.0E12 Pa, but was 11000");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RectangularSection.secondMoment(0.3, 19))
                .withMessage("height of the section must be from 1.0E-4 to 5 m, but was 19");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SemiRigidEnds.deflection(40, 300, 0.9, E, I))
                .withMessage("fixity must be from 0 to 1 (0 free to turn, 1 clamped), but was 40");
    }

    /** k 1000 N m/rad, L 2 m, E I 1000 N m²: k L/(E I) is 2, and 2/(2 + 2) is half of a clamp. */
    @Test
    void aSpringOfTwiceTheStiffnessByTheSpanIsHalfAClamp() {
        assertThat(SemiRigidEnds.fixity(1000, 2, 1e9, 1e-6)).isCloseTo(0.5, within(1e-12));
        assertThat(SemiRigidEnds.turningStiffness(0.5, 2, 1e9, 1e-6)).isCloseTo(1000, within(1e-9));
    }

    /** Half the integral of the squared slope of the elastic line, added up in a thousand parts. */
    @Test
    void theChordShortensByHalfTheSquareOfTheSlope() {
        double sag = 0.02;
        double span = 0.8;
        double shorter = 0;
        int parts = 1000;
        for (int i = 0; i < parts; i++) {
            double x = (i + 0.5) / parts;
            double slope = 16.0 / 5 * (1 - 6 * x * x + 4 * x * x * x) * sag / span;
            shorter += slope * slope / 2 * span / parts;
        }
        assertThat(UniformLoad.chordShortening(sag, span)).isCloseTo(shorter, within(1e-5 * shorter));
    }

    @Test
    void theEndsNameTheirRowOfTheHandbook() {
        assertThat(UniformLoad.Ends.SIMPLE.coefficients()).isEqualTo(BeamCoefficients.UNIFORM_SIMPLE);
        assertThat(UniformLoad.Ends.CLAMPED.coefficients()).isEqualTo(BeamCoefficients.UNIFORM_CLAMPED);
        assertThat(UniformLoad.Ends.CANTILEVER.coefficients()).isEqualTo(BeamCoefficients.UNIFORM_CANTILEVER);
    }
}
