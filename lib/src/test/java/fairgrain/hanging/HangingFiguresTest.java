package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.evidence.Numbers;
import fairgrain.finding.Basis;
import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Figures of single formulas, worked out apart from the code. */
class HangingFiguresTest {
    @ParameterizedTest(name = "{0}: {1}, {4}")
    @CsvFileSource(resources = "/published/hanging-figures.csv", useHeadersInDisplayName = true)
    void meetsTheFigure(String formula, String inputs, double expected, double tolerance, String source, Basis basis) {
        assertThat(value(formula, Numbers.of(inputs)))
                .as(source + ", " + basis.words())
                .isCloseTo(expected, within(tolerance));
    }

    private static double value(String formula, double[] x) {
        return switch (formula) {
            case "LiftingLimit.mass", "LiftingLimit.mass, at its best" -> LiftingLimit.mass(x[0], x[1], x[2]);
            case "LimberRail.point, middle of three studs under it" ->
                LimberRail.point(Arrays.copyOf(x, 3), x[3], x[4])[1];
            case "LimberRail.point, first of two studs" -> LimberRail.point(Arrays.copyOf(x, 2), x[2], x[3])[0];
            case "ScrewGroup.polar" -> ScrewGroup.polar(Arrays.copyOf(x, 4), Arrays.copyOfRange(x, 4, 8));
            default -> throw new IllegalArgumentException(formula);
        };
    }
}
