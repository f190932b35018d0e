package fairgrain.fastener;

import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** Wrong units and impossible sizes are refused in words that name the value. */
class RefusalTest {
    private static final double PSI_4650 = 4650 * Inches.PA_PER_PSI;

    @Test
    void densityInKilogramsIsNotASpecificGravity() {
        refused(
                () -> ReferenceWithdrawal.woodScrew(420, 0.0048),
                "specific gravity must be from 0.2 to 1.3 (ratio), but was 420");
        refused(
                () -> ReferenceWithdrawal.lagScrew(Double.NaN, 0.0048),
                "specific gravity must be from 0.2 to 1.3 (ratio), but was NaN");
    }

    @Test
    void millimetresAreNotMetres() {
        refused(
                () -> ReferenceWithdrawal.woodScrew(0.42, 4.8),
                "wood screw diameter must be from 0.001 to 0.05 m, but was 4.8");
        refused(
                () -> UltimateWithdrawal.woodScrew(0.42, 0.0048, 32),
                "length of thread must be from 0 to 1 m, but was 32");
        refused(
                () -> HeadPullThrough.capacity(0.42, 9.2, 0.019),
                "head diameter must be from 0.001 to 0.05 m, but was 9.2");
        refused(
                () -> HeadPullThrough.capacity(0.42, 0.0092, 19),
                "thickness under the head must be from 2.0E-4 to 0.5 m, but was 19");
        refused(() -> EdgeAndSpacing.studEdge(38), "width of the stud must be from 0.02 to 0.3 m, but was 38");
        refused(
                () -> SteelStudScrew.pullOut(0.48, 0.0048, 2.3e8),
                "thickness of the sheet must be from 2.0E-4 to 0.01 m, but was 0.48");
        refused(
                () -> YieldLimit.acrossGap(no10(), 12.7),
                "gap between the members must be from 0 to 1 m, but was 12.7");
    }

    @Test
    void degreesAreNotRadians() {
        refused(
                () -> DowelBearing.wood(0.42, 0.0064, 90),
                "angle to the grain must be from 0 to 1.5707963267948966 rad, but was 90");
        refused(
                () -> DowelBearing.wood(0.42, 0.0048, 90),
                "angle to the grain must be from 0 to 1.5707963267948966 rad, but was 90");
        refused(
                () -> ReductionTerm.angleFactor(45),
                "angle between load and grain must be from 0 to 1.5707963267948966 rad, but was 45");
        refused(
                () -> BevelledRail.wedge(800, 45),
                "bevel must be from 0.17453292519943295 to 1.3962634015954636 rad, but was 45");
    }

    @Test
    void megapascalsAreNotPascals() {
        refused(
                () -> new DowelConnection(0.03, 0.019, 23, PSI_4650, 0.0039, 5.5e8),
                "bearing strength of the wall member must be from 10000 to 3.0E9 Pa, but was 23");
        refused(
                () -> SteelStudScrew.bearing(0.0005, 0.0048, 230),
                "tensile strength of the sheet must be from 1.0E8 to 1.5E9 Pa, but was 230");
    }

    @Test
    void percentIsNotAFraction() {
        refused(
                () -> Adjustment.wetServiceLateral(12),
                "moisture content in service must be from 0 to 1.5 (fraction; 12 % is 0.12), but was 12");
    }

    @Test
    void warmPlacesAreNotJudged() {
        refused(() -> Adjustment.temperature(320), "temperature of the wood must be from 200 to 311.15 K, but was 320");
    }

    @Test
    void aFactorNeverRaisesAValue() {
        refused(
                () -> Adjustment.axial(100, LoadDuration.PERMANENT, 1.2, 1),
                "wet service factor must be from 0 to 1 (ratio), but was 1.2");
    }

    @Test
    void withoutCapacityThereIsNoRatio() {
        refused(() -> CombinedLoad.interaction(100, 10, 0, 300), "lateral value must be above 0 N, but was 0");
        refused(() -> CombinedLoad.straightLine(100, 10, 200, 0), "axial value must be above 0 N, but was 0");
        refused(() -> CombinedLoad.screw(100, 10, 200, 300, 0), "head pull-through must be above 0 N, but was 0");
        refused(() -> CombinedLoad.code(Double.NaN, 10, 200, 300), "shear must be from 0 to 1000000.0 N, but was NaN");
    }

    @Test
    void theRootIsNotThickerThanTheScrew() {
        refused(
                () -> ReductionTerm.divisor(0.003, 0.004, 0, YieldMode.IV),
                "nominal diameter must be from 0.004 to 0.05 m, no less than the root, but was 0.003");
    }

    @Test
    void threadIsNotLongerThanTheScrew() {
        refused(
                () -> Penetration.thread(0.05, 0.06, 0, 0.019, 0.089),
                "length of thread must be from 0 to 0.05 m, no more than the screw, but was 0.06");
    }

    @Test
    void oneStudIsNotShared() {
        refused(
                () -> StudShares.ofWeight(new double[] {0.4}, 0.5),
                "sharing needs at least two studs, but there were 1; one stud takes a couple on two screws");
        refused(
                () -> StudShares.ofPull(new double[] {}, 0.5),
                "sharing needs at least two studs, but there were 0; one stud takes a couple on two screws");
        refused(
                () -> StudShares.ofWeight(new double[] {0.4, 0.4}, 0.5),
                "studs must be at least 0.01 m apart, but two were at 0.4 and 0.4 m");
        refused(
                () -> StudShares.coupleOnOneStud(800, 0.1, 0),
                "distance between the screws must be from 0.01 to 5 m, but was 0");
    }

    @Test
    void rowsAndNumbersGoTogether() {
        refused(
                () -> RowShares.pulls(100, new double[] {0.7, 0.3}, new int[] {4}),
                "there must be a number of screws for each row, but there were 2 rows and 1 numbers");
        refused(
                () -> RowShares.pulls(100, new double[] {}, new int[] {}),
                "there must be a number of screws for each row, but there were 0 rows and 0 numbers");
        refused(
                () -> RowShares.pulls(100, new double[] {0.7}, new int[] {0}),
                "screws in a row must be from 1 to 100 (count), but was 0");
        refused(
                () -> Overturning.moment(new double[] {1, 2}, new double[] {1}),
                "there must be one arm for each load, but there were 2 loads and 1 arms");
    }

    @Test
    void theRowMustSitAboveTheBearing() {
        refused(
                () -> Overturning.pull(100, 0.02, 0.02),
                "height of the row must be from 0.03 to 5 m, above the bearing, but was 0.02");
        refused(
                () -> BevelledRail.needed(100, 800, 0.01, 0.02, 0.02),
                "height of the bevel must be from 0.03 to 5 m, above the bearing, but was 0.02");
    }

    @Test
    void theBevelLiesWithinItsStrip() {
        refused(
                () -> BevelledRail.caseStripPull(800, 800, 0.019, 0.025, 0.06, 0.04),
                "distance of the bevel from the wall must be from 0 to 0.019 m, within the strip, but was 0.025");
    }

    @Test
    void aCountersinkLeavesWood() {
        refused(
                () -> HeadPullThrough.thicknessUnderCountersink(0.5, 0.5),
                "countersink depth must be from 0 to 0.4998 m, less than the member, but was 0.5");
    }

    @Test
    void aLoadedEdgeLiesInsideTheMember() {
        refused(
                () -> SplittingForce.characteristic(0.019, 0.1, 0.1),
                "distance to the loaded edge must be from 0.001 to 0.099 m, inside the member, but was 0.1");
    }

    private static DowelConnection no10() {
        return new DowelConnection(0.03, 0.019, PSI_4650, PSI_4650, 0.0039, 5.5e8);
    }

    private static void refused(ThrowingCallable call, String message) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessage(message);
    }
}
