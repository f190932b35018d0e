package fairgrain.bending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.evidence.Numbers;
import fairgrain.finding.Basis;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Figures of single formulas, worked out apart from the code. */
class BendingFiguresTest {
    private static final SectionPart BOARD = new SectionPart(10.9e9, 0.261, 0, 0.019);
    private static final SectionPart STRIP = new SectionPart(10.9e9, 0.019, -0.019, 0.019);

    @ParameterizedTest(name = "{0}: {1}, {4}")
    @CsvFileSource(resources = "/published/bending-figures.csv", useHeadersInDisplayName = true)
    void meetsTheFigure(String formula, String inputs, double expected, double tolerance, String source, Basis basis) {
        assertThat(value(formula, Numbers.of(inputs)))
                .as(source + ", " + basis.words())
                .isCloseTo(expected, within(tolerance));
    }

    private static double value(String formula, double[] x) {
        return switch (formula) {
            case "BendingStress.shear" -> BendingStress.shear(x[0], x[1]);
            case "BendingStress.momentAt" -> BendingStress.momentAt(x[0], x[1]);
            case "CreepFactor.finalSag" -> CreepFactor.finalSag(x[0], x[1], x[2], x[3]);
            case "EdgePointLoad.factor, upper fit at 0.45" -> EdgePointLoad.factor(x[0], x[1]);
            case "EdgePointLoad.stress" -> EdgePointLoad.stress(x[0], x[1], x[2], x[3]);
            case "HiddenRod.moment" -> HiddenRod.moment(x[0], x[1], x[2]);
            case "HiddenRod.stress" -> HiddenRod.stress(x[0], x[1]);
            case "HiddenRod.bearing" -> HiddenRod.bearing(x[0], x[1], x[2], x[3]);
            case "HiddenRod.bearingStrength" -> HiddenRod.bearingStrength(x[0], x[1], x[2], x[3]);
            case "HiddenRod.frontDrop" -> HiddenRod.frontDrop(x[0], x[1], x[2], x[3], x[4], x[5]);
            case "PinInHole.bendingPin" -> PinInHole.bendingPin(x[0], x[1], x[2], x[3]);
            case "PinInHole.strength" -> PinInHole.strength(x[0], x[1], x[2], x[3], x[4]);
            case "RectangularSection.torsionConstant, of a square", "RectangularSection.torsionConstant, ten to one" ->
                RectangularSection.torsionConstant(x[0], x[1]);
            case "SandwichBeam.faceStress" -> SandwichBeam.faceStress(x[0], x[1], x[2]);
            case "SandwichBeam.coreStress" -> SandwichBeam.coreStress(x[0], x[1], x[2]);
            case "SemiRigidEnds.deflection, clamped", "SemiRigidEnds.deflection, free to turn" ->
                SemiRigidEnds.deflection(x[0], 1e3, 1, 1e9, 1e-6);
            case "SemiRigidEnds.centreLoadDeflection, clamped" ->
                SemiRigidEnds.centreLoadDeflection(x[0], 1e3, 1, 1e9, 1e-6);
            case "UniformLoad.shearDeflection, simple" ->
                UniformLoad.shearDeflection(UniformLoad.Ends.SIMPLE, 1e3, 1, 1e7, 1e-4);
            case "UniformLoad.shearDeflection, clamped" ->
                UniformLoad.shearDeflection(UniformLoad.Ends.CLAMPED, 1e3, 1, 1e7, 1e-4);
            case "UniformLoad.largestMoment, clamped" -> UniformLoad.largestMoment(UniformLoad.Ends.CLAMPED, 1, 1);
            case "UniformLoad.largestMoment, simple" -> UniformLoad.largestMoment(UniformLoad.Ends.SIMPLE, 1, 1);
            case "SemiRigidEnds.endMoment" -> SemiRigidEnds.endMoment(x[0], x[1], x[2]);
            case "SemiRigidEnds.centreLoadEndMoment" -> SemiRigidEnds.centreLoadEndMoment(x[0], x[1], x[2]);
            case "ShelfPins.rearPin" -> ShelfPins.rearPin(x[0], x[1], x[2], x[3], x[4]);
            case "ShelfPins.rockingPin" -> ShelfPins.rockingPin(x[0]);
            case "ShelfPins.tippingLoad" -> ShelfPins.tippingLoad(x[0], x[1], x[2], x[3]);
            case "SizeForSag.spanForSag" -> SizeForSag.spanForSag(x[0], x[1], x[2], x[3], x[4]);
            case "SizeForSag.pressure" -> SizeForSag.pressure(x[0], x[1], x[2], x[3], x[4]);
            case "TransformedSection.stress, at the foot of the strip" ->
                TransformedSection.stress(List.of(BOARD, STRIP), STRIP, STRIP.bottom(), x[0]);
            case "UniformLoad.reaction" -> UniformLoad.reaction(x[0], x[1]);
            default -> throw new IllegalArgumentException(formula);
        };
    }
}
