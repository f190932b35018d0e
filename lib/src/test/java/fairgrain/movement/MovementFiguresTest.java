package fairgrain.movement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.evidence.Numbers;
import fairgrain.finding.Basis;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Figures of single formulas, as print has them or worked out apart from the code. */
class MovementFiguresTest {
    @ParameterizedTest(name = "{0}: {1}, {4}")
    @CsvFileSource(resources = "/published/movement-figures.csv", useHeadersInDisplayName = true)
    void meetsTheFigure(String formula, String inputs, double expected, double tolerance, String source, Basis basis) {
        assertThat(value(formula, Numbers.of(inputs)))
                .as(source + ", " + basis.words())
                .isCloseTo(expected, within(tolerance));
    }

    private static double value(String formula, double[] x) {
        return switch (formula) {
            case "LongGrain.ratio" -> LongGrain.ratio(x[0], x[1], x[2]);
            case "SheetExpansion.ratio" -> SheetExpansion.ratio(x[0], x[1], x[2]);
            case "FastenerSlip.strainLeft" -> FastenerSlip.strainLeft(x[0], x[1], x[2]);
            case "FastenerSlip.ofHole" -> FastenerSlip.ofHole(x[0], x[1]);
            case "HoldFlat.moment" -> HoldFlat.moment(x[0], x[1], x[2]);
            case "HoldFlat.force" -> HoldFlat.force(x[0], x[1], x[2], x[3]);
            case "HoldFlat.curvature" -> HoldFlat.curvature(x[0], x[1]);
            case "MismatchStrain.byRatios" -> MismatchStrain.byRatios(x[0], x[1]);
            case "RestraintStress.limit" -> RestraintStress.limit(x[0]);
            case "RingDirection.shrinkage" -> RingDirection.shrinkage(x[0], x[1], x[2]);
            case "SlotLength.fromNearEnd" -> SlotLength.fromNearEnd(x[0], x[1]);
            case "Cup.ofRings" -> Cup.ofRings(x[0], x[1], x[2], x[3]);
            default -> throw new IllegalArgumentException(formula);
        };
    }
}
