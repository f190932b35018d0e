package fairgrain.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Basis;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class PublishedWithdrawalTest {
    @ParameterizedTest(name = "{0}, {1}, {2}, {6}")
    @CsvFileSource(resources = "/published/fastener-withdrawal.csv", useHeadersInDisplayName = true)
    void meetsThePrintedTablesCellByCell(
            String kind,
            double gravity,
            double diameterIn,
            double expectedLbPerIn,
            double tolerance,
            TableRounding rounding,
            String source,
            Basis basis) {
        double poundsPerInch = reference(kind, gravity, diameterIn * Inches.M) * Inches.M / Inches.N_PER_LB;
        assertThat(rounding.apply(poundsPerInch))
                .as(source + ", " + basis.words())
                .isCloseTo(expectedLbPerIn, within(tolerance));
    }

    @ParameterizedTest(name = "{0}, {5}")
    @CsvFileSource(resources = "/published/fastener-withdrawal-examples.csv", useHeadersInDisplayName = true)
    void meetsTheWorkedExamples(
            String kind,
            double gravity,
            double diameterIn,
            double threadIn,
            double expectedN,
            double tolerance,
            String source,
            Basis basis) {
        assertThat(reference(kind, gravity, diameterIn * Inches.M) * threadIn * Inches.M)
                .as(source + ", " + basis.words())
                .isCloseTo(expectedN, within(tolerance));
    }

    @ParameterizedTest(name = "{0}, {7}")
    @CsvFileSource(resources = "/published/fastener-ultimate-constants.csv", useHeadersInDisplayName = true)
    void theMetricConstantsOfTheHandbookAgreeWithTheInchOnes(
            String name,
            String kind,
            double gravity,
            double diameterMm,
            double lengthMm,
            double expected,
            double tolerance,
            String source,
            Basis basis) {
        double newtons = ultimate(kind, gravity, diameterMm / 1000, lengthMm / 1000);
        double shape = switch (kind) {
            case "lag screw" -> Math.pow(diameterMm, 0.75) * lengthMm;
            case "wood screw", "plain nail" -> diameterMm * lengthMm;
            default -> Math.sqrt(diameterMm) * Math.pow(lengthMm - diameterMm / 3, 1.25);
        };
        assertThat(newtons / shape)
                .as(name + ", " + source + ", " + basis.words())
                .isCloseTo(expected, within(tolerance));
    }

    @ParameterizedTest(name = "{0}, {6}")
    @CsvFileSource(resources = "/published/fastener-ultimate.csv", useHeadersInDisplayName = true)
    void meetsTheMeansOfTests(
            String kind,
            double gravity,
            double diameterIn,
            double lengthIn,
            double expectedLb,
            double tolerance,
            String source,
            Basis basis) {
        double newtons = ultimate(kind, gravity, diameterIn * Inches.M, lengthIn * Inches.M);
        assertThat(newtons / Inches.N_PER_LB)
                .as(source + ", " + basis.words())
                .isCloseTo(expectedLb, within(tolerance));
    }

    @ParameterizedTest(name = "{0}, {1}, {2}, {5}")
    @CsvFileSource(resources = "/published/fastener-head.csv", useHeadersInDisplayName = true)
    void meetsThePrintedHeads(
            double gravity,
            double headIn,
            double thicknessIn,
            double expectedLb,
            double tolerance,
            String source,
            Basis basis) {
        double newtons = HeadPullThrough.capacity(gravity, headIn * Inches.M, thicknessIn * Inches.M);
        assertThat(newtons / Inches.N_PER_LB)
                .as(source + ", " + basis.words())
                .isCloseTo(expectedLb, within(tolerance));
        assertThat(HeadPullThrough.isInStatedRange(headIn * Inches.M, thicknessIn * Inches.M))
                .isEqualTo(basis != Basis.DERIVED); // the 6 mm backs lie outside
    }

    @Test
    void lagScrewOfTheExampleLosesSideMemberAndTip() {
        double thread =
                Penetration.thread(4 * Inches.M, 2.5 * Inches.M, 0.3125 * Inches.M, 1.5 * Inches.M, 3.5 * Inches.M);
        double bearing =
                Penetration.lagScrewBearing(4 * Inches.M, 1.5 * Inches.M, 0, 3.5 * Inches.M, 0.3125 * Inches.M);
        assertThat(thread).isCloseTo(2.1875 * Inches.M, within(1e-12));
        assertThat(bearing).isCloseTo(2.1875 * Inches.M, within(1e-12));
    }

    private static double reference(String kind, double gravity, double diameter) {
        return switch (kind) {
            case "lag screw" -> ReferenceWithdrawal.lagScrew(gravity, diameter);
            case "wood screw" -> ReferenceWithdrawal.woodScrew(gravity, diameter);
            case "plain nail" -> ReferenceWithdrawal.plainNail(gravity, diameter);
            default -> throw new IllegalArgumentException(kind);
        };
    }

    private static double ultimate(String kind, double gravity, double diameter, double length) {
        return switch (kind) {
            case "lag screw" -> UltimateWithdrawal.lagScrew(gravity, diameter, length);
            case "wood screw" -> UltimateWithdrawal.woodScrew(gravity, diameter, length);
            case "plain nail" -> UltimateWithdrawal.plainNail(gravity, diameter, length);
            case "particleboard face" -> PanelScrew.particleboardFace(gravity, diameter, length);
            case "particleboard edge" -> PanelScrew.particleboardEdge(gravity, diameter, length);
            default -> throw new IllegalArgumentException(kind);
        };
    }
}
