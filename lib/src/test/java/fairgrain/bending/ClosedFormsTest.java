package fairgrain.bending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ClosedFormsTest {
    private static final double MM = 1e-3;
    private static final double MPA = 1e6;
    private static final double E = 10_900 * MPA;
    private static final double DAY = 86_400;
    private static final double YEAR = 365.25 * DAY;

    private static final List<SectionPart> BOARD_AND_STRIP = List.of(part(E, 261, 0, 19), part(E, 19, -19, 19));
    private static final List<SectionPart> BOARD_AND_STRIPS =
            List.of(part(E, 242, 0, 19), part(E, 19, -19, 19), part(E, 19, -19, 19));
    private static final TorsionBox BOX = new TorsionBox(0.3, 0.04, 0.006, 3, 0.018, 3e9, 3e9, 1.2e9, 1.2e9);

    private static SectionPart part(double elasticity, double widthMm, double bottomMm, double topMm) {
        return new SectionPart(elasticity, widthMm * MM, bottomMm * MM, topMm * MM);
    }

    @ParameterizedTest(name = "{0}, {4}")
    @CsvFileSource(resources = "/published/bending-closed-forms.csv", useHeadersInDisplayName = true)
    void singleFigures(String row, double expected, double tolerance, String unit, String source, String basis) {
        assertThat(figure(row)).as(unit + ", " + source + ", " + basis).isCloseTo(expected, within(tolerance));
    }

    private static double figure(String row) {
        return switch (row) {
            case "shear area of a rectangle by its area" ->
                RectangularSection.shearArea(0.3, 0.02) / RectangularSection.area(0.3, 0.02);
            case "chord shortening by sag squared over span" -> UniformLoad.chordShortening(1, 1);
            case "shear sag by bending sag at depth to span 1 to 14 and E/G 16" -> {
                double i = RectangularSection.secondMoment(0.05, 0.05);
                double bent = BeamCoefficients.CENTRE_SIMPLE.deflection(1, 0.7, E, i);
                double both = BeamCoefficients.CENTRE_SIMPLE.deflection(
                        1, 0.7, E, i, E / 16, RectangularSection.shearArea(0.05, 0.05));
                yield (both - bent) / bent;
            }
            case "MDF shelf 800 x 300 x 18 under 20 kg" ->
                UniformLoad.deflection(20 * 9.81 / 0.8, 0.8, 2.5e9, RectangularSection.secondMoment(0.3, 0.018));
            case "axis of a board 261 x 19 with a strip 19 x 38 on one edge" ->
                TransformedSection.neutralAxis(BOARD_AND_STRIP) / MM;
            case "axis of a board 242 x 19 with strips 19 x 38 on both edges" ->
                TransformedSection.neutralAxis(BOARD_AND_STRIPS) / MM;
            case "stiffness of a board 242 x 19 with strips 19 x 38 on both edges" ->
                TransformedSection.bendingStiffness(BOARD_AND_STRIPS) / (MM * MM);
            case "stiffness of an MDF board 282 x 18 with a wood strip 18 x 38" ->
                TransformedSection.bendingStiffness(List.of(part(3000 * MPA, 282, 0, 18), part(E, 18, -20, 18)))
                        / (MM * MM);
            case "axis of the torsion box" -> TransformedSection.neutralAxis(boxParts()) / MM;
            case "stiffness of the torsion box" -> {
                double parts = TransformedSection.bendingStiffness(boxParts());
                assertThat(BOX.bendingStiffness()).isCloseTo(parts, within(1e-9 * parts));
                yield BOX.bendingStiffness() / (MM * MM);
            }
            case "sag of the torsion box" -> BOX.deflection(1500 * 0.3, 1.19) / MM;
            case "shear stiffness of the sandwich" -> SandwichBeam.shearStiffness(8 * MPA, 3 * MM, 32 * MM) * MM;
            case "sag of the sandwich" ->
                SandwichBeam.deflection(
                                500,
                                0.89,
                                SandwichBeam.bendingStiffness(4000 * MPA, 3 * MM, 32 * MM),
                                SandwichBeam.shearStiffness(8 * MPA, 3 * MM, 32 * MM))
                        / MM;
            case "effective flange of the wood board" ->
                EffectiveFlange.width(0.261, false, 3 * Math.PI / 0.89, E, 468.7 * MPA, 0.392, 752.1 * MPA) / MM;
            case "effective flange of the MDF board" ->
                EffectiveFlange.width(0.282, false, Math.PI / 0.79, 3000 * MPA, 3000 * MPA, 0.25, 1200 * MPA) / MM;
            case "bearing stress of a pin" ->
                ShelfPins.bearingStress(0.0015 * MPA * 0.9 * 0.28 / 4, 5 * MM, 8 * MM) / MPA;
            case "front pin under a load at the corner by the load" ->
                ShelfPins.frontPin(0, 1, 0, 37 * MM, (280 - 37) * MM);
            case "longest span for L/300" -> SizeForSag.span(0.019, 1500, 12_500 * MPA, 300, 1.6) / MM;
            case "least thickness for L/300" -> SizeForSag.thickness(0.9, 1500, 12_500 * MPA, 300, 1.6) / MM;
            case "oak shelf of 900 mm for 10 MPa" -> SizeForSag.thicknessForStress(0.9, 1500, 10 * MPA) / MM;
            case "Madison curve at 1 day" -> 100 * MadisonCurve.stressLevel(DAY);
            case "Madison curve at 1 year" -> 100 * MadisonCurve.stressLevel(YEAR);
            case "Madison curve at 10 years" -> 100 * MadisonCurve.stressLevel(10 * YEAR);
            case "Madison curve at 50 years" -> 100 * MadisonCurve.stressLevel(50 * YEAR);
            case "older line at 10 years" -> 100 * MadisonCurve.stressLevelOfTheLine(10 * YEAR);
            case "glass shelf of 1000 x 6 under 32 kg/m2, stress of the load alone" ->
                BendingStress.bending(
                                UniformLoad.largestMoment(UniformLoad.Ends.SIMPLE, 32 * 9.81, 1),
                                RectangularSection.sectionModulus(1, 0.006))
                        / MPA;
            case "overhang of equal moments by length" ->
                zero(a -> overhung(a).moment(0.5) + overhung(a).moment(a));
            case "overhang of equal sags by length" ->
                zero(a -> overhung(a).deflection(0.5) - overhung(a).deflection(0));
            case "edge load on glass by the plain beam" -> EdgePointLoad.factor(0.18, 0.4);
            case "creep after half a year by creep after ten years" -> CreepFactor.at(1, YEAR / 2);
            default -> throw new AssertionError(row);
        };
    }

    private static List<SectionPart> boxParts() {
        SectionPart rib = part(3000 * MPA, 18, 6, 34);
        return List.of(part(3000 * MPA, 300, 0, 6), part(3000 * MPA, 300, 34, 40), rib, rib, rib);
    }

    private static double zero(DoubleUnaryOperator f) {
        return new BrentSolver(1e-12).solve(100, f::applyAsDouble, 0.1, 0.3);
    }

    private static BeamResponse overhung(double a) {
        return GeneralBeam.solve(
                List.of(BeamStretch.withoutShear(1, 1)),
                List.of(BeamSupport.pin(a), BeamSupport.pin(1 - a)),
                List.of(BeamLoad.Line.uniform(0, 1, 1)));
    }
}
