package fairgrain.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.evidence.Numbers;
import fairgrain.finding.Basis;
import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Constants and rules as print has them, and figures worked out apart from the code. */
class FastenerFiguresTest {
    private static final double MM = 1e-3;
    private static final double MPA = 1e6;

    @ParameterizedTest(name = "{0}: {1}, {4}")
    @CsvFileSource(resources = "/published/fastener-figures.csv", useHeadersInDisplayName = true)
    void meetsTheFigure(String formula, String inputs, double expected, double tolerance, String source, Basis basis) {
        assertThat(value(formula, Numbers.of(inputs)))
                .as(source + ", " + basis.words())
                .isCloseTo(expected, within(tolerance));
    }

    private static double value(String formula, double[] x) {
        return formula.startsWith("Bevelled") || formula.startsWith("Rail") ? rails(formula, x) : screws(formula, x);
    }

    private static double screws(String formula, double[] x) {
        return switch (formula) {
            case "ReferenceWithdrawal.lagScrew, constant in N and mm" -> ReferenceWithdrawal.lagScrew(1, MM) * MM;
            case "ReferenceWithdrawal.woodScrew, constant in N and mm" -> ReferenceWithdrawal.woodScrew(1, MM) * MM;
            case "ReferenceWithdrawal.plainNail, constant in N and mm" -> ReferenceWithdrawal.plainNail(1, MM) * MM;
            case "HeadPullThrough.capacity, constant of thin wood in N and mm" ->
                HeadPullThrough.capacity(1, 10 * MM, 10 * MM) / (Math.PI * 100);
            case "HeadPullThrough.capacity, constant of thick wood in N and mm" ->
                HeadPullThrough.capacity(1, 4 * MM, 30 * MM) / (Math.PI * 16);
            case "HeadPullThrough.isInStatedRange" -> yes(HeadPullThrough.isInStatedRange(x[0], x[1]));
            case "HeadPullThrough.countersinkDepth" -> HeadPullThrough.countersinkDepth(x[0], x[1], x[2]);
            case "HeadPullThrough.thicknessUnderCountersink" -> HeadPullThrough.thicknessUnderCountersink(x[0], x[1]);
            case "DowelBearing.small, constant in MPa" -> DowelBearing.small(1) / MPA;
            case "DowelBearing.small, rounded to 50 psi" ->
                DowelBearing.roundedToFiftyPsi(DowelBearing.small(x[0])) / Inches.PA_PER_PSI;
            case "DowelBearing.along, constant in MPa" -> DowelBearing.along(1) / MPA;
            case "DowelBearing.across, constant in MPa and mm" -> DowelBearing.across(1, 9 * MM) * 3 / MPA;
            case "DowelBearing.along" -> DowelBearing.along(x[0]);
            case "DowelBearing.across" -> DowelBearing.across(x[0], x[1]);
            case "DowelBearing.atAngle" ->
                DowelBearing.atAngle(DowelBearing.along(x[0]), DowelBearing.across(x[0], x[1]), x[2]);
            case "DowelBearing.coldFormedSteel" -> DowelBearing.coldFormedSteel(x[0]);
            case "DowelBearing.hotRolledSteel" -> DowelBearing.hotRolledSteel(x[0]);
            case "ReductionTerm.diameterFactor" -> ReductionTerm.diameterFactor(x[0]);
            case "ReductionTerm.angleFactor" -> ReductionTerm.angleFactor(x[0]);
            case "ReductionTerm.divisor, mode II of a half-inch bolt across the grain" ->
                ReductionTerm.divisor(x[0], x[1], x[2], YieldMode.II);
            case "ReductionTerm.divisor, mode Im of a half-inch bolt along the grain" ->
                ReductionTerm.divisor(x[0], x[1], x[2], YieldMode.IM);
            case "ReductionTerm.divisor, quarter-inch lag across the grain" ->
                ReductionTerm.divisor(x[0], x[1], x[2], YieldMode.IV);
            case "GroupAction.slipWoodToMetal" -> GroupAction.slipWoodToMetal(x[0]);
            case "EndGrain.lateral" -> EndGrain.lateral(x[0]);
            case "Adjustment.wetServiceLateral" -> Adjustment.wetServiceLateral(x[0]);
            case "Adjustment.wetServiceWithdrawal" -> Adjustment.wetServiceWithdrawal(x[0]);
            case "Adjustment.wetServiceNailWithdrawal" -> Adjustment.wetServiceNailWithdrawal(x[0]);
            case "Adjustment.temperature" -> Adjustment.temperature(x[0]);
            case "Adjustment.axial, for good and wet" -> Adjustment.axial(x[0], LoadDuration.PERMANENT, x[1], 1);
            case "LoadDuration, permanent" -> LoadDuration.PERMANENT.factor();
            case "LoadDuration, ten minutes" -> LoadDuration.TEN_MINUTES.factor();
            case "ClearWood.bending, before grain and duration" -> ClearWood.bending(x[0]) / (0.65 * 0.9);
            case "ClearWood.bending" -> ClearWood.bending(x[0]);
            case "ClearWood.shear" -> ClearWood.shear(x[0]);
            case "CombinedLoad.straightLine" -> CombinedLoad.straightLine(x[0], x[1], x[2], x[3]);
            case "CombinedLoad.screw, head weaker than thread", "CombinedLoad.screw, thread weaker than head" ->
                CombinedLoad.screw(x[0], x[1], x[2], x[3], x[4]);
            case "PanelScrew.plywoodFace" -> PanelScrew.plywoodFace(x[0], x[1], x[2]);
            case "PanelScrew.plywoodEdge" -> PanelScrew.plywoodEdge(x[0], x[1], x[2]);
            case "ScrewSteel.tension" -> ScrewSteel.tension(x[0], x[1]);
            case "ShortTimeStrength.withdrawal" -> ShortTimeStrength.withdrawal(x[0], x[1]);
            case "SplittingForce.characteristic" -> SplittingForce.characteristic(x[0], x[1], x[2]);
            case "SplittingForce.allowable" -> SplittingForce.allowable(x[0], x[1]);
            case "YieldLimit.touching, IIIs of a No. 10" ->
                YieldLimit.touching(connection(x)).iiis();
            case "YieldLimit.acrossGap, IV of a No. 10" ->
                YieldLimit.acrossGap(connection(x), x[5]).iv();
            default -> placing(formula, x);
        };
    }

    private static double placing(String formula, double[] x) {
        return switch (formula) {
            case "EdgeAndSpacing.smallEdgeBored" -> EdgeAndSpacing.smallEdgeBored(x[0]);
            case "EdgeAndSpacing.largeEdge, unloaded" -> EdgeAndSpacing.largeEdge(x[0], false);
            case "EdgeAndSpacing.largeEdge, loaded" -> EdgeAndSpacing.largeEdge(x[0], true);
            case "EdgeAndSpacing.largeEnd, pulled" -> EdgeAndSpacing.largeEnd(x[0], true);
            case "EdgeAndSpacing.largeEnd, pushed" -> EdgeAndSpacing.largeEnd(x[0], false);
            case "EdgeAndSpacing.largeSpacing" -> EdgeAndSpacing.largeSpacing(x[0]);
            case "EdgeAndSpacing.smallEnd, pulled, bored" -> EdgeAndSpacing.smallEnd(x[0], true, true);
            case "EdgeAndSpacing.smallEnd, pulled, not bored" -> EdgeAndSpacing.smallEnd(x[0], false, true);
            case "EdgeAndSpacing.smallAlongGrain, bored" -> EdgeAndSpacing.smallAlongGrain(x[0], true);
            case "EdgeAndSpacing.smallAlongGrain, not bored" -> EdgeAndSpacing.smallAlongGrain(x[0], false);
            case "EdgeAndSpacing.smallAcrossGrain, bored" -> EdgeAndSpacing.smallAcrossGrain(x[0], true);
            case "EdgeAndSpacing.smallAcrossGrain, not bored" -> EdgeAndSpacing.smallAcrossGrain(x[0], false);
            case "Penetration.thread" -> Penetration.thread(x[0], x[1], x[2], x[3], x[4]);
            case "Penetration.lagScrewBearing" -> Penetration.lagScrewBearing(x[0], x[1], x[2], x[3], x[4]);
            case "Penetration.isEnoughForWoodScrew" -> yes(Penetration.isEnoughForWoodScrew(x[0], x[1]));
            case "Penetration.isEnoughForLagScrew" -> yes(Penetration.isEnoughForLagScrew(x[0], x[1]));
            case "Penetration.woodScrewTip" -> Penetration.woodScrewTip(x[0]);
            case "Penetration.woodScrewBearing" -> Penetration.woodScrewBearing(x[0], x[1]);
            case "PilotHole.pulledWoodScrew" -> PilotHole.pulledWoodScrew(x[0], x[1]);
            case "PilotHole.sidewaysWoodScrew" -> PilotHole.sidewaysWoodScrew(x[0], x[1]);
            case "PilotHole.lagScrewThread, least" ->
                PilotHole.lagScrewThread(x[0], x[1]).least();
            case "PilotHole.lagScrewThread, most" ->
                PilotHole.lagScrewThread(x[0], x[1]).most();
            case "SteelStudScrew.pullOut, allowable over t d F" ->
                SteelStudScrew.allowable(SteelStudScrew.pullOut(MM, 4 * MM, 300 * MPA)) / (4 * 300);
            case "SteelStudScrew.pullOver, allowable over t d F" ->
                SteelStudScrew.allowable(SteelStudScrew.pullOver(MM, 8 * MM, 300 * MPA)) / (8 * 300);
            case "SteelStudScrew.tilting, allowable over the root of t³ d times F" ->
                SteelStudScrew.allowable(SteelStudScrew.tilting(MM, 4 * MM, 300 * MPA)) / (2 * 300);
            case "SteelStudScrew.bearing, allowable over t d F" ->
                SteelStudScrew.allowable(SteelStudScrew.bearing(MM, 4 * MM, 300 * MPA)) / (4 * 300);
            case "SteelStudScrew.screwOutlastsSheet" -> yes(SteelStudScrew.screwOutlastsSheet(x[0], x[1]));
            case "LeaningLoad.peak, inside the middle third", "LeaningLoad.peak, outside of it" ->
                LeaningLoad.peak(x[0], x[1]);
            case "Overturning.pullInEarthquake" -> Overturning.pullInEarthquake(x[0], x[1], x[2], x[3], x[4]);
            case "Overturning.shearInEarthquake" -> Overturning.shearInEarthquake(x[0], x[1]);
            case "RowShares.pulls, top row" ->
                RowShares.pulls(x[0], Arrays.copyOfRange(x, 1, 4), new int[] {(int) x[4], (int) x[5], (int) x[6]})[0];
            case "StudShares.coupleOnOneStud" -> StudShares.coupleOnOneStud(x[0], x[1], x[2]);
            case "StudShares.ofPull, first stud" -> StudShares.ofPull(new double[] {x[1], x[2]}, x[0])[0];
            case "StudShares.ofPull, second stud" -> StudShares.ofPull(new double[] {x[1], x[2]}, x[0])[1];
            default -> throw new IllegalArgumentException(formula);
        };
    }

    private static double rails(String formula, double[] x) {
        return switch (formula) {
            case "BevelledRail.wedge" -> BevelledRail.wedge(x[0], Math.toRadians(x[1]));
            case "BevelledRail.squeezeAfterLeaning" ->
                BevelledRail.squeezeAfterLeaning(x[0], x[1], Math.toRadians(x[2]));
            case "BevelledRail.designPull" -> BevelledRail.designPull(x[0], x[1]);
            case "BevelledRail.staysHooked" -> yes(BevelledRail.staysHooked(x[0], x[1]));
            case "BevelledStrip.spanStress" -> BevelledStrip.spanStress(x[0], x[1], x[2], x[3], x[4]);
            case "BevelledStrip.overhangStress" -> BevelledStrip.overhangStress(x[0], x[1], x[2], x[3], x[4]);
            case "BevelledStrip.crossGrainStress" -> BevelledStrip.crossGrainStress(x[0], x[1], x[2], x[3], x[4]);
            case "BevelledStrip.crossGrainAtScrews" ->
                BevelledStrip.crossGrainAtScrews(x[0], x[1], x[2], x[3], x[4], x[5], x[6], x[7]);
            case "BevelledStrip.crossBendingOfPlywood" -> BevelledStrip.crossBendingOfPlywood(x[0], x[1], x[2], x[3]);
            case "BevelledStrip.twistStress" -> BevelledStrip.twistStress(x[0], x[1], x[2], x[3], x[4]);
            case "BevelledStrip.contactLength" -> BevelledStrip.contactLength(x[0], x[1]);
            case "BevelledStrip.featherShear" -> BevelledStrip.featherShear(x[0], x[1], x[2]);
            case "BevelledStrip.rollingShearStrength" -> BevelledStrip.rollingShearStrength(x[0]);
            case "RailBetweenSides.bendingStress" -> RailBetweenSides.bendingStress(x[0], x[1], x[2], x[3], x[4]);
            case "RailBetweenSides.moment, two studs" ->
                RailBetweenSides.moment(Arrays.copyOfRange(x, 0, 2), Arrays.copyOfRange(x, 2, 4), x[4]);
            case "RailBetweenSides.stress" -> RailBetweenSides.stress(x[0], x[1], x[2], x[3]);
            case "RailBetweenSides.endForce" -> RailBetweenSides.endForce(x[0], x[1]);
            case "RailOnThreeStuds.endShare", "RailOnThreeStuds.endShare, overhanging" ->
                RailOnThreeStuds.endShare(x[0], x[1]);
            default -> throw new IllegalArgumentException(formula);
        };
    }

    private static DowelConnection connection(double[] x) {
        double bearing = DowelBearing.small(x[2]);
        return new DowelConnection(x[0], x[1], bearing, bearing, x[3], x[4]);
    }

    private static double yes(boolean answer) {
        return answer ? 1 : 0;
    }
}
