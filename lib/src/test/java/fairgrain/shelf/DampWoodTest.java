package fairgrain.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.evidence.Numbers;
import fairgrain.finding.Basis;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Figures of single formulas, worked out apart from the code. */
class DampWoodTest {
    @ParameterizedTest(name = "{0}: {1}, {4}")
    @CsvFileSource(resources = "/published/damp-wood.csv", useHeadersInDisplayName = true)
    void meetsTheFigure(String formula, String inputs, double expected, double tolerance, String source, Basis basis) {
        assertThat(value(formula, Numbers.of(inputs)))
                .as(source + ", " + basis.words())
                .isCloseTo(expected, within(tolerance));
    }

    private static double value(String formula, double[] x) {
        return switch (formula) {
            case "DampWood.share, half-way to green" -> DampWood.share(x[0], x[1]);
            default -> throw new IllegalArgumentException(formula);
        };
    }
}
