package fairgrain.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Basis;
import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class PublishedStaticsTest {
    private static final double GRAVITY = 9.80665; // m/s², exact, by convention

    @ParameterizedTest(name = "{0}: {1}, {4}")
    @CsvFileSource(resources = "/published/fastener-statics.csv", useHeadersInDisplayName = true)
    void meetsTheWorkedValue(
            String formula, String inputs, double expected, double tolerance, String source, Basis basis) {
        double[] x = Arrays.stream(inputs.split(" ", -1))
                .mapToDouble(Double::parseDouble)
                .toArray();
        assertThat(value(formula, x)).as(source + ", " + basis.words()).isCloseTo(expected, within(tolerance));
    }

    private static double value(String formula, double[] x) {
        return switch (formula) {
            case "moment of masses" -> momentOfMasses(x);
            case "row pull" -> Overturning.pull(x[0], x[1], x[2]);
            case "middle of three studs" -> RailOnThreeStuds.middleShare(x[0], x[1]);
            case "largest stud share" -> Arrays.stream(shares(x)).max().orElseThrow();
            case "smallest stud share" -> Arrays.stream(shares(x)).min().orElseThrow();
            case "wedge with friction" -> BevelledRail.wedgeWithFriction(x[0], Math.toRadians(x[1]), Math.atan(x[2]));
            case "combined by the code" -> CombinedLoad.code(x[0], x[1], x[2], x[3]);
            case "combined with both terms" -> CombinedLoad.interaction(x[0], x[1], x[2], x[3]);
            case "bevel needed" -> BevelledRail.needed(x[0], x[1], x[2], x[3], x[4]);
            case "case strip pull" -> BevelledRail.caseStripPull(x[0], x[1], x[2], x[3], x[4], x[5]);
            case "wall strip pull" -> BevelledRail.wallStripPull(x[0], x[1], x[2], x[3], x[4]);
            case "rail rolling pull" -> RailRolling.screwPull(x[0], x[1], x[2]);
            case "rail rolling stress MPa" -> RailRolling.crossGrainStress(x[0], x[1], x[2], x[3]) / 1e6;
            case "cross-grain limit MPa" -> BevelledStrip.crossGrainLimit(x[0] * 1e6) / 1e6;
            case "yield margin" -> YieldMargin.atPermanentLoad(x[0]);
            case "short-time lateral" -> ShortTimeStrength.lateral(x[0], x[1]);
            case "ten-minute lateral" -> Adjustment.lateral(x[0], LoadDuration.TEN_MINUTES, 1, 1, 1, 1, 1);
            case "panel divisor" -> PanelScrew.divisor(x[0]);
            case "stud edge mm" -> 1000 * EdgeAndSpacing.studEdge(x[0] / 1000);
            case "penetration mm" -> 1000 * Penetration.depth(x[0] / 1000, x[1] / 1000, x[2] / 1000, x[3] / 1000);
            default -> throw new IllegalArgumentException(formula);
        };
    }

    private static double momentOfMasses(double[] massesAndArms) {
        double[] loads = new double[massesAndArms.length / 2];
        double[] arms = new double[loads.length];
        for (int i = 0; i < loads.length; i++) {
            loads[i] = massesAndArms[2 * i] * GRAVITY;
            arms[i] = massesAndArms[2 * i + 1];
        }
        return Overturning.moment(loads, arms);
    }

    private static double[] shares(double[] centreAndStuds) {
        return StudShares.ofWeight(Arrays.copyOfRange(centreAndStuds, 1, centreAndStuds.length), centreAndStuds[0]);
    }
}
