package fairgrain.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.fastener.ScrewSize;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.quantity.Length;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Figures of print, and figures worked out another way. */
class JointScrewsPublishedTest {
    private static final double MM = 1e-3;
    private static final double MPA = 1e6;
    private static final Evidence TOLD = Evidence.of(Citation.of("maker", "made up for a test", Basis.ENTERED));
    private static final ScrewSize NO_8 =
            new ScrewSize("No. 8 wood screw", 0.0041656, 0.0033274, 0.0079248, 90000 * 6894.757293168361, 0.66, TOLD);
    private static final JointWood WOOD = new JointWood(
            "a wood",
            OptionalDouble.of(11.7e6),
            OptionalDouble.of(4.8e6),
            OptionalDouble.of(0.55),
            OptionalDouble.of(0.5225),
            TOLD);

    @ParameterizedTest(name = "{0}, {4}")
    @CsvFileSource(resources = "/published/joint-screws.csv", useHeadersInDisplayName = true)
    void singleFigures(String row, double expected, double tolerance, String unit, String source, String basis) {
        assertThat(figure(row)).as(unit + ", " + source + ", " + basis).isCloseTo(expected, within(tolerance));
    }

    private static double figure(String row) {
        return switch (row) {
            case "No. 8 two inches long through 3/4 in into side grain of G 0.55 yields" ->
                screw(2, false).yields();
            case "the same by the code for ten years" -> screw(2, false).sideways();
            case "the same into end grain" -> screw(2, true).sideways();
            case "No. 8 an inch and a half long pulled by the code for ten years" ->
                screw(1.5, false).pull();
            case "the same drawn out on average" -> screw(1.5, false).drawsOut();
            case "block 3/4 by 1 1/2 in on three of them for good" ->
                new OnBlock(
                                3,
                                NO_8,
                                Length.inches(1.5),
                                WOOD,
                                Length.inches(0.75),
                                Length.inches(1.5),
                                Length.inches(1),
                                Length.inches(11))
                        .strength(WOOD, WOOD)
                        .working();
            case "pull on the screws of a block as thick as it is high by its load" ->
                LoadOnBlock.pull(100, 0.02, 0.02) / 100;
            case "tear-out in oak of 13.8 MPa 19 mm thick 9.5 mm from the end" ->
                ScrewTearOut.load(13.8 * MPA, 19 * MM, 9.5 * MM);
            case "depth in the stile of a 32 mm pocket screw with 13 mm under its head" ->
                PocketHole.depth(32 * MM, 13 * MM) / MM;
            case "wood before its point in 19 mm stock" -> PocketHole.left(19 * MM, 32 * MM, 13 * MM, 4.1656 * MM) / MM;
            case "longest pocket screw in 19.05 mm stock with 12.7 mm under its head" ->
                PocketHole.longest(19.05 * MM, 12.7 * MM, 4.1656 * MM, 2 * MM) / MM;
            case "bond stress that the regression of dowels implies in cherry" ->
                GluedDowel.bestPull(11.72 * MPA, 13.86 * MPA, 8 * MM, 25 * MM) / (Math.PI * 8 * 25);
            case "mean of red oak tests by fully plastic" -> 353 / TenonGlueFaces.plastic(12.273 * MPA, 0.038, 0.032);
            case "lower limit of red oak tests by first yield" ->
                266 / TenonGlueFaces.firstYield(12.273 * MPA, 0.038, 0.032);
            case "glue line of 100 by 19 mm in cherry" -> LongGrainGlue.shearsOff(11.72 * MPA, 0.1 * 0.019);
            default -> throw new AssertionError(row);
        };
    }

    private static ScrewedTogether screw(double inches, boolean endGrain) {
        return new ScrewedTogether(NO_8, Length.inches(inches), WOOD, Length.inches(0.75), WOOD, endGrain);
    }
}
