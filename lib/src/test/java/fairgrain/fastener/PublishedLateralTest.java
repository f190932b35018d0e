package fairgrain.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Basis;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class PublishedLateralTest {
    @ParameterizedTest(name = "{0}, {2}, {3}, {6}")
    @CsvFileSource(resources = "/published/fastener-bearing.csv", useHeadersInDisplayName = true)
    void meetsTheBearingStrengthsOfTheSpeciesTable(
            String wood,
            double gravity,
            double diameterIn,
            double angleDegrees,
            double expectedPsi,
            double tolerance,
            String source,
            Basis basis) {
        assertThat(bearing(gravity, diameterIn, angleDegrees, true) / Inches.PA_PER_PSI)
                .as(wood + ", " + source + ", " + basis.words())
                .isCloseTo(expectedPsi, within(tolerance + 1e-9));
    }

    @ParameterizedTest(name = "{0}, {1}, {4}, {5}, {6} {7}, {8}, {13}")
    @CsvFileSource(resources = "/published/fastener-lateral.csv", useHeadersInDisplayName = true)
    void meetsThePrintedTablesCellByCell(
            String table,
            double nominalIn,
            double rootIn,
            double mainIn,
            double sideIn,
            double mainGravity,
            String side,
            double sideValue,
            double angleDegrees,
            boolean rounded,
            TableRounding rounding,
            double expectedLb,
            double tolerance,
            String source,
            Basis basis) {
        double sideBearing = side.equals("steel")
                ? sideValue * Inches.PA_PER_PSI
                : bearing(sideValue, nominalIn, angleDegrees, rounded);
        var screw = new DowelConnection(
                mainIn * Inches.M,
                sideIn * Inches.M,
                bearing(mainGravity, nominalIn, angleDegrees, rounded),
                sideBearing,
                rootIn * Inches.M,
                BendingYield.commonSteel(nominalIn * Inches.M));
        double z = YieldLimit.reference(screw, 0, nominalIn * Inches.M, Math.toRadians(angleDegrees))
                .least();
        assertThat(rounding.apply(z / Inches.N_PER_LB))
                .as(table + ", " + source + ", " + basis.words())
                .isCloseTo(expectedLb, within(tolerance));
    }

    @ParameterizedTest(name = "{0}, {4}, {5}, {6}, {12}")
    @CsvFileSource(resources = "/published/fastener-gap.csv", useHeadersInDisplayName = true)
    void meetsTheValuesAcrossAGap(
            String name,
            double nominalIn,
            double rootIn,
            double mainIn,
            double sideIn,
            double gravity,
            double gapIn,
            double mainAngle,
            double sideAngle,
            boolean rounded,
            double expectedLb,
            double tolerance,
            String source,
            Basis basis) {
        var screw = new DowelConnection(
                mainIn * Inches.M,
                sideIn * Inches.M,
                bearing(gravity, nominalIn, mainAngle, rounded),
                bearing(gravity, nominalIn, sideAngle, rounded),
                rootIn * Inches.M,
                BendingYield.commonSteel(nominalIn * Inches.M));
        double angle = Math.toRadians(Math.max(mainAngle, sideAngle));
        ModeLoads z = YieldLimit.reference(screw, gapIn * Inches.M, nominalIn * Inches.M, angle);
        assertThat(z.least() / Inches.N_PER_LB)
                .as(name + ", " + source + ", " + basis.words())
                .isCloseTo(expectedLb, within(tolerance));
    }

    @ParameterizedTest(name = "{0}, {3}")
    @CsvFileSource(resources = "/published/fastener-group.csv", useHeadersInDisplayName = true)
    void meetsTheGroupFactors(int screws, double expected, double tolerance, String source, Basis basis) {
        double side = 1_400_000 * 5 * Inches.N_PER_LB;
        double gamma = GroupAction.slipWoodToWood(1 * Inches.M);
        assertThat(GroupAction.factor(screws, 4 * Inches.M, 2 * side, side, gamma))
                .as(source + ", " + basis.words())
                .isCloseTo(expected, within(tolerance));
    }

    private static double bearing(double gravity, double nominalIn, double angleDegrees, boolean rounded) {
        double exact = DowelBearing.wood(gravity, nominalIn * Inches.M, Math.toRadians(angleDegrees));
        return rounded ? DowelBearing.roundedToFiftyPsi(exact) : exact;
    }
}
