package fairgrain.movement;

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
import org.junit.jupiter.params.provider.CsvSource;

class CupTest {
    @ParameterizedTest(name = "{0}, {10}")
    @CsvFileSource(resources = "/published/cup.csv", useHeadersInDisplayName = true)
    void agreesWithPublishedValue(
            String name,
            String form,
            Double tangential,
            Double radial,
            Double strain,
            Double thicknessMm,
            Double pithMm,
            double widthMm,
            double expectedMm,
            double toleranceMm,
            String source,
            String basis) {
        double cup = switch (form) {
            case "faces" -> Cup.height(Cup.curvature(strain, thicknessMm / 1000), widthMm / 1000);
            case "narrow" -> Cup.ofRingsNarrow(tangential, radial, pithMm / 1000, widthMm / 1000);
            default -> throw new IllegalArgumentException(form);
        };
        assertThat(1000 * cup).as(name + ", " + source + ", " + basis).isCloseTo(expectedMm, within(toleranceMm));
    }

    /** The notes that the form comes from say by how much the short form is high. */
    @ParameterizedTest(name = "{0} times the pith distance wide: {1} too high")
    @CsvSource({"1.5, 0.17", "0.6, 0.03"})
    void theFormForNarrowBoardsIsHighForWideOnes(double widthOverPith, double tooHigh) {
        double exact = Cup.ofRings(0.01, 0.005, 0.1, 0.1 * widthOverPith);
        double narrow = Cup.ofRingsNarrow(0.01, 0.005, 0.1, 0.1 * widthOverPith);
        assertThat(narrow / exact - 1).isCloseTo(tooHigh, within(0.005));
    }

    @Test
    void theCurveOfAHeightIsTheHeightOfTheCurve() {
        double curvature = Cup.curvature(0.004, 0.019);
        assertThat(HoldFlat.curvature(Cup.height(curvature, 0.3), 0.3)).isCloseTo(curvature, within(1e-12));
    }

    @Property
    void aNarrowBoardCupsByBothFormsAlike(
            @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.1) double tangential,
            @ForAll @DoubleRange(min = 0.05, max = 1) double pith) {
        double width = 0.1 * pith;
        double exact = Cup.ofRings(tangential, tangential / 2, pith, width);
        assertThat(exact).isPositive();
        assertThat(Cup.ofRingsNarrow(tangential, tangential / 2, pith, width)).isCloseTo(exact, within(0.06 * exact));
    }

    @Property
    void woodThatShrinksAlikeBothWaysDoesNotCupAndSwellingCupsTheOtherWay(
            @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.1) double shrinkage,
            @ForAll @DoubleRange(min = 0.02, max = 0.5) double width) {
        assertThat(Cup.ofRings(shrinkage, shrinkage, 0.1, width)).isCloseTo(0, within(1e-15));
        assertThat(Cup.ofRings(-shrinkage, -shrinkage / 2, 0.1, width)).isNegative();
    }

    @Property
    void twiceTheWidthCupsFourTimesAndTwiceTheThicknessHalf(
            @ForAll @Scale(6) @DoubleRange(min = 0.0001, max = 0.02) double strain,
            @ForAll @DoubleRange(min = 0.02, max = 1) double width,
            @ForAll @Scale(4) @DoubleRange(min = 0.004, max = 0.08) double thickness) {
        double once = Cup.height(Cup.curvature(strain, thickness), width);
        assertThat(Cup.height(Cup.curvature(strain, thickness), 2 * width)).isCloseTo(4 * once, within(1e-9 * once));
        assertThat(Cup.height(Cup.curvature(strain, 2 * thickness), width)).isCloseTo(once / 2, within(1e-9 * once));
    }

    @Test
    void refusesMillimetresAndPercent() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Cup.curvature(0.00248, 19))
                .withMessage("thickness must be from 0.001 to 0.2 m, but was 19");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Cup.curvature(Double.NaN, 0.019))
                .withMessage("difference in swelling must be from 0 to 0.2 (a ratio), but was NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Cup.height(0.13, 300))
                .withMessage("width must be from 0.005 to 3 m, but was 300");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Cup.ofRings(8, 4, 0.1, 0.15))
                .withMessage("tangential shrinkage must be from -0.25 to 0.25 (a fraction; 8 % is 0.08), but was 8");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Cup.ofRingsNarrow(0.08, 0.04, 100, 0.15))
                .withMessage("distance from the pith must be from 0.005 to 2 m, but was 100");
    }
}
