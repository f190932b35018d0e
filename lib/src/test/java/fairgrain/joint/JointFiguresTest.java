package fairgrain.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.evidence.Numbers;
import fairgrain.finding.Basis;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Figures of single formulas, worked out apart from the code. */
class JointFiguresTest {
    @ParameterizedTest(name = "{0}: {1}, {4}")
    @CsvFileSource(resources = "/published/joint-figures.csv", useHeadersInDisplayName = true)
    void meetsTheFigure(String formula, String inputs, double expected, double tolerance, String source, Basis basis) {
        assertThat(value(formula, Numbers.of(inputs)))
                .as(source + ", " + basis.words())
                .isCloseTo(expected, within(tolerance));
    }

    private static double value(String formula, double[] x) {
        return switch (formula) {
            case "BackShear.perScrew" -> BackShear.perScrew(x[0], x[1], x[2]);
            case "DowelSideways.load, dowel shears", "DowelSideways.load, wood crushes" ->
                DowelSideways.load(x[0], x[1], x[2], x[3]);
            case "GluedDowel.pull, bond", "GluedDowel.pull, dowel tears" -> GluedDowel.pull(x[0], x[1], x[2]);
            case "GluedDowel.moment, plain beech in damp" -> GluedDowel.moment(GluedDowel.pull(x[0], x[1], x[2]), x[3]);
            case "HousedEnd.presses" -> HousedEnd.presses(x[0], x[1], x[2]);
            case "HousedEnd.tears" -> HousedEnd.tears(x[0], x[1], x[2]);
            case "LoadOnBlock.most" -> LoadOnBlock.most((int) x[0], x[1], x[2], x[3], x[4]);
            case "PocketScrewCorner.moment" -> PocketScrewCorner.moment(x[0], x[1]);
            case "PocketScrewCorner.mostMoment" -> PocketScrewCorner.mostMoment(x[0], x[1], x[2]);
            case "PocketScrewCorner.plug" -> PocketScrewCorner.plug(x[0], x[1], x[2]);
            case "ShortGrainNeck.stress" -> ShortGrainNeck.stress(x[0], x[1], x[2], x[3]);
            case "TenonGlueFaces.thicknessShare" -> TenonGlueFaces.thicknessShare(x[0]);
            default -> throw new IllegalArgumentException(formula);
        };
    }
}
