package fairgrain.moisture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.evidence.Numbers;
import fairgrain.finding.Basis;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Figures of single formulas, as print has them or worked out apart from the code. */
class MoistureFiguresTest {
    private static final double DAY = 86400;

    @ParameterizedTest(name = "{0}: {1}, {4}")
    @CsvFileSource(resources = "/published/moisture-figures.csv", useHeadersInDisplayName = true)
    void meetsTheFigure(String formula, String inputs, double expected, double tolerance, String source, Basis basis) {
        assertThat(value(formula, Numbers.of(inputs)))
                .as(source + ", " + basis.words())
                .isCloseTo(expected, within(tolerance));
    }

    private static double value(String formula, double[] x) {
        return switch (formula) {
            case "SaturationOverWater.pressure" -> SaturationOverWater.pressure(x[0]);
            case "SaturationOverWater.vapourPressure" -> SaturationOverWater.vapourPressure(x[0], x[1]);
            case "HumidAir.vapourPressure" -> HumidAir.vapourPressure(x[0], x[1]);
            case "HailwoodHorrobin.relativeHumidity" -> HailwoodHorrobin.relativeHumidity(x[0], x[1]);
            case "MoistureExcess.pressureExcess" -> MoistureExcess.pressureExcess(x[0], x[1], x[2]);
            case "OvenTest.moisture" -> OvenTest.moisture(x[0], x[1]);
            case "OvenTest.uncertainty" -> OvenTest.uncertainty(x[0], x[1], x[2]);
            case "SlabUptake.biotNumber" -> SlabUptake.biotNumber(x[0], x[1], x[2]);
            case "SlabUptake.fourierNumber" -> SlabUptake.fourierNumber(x[0], x[1], x[2]);
            case "SlabUptake.halfTime, in days" -> SlabUptake.halfTime(x[0], x[1], x[2]) / DAY;
            case "TwoFaces.mean, amplitude" ->
                TwoFaces.mean(x[0], x[1], x[2], x[3], x[4]).amplitude();
            case "TwoFaces.mean, lag in days" ->
                TwoFaces.mean(x[0], x[1], x[2], x[3], x[4]).lag() / DAY;
            case "TwoFaces.difference" -> TwoFaces.difference(x[0], x[1], x[2], x[3], x[4], x[5], x[6]);
            case "TwoFaces.steadyDifference" -> TwoFaces.steadyDifference(x[0], x[1], x[2], x[3], x[4], x[5]);
            case "PeriodicResponse.face, amplitude over a day" ->
                PeriodicResponse.face(x[0], x[1], x[2], DAY).amplitude();
            case "PeriodicResponse.face, lag in hours over a day" ->
                PeriodicResponse.face(x[0], x[1], x[2], DAY).lag() / 3600;
            case "TransverseDiffusion.diffusivity" -> TransverseDiffusion.diffusivity(x[0], x[1], x[2]);
            case "TransverseDiffusion.byMoisture" ->
                TransverseDiffusion.byMoisture(x[0], x[2]).at(x[1]);
            case "TransverseDiffusion.indoors" -> TransverseDiffusion.indoors(x[0]);
            default -> throw new IllegalArgumentException(formula);
        };
    }
}
