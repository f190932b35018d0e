package fairgrain.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.joint.GluedDowel;
import fairgrain.joint.ParticleboardDowelCorner;
import fairgrain.joint.StubTenonFaces;
import fairgrain.joint.TenonGlueFaces;
import fairgrain.quantity.Force;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Figures of print, and figures worked out another way. */
class JointsAndDoorsPublishedTest {
    private static final double MM = 1e-3;
    private static final double MPA = 1e6;
    private static final double PSI = 6894.757293168361;
    private static final double INCH = 0.0254;
    private static final double INCH_POUND = Force.NEWTONS_PER_POUND * INCH;
    private static final double RED_OAK = 12.273 * MPA;
    private static final double WHITE_OAK = 13.790 * MPA;
    private static final double CHERRY = 11.72 * MPA;
    private static final double KITCHEN = 65 * Force.NEWTONS_PER_POUND;

    @ParameterizedTest(name = "{0}, {4}")
    @CsvFileSource(resources = "/published/joints.csv", useHeadersInDisplayName = true)
    void singleFigures(String row, double expected, double tolerance, String unit, String source, String basis) {
        assertThat(figure(row)).as(unit + ", " + source + ", " + basis).isCloseTo(expected, within(tolerance));
    }

    private static double figure(String row) {
        return switch (row) {
            case "red oak tenon 38 x 32 fully plastic" -> TenonGlueFaces.plastic(RED_OAK, 38 * MM, 32 * MM);
            case "white oak tenon 38 x 32 at first yield" -> whiteOak();
            case "red oak tenon 38 x 32 at first yield" -> TenonGlueFaces.firstYield(RED_OAK, 38 * MM, 32 * MM);
            case "mean of white oak tests by first yield" -> 358 / whiteOak();
            case "mean of red oak tests by first yield" -> 353 / TenonGlueFaces.firstYield(RED_OAK, 38 * MM, 32 * MM);
            case "lower limit of white oak tests by first yield" -> 240 / whiteOak();
            case "lower limit by mean of white oak tests" -> TenonGlueFaces.LOWER / TenonGlueFaces.MEAN;
            case "cherry stub tenon 57 x 10 lower bound" -> TenonGlueFaces.mean(CHERRY, 57 * MM, 10 * MM);
            case "cherry stub tenon 57 x 10 upper bound" -> StubTenonFaces.atMost(CHERRY, 57 * MM, 10 * MM);
            case "dowel in cherry by the regression" -> dowel();
            case "two dowels with the longer arm" -> GluedDowel.mostMoment(4175, 32 * MM, 12.5 * MM);
            case "two dowels with the short arm" -> GluedDowel.moment(4175, 32 * MM);
            case "dowel corner in particleboard closing 1/4 and 1/4 in" ->
                ParticleboardDowelCorner.closing(0.25 * INCH, 0.25 * INCH) / INCH_POUND;
            case "dowel corner in particleboard closing 5/16 and 1/2 in" ->
                ParticleboardDowelCorner.closing(0.3125 * INCH, 0.5 * INCH) / INCH_POUND;
            case "dowel corner in particleboard opening 5/16 and 1/2 in" ->
                ParticleboardDowelCorner.opening(0.3125 * INCH, 0.5 * INCH) / INCH_POUND;
            case "dowel corner in particleboard opening 3/8 and 5/8 in" ->
                ParticleboardDowelCorner.opening(0.375 * INCH, 0.625 * INCH) / INCH_POUND;
            case "pull on the top hinge of a 60 N door" -> HingeCouple.pull(60, 0.45, 0, 0.45, 0.5);
            case "pull on the top hinge from the load of the kitchen test" ->
                HingeCouple.pull(0, 0.45, KITCHEN, 10 * INCH, 0.5);
            case "racking moment at a corner from own weight" -> corner(0);
            case "racking moment at a corner in the kitchen test" -> corner(KITCHEN);
            case "moment of the kitchen test about the hinge" -> KITCHEN * 10 * INCH;
            case "moment of the woodwork test about the hinge" ->
                200 * Force.NEWTONS_PER_POUND * 12 * INCH / INCH_POUND;
            default -> throw new AssertionError(row);
        };
    }

    private static double whiteOak() {
        return TenonGlueFaces.firstYield(WHITE_OAK, 38 * MM, 32 * MM);
    }

    private static double dowel() {
        return GluedDowel.bestPull(1700 * PSI, 2010 * PSI, 8 * MM, 25 * MM);
    }

    private static double corner(double load) {
        double all = FrameRacking.moment(12, 25, 8, 0.393, load, 10 * INCH, 0.057);
        return FrameRacking.perCorner(all, FrameRacking.CORNERS);
    }
}
