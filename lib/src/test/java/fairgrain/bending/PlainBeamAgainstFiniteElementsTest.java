package fairgrain.bending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** What the plain beam gives, and how far finite elements say it is off: the table of docs/bending.md. */
class PlainBeamAgainstFiniteElementsTest {
    private static final double MM = 1e-3;
    private static final double MPA = 1e6;
    private static final TorsionBox BOX = new TorsionBox(0.3, 0.04, 0.006, 3, 0.018, 3e9, 3e9, 1.2e9, 1.2e9);

    @ParameterizedTest(name = "{0}, {4}, {9}")
    @CsvFileSource(resources = "/published/plain-beam-against-finite-elements.csv", useHeadersInDisplayName = true)
    void theBeamIsOffByThisMuch(
            String row,
            String beam,
            String supports,
            String load,
            String quantity,
            double expected,
            double tolerance,
            double finiteElements,
            double differencePercent,
            String what,
            String source,
            String basis) {
        double found = quantity(beam, supports, load, quantity);
        assertThat(found).as(row + ", " + source + ", " + basis).isCloseTo(expected, within(tolerance));
        assertThat(100 * (finiteElements / found - 1)).as(what).isCloseTo(differencePercent, within(1.0));
    }

    private static double quantity(String beam, String supports, String load, String quantity) {
        String[] words = beam.split(" ", -1);
        double length = Double.parseDouble(words[1]) * MM;
        double depth = words[0].equals("box") ? 0.3 : Double.parseDouble(words[2]) * MM;
        double thickness = words[0].equals("box") ? 0.04 : Double.parseDouble(words[3]) * MM;
        double i = RectangularSection.secondMoment(depth, thickness);
        double area = RectangularSection.shearArea(depth, thickness);
        BeamStretch stretch = switch (words[0]) {
            case "wood" -> new BeamStretch(length, 10_900 * MPA * i, 817.5 * MPA * area);
            case "MDF" -> new BeamStretch(length, 3000 * MPA * i, 150 * MPA * area);
            case "glass" -> BeamStretch.withoutShear(length, 70_000 * MPA * i);
            case "box" -> new BeamStretch(length, BOX.bendingStiffness(), BOX.shearStiffness());
            default -> throw new AssertionError(beam);
        };
        double size = Double.parseDouble(load.substring(load.lastIndexOf(' ') + 1));
        List<BeamLoad> loads = load.startsWith("uniform")
                ? List.of(BeamLoad.Line.uniform(0, length, size * depth))
                : GeneralBeamTest.loads(load);
        BeamResponse response = GeneralBeam.solve(List.of(stretch), GeneralBeamTest.supports(supports), loads);
        return switch (quantity.split(" ", -1)[0]) {
            case "stress" -> {
                double moment = response.moment(Double.parseDouble(quantity.substring(quantity.lastIndexOf(' ') + 1)));
                yield stress(words[0], moment, depth, thickness) / MPA;
            }
            default -> GeneralBeamTest.quantity(response, quantity) / MM;
        };
    }

    private static double stress(String beam, double moment, double depth, double thickness) {
        return switch (beam) {
            case "box" -> BOX.skinStress(moment);
            case "wood", "MDF" -> BendingStress.bending(moment, RectangularSection.sectionModulus(depth, thickness));
            default -> throw new AssertionError(beam);
        };
    }
}
