package fairgrain.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Basis;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class PublishedSteelStudTest {
    @ParameterizedTest(name = "{0}, {1}, {2}, {3}, {8}")
    @CsvFileSource(resources = "/published/fastener-steel-stud.csv", useHeadersInDisplayName = true)
    void meetsThePrintedTablesCellByCell(
            String kind,
            double nearIn,
            double farIn,
            double diameterIn,
            double strengthKsi,
            double expectedLb,
            double tolerance,
            TableRounding rounding,
            String source,
            Basis basis) {
        double near = nearIn * Inches.M;
        double far = farIn * Inches.M;
        double d = diameterIn * Inches.M;
        double fu = strengthKsi * 1000 * Inches.PA_PER_PSI;
        double nominal = switch (kind) {
            case "pull-out" -> SteelStudScrew.pullOut(far, d, fu);
            case "pull-over" -> SteelStudScrew.pullOver(near, d, fu);
            case "shear" -> SteelStudScrew.shear(near, fu, far, fu, d);
            default -> throw new IllegalArgumentException(kind);
        };
        assertThat(rounding.apply(SteelStudScrew.allowable(nominal) / Inches.N_PER_LB))
                .as(source + ", " + basis.words())
                .isCloseTo(expectedLb, within(tolerance));
    }

    @ParameterizedTest(name = "{1}, {2}, {5}")
    @CsvFileSource(resources = "/published/fastener-steel-wood-side.csv", useHeadersInDisplayName = true)
    void meetsTheWoodSideThroughABoard(
            double railMm,
            double gapMm,
            double divisor,
            double expectedLb,
            double tolerance,
            String source,
            Basis basis) {
        double thickness = 0.0188 * Inches.M;
        double fu = 33_000 * Inches.PA_PER_PSI;
        ModeLoads wood = SteelStudScrew.woodSide(
                railMm / 1000,
                DowelBearing.small(0.42),
                thickness,
                fu,
                0.152 * Inches.M,
                BendingYield.commonSteel(0.19 * Inches.M),
                gapMm / 1000);
        assertThat(wood.least() / divisor / Inches.N_PER_LB)
                .as(source + ", " + basis.words())
                .isCloseTo(expectedLb, within(tolerance));
        assertThat(SteelStudScrew.woodRailShear(wood, thickness, fu, 0.19 * Inches.M))
                .as("the board, not the bare sheet, sets the limit")
                .isEqualTo(wood.least() / 3);
    }
}
