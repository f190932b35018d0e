package fairgrain.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class ScrewInWoodTest {
    @Property
    void denserWoodAndThickerScrewsNeverHoldLess(
            @ForAll @Scale(4) @DoubleRange(min = 0.2, max = 1.2) double g,
            @ForAll @Scale(4) @DoubleRange(max = 0.1) double denser,
            @ForAll @Scale(5) @DoubleRange(min = 0.002, max = 0.012) double d,
            @ForAll @Scale(5) @DoubleRange(max = 0.003) double thicker) {
        assertThat(ReferenceWithdrawal.woodScrew(g + denser, d + thicker))
                .isGreaterThanOrEqualTo(ReferenceWithdrawal.woodScrew(g, d));
        assertThat(ReferenceWithdrawal.lagScrew(g + denser, d + thicker))
                .isGreaterThanOrEqualTo(ReferenceWithdrawal.lagScrew(g, d));
        assertThat(ReferenceWithdrawal.plainNail(g + denser, d + thicker))
                .isGreaterThanOrEqualTo(ReferenceWithdrawal.plainNail(g, d));
        assertThat(HeadPullThrough.capacity(g + denser, d + thicker, 0.019))
                .isGreaterThanOrEqualTo(HeadPullThrough.capacity(g, d, 0.019) * (1 - 1e-12));
        assertThat(ScrewSteel.tension(d + thicker, 5e8)).isGreaterThanOrEqualTo(ScrewSteel.tension(d, 5e8));
    }

    @Property
    void testMeansLieFourToSixTimesAboveTheReferenceValues(
            @ForAll @Scale(4) @DoubleRange(min = 0.2, max = 1.2) double g,
            @ForAll @Scale(5) @DoubleRange(min = 0.002, max = 0.012) double d,
            @ForAll @Scale(4) @DoubleRange(min = 0.01, max = 0.1) double l) {
        double wood = UltimateWithdrawal.woodScrew(g, d, l) / (ReferenceWithdrawal.woodScrew(g, d) * l);
        double lag = UltimateWithdrawal.lagScrew(g, d, l) / (ReferenceWithdrawal.lagScrew(g, d) * l);
        double nail = UltimateWithdrawal.plainNail(g, d, l) / (ReferenceWithdrawal.plainNail(g, d) * l);
        assertThat(wood).isCloseTo(YieldMargin.WOOD_SCREW, within(1e-9)).isCloseTo(5.51, within(0.005));
        assertThat(lag).isCloseTo(YieldMargin.LAG_SCREW, within(1e-9)).isCloseTo(4.5, within(0.05));
        assertThat(nail).isCloseTo(YieldMargin.PLAIN_NAIL, within(1e-9)).isCloseTo(5.7, within(0.05));
        assertThat(ShortTimeStrength.withdrawal(100, wood)).isCloseTo(67 * wood, within(1e-9));
    }

    @Property
    void thickerWoodUnderTheHeadNeverHoldsLess(
            @ForAll @Scale(4) @DoubleRange(min = 0.005, max = 0.012) double head,
            @ForAll @Scale(4) @DoubleRange(min = 0.005, max = 0.04) double t,
            @ForAll @Scale(4) @DoubleRange(max = 0.02) double more) {
        assertThat(HeadPullThrough.capacity(0.42, head, t + more))
                .isGreaterThanOrEqualTo(HeadPullThrough.capacity(0.42, head, t) * (1 - 1e-12));
    }

    @Test
    void theTwoHeadFormulasMeet() {
        double head = 0.0092;
        double t = 2.5 * head;
        assertThat(HeadPullThrough.capacity(0.42, head, Math.nextUp(t)))
                .isCloseTo(HeadPullThrough.capacity(0.42, head, t), within(1e-9));
    }

    @Test
    void theHeadRangeIncludesItsEnds() {
        double least = 5.0 / 16 * Inches.M;
        double most = 1.5 * Inches.M;
        assertThat(HeadPullThrough.isInStatedRange(0.234 * Inches.M, least)).isTrue();
        assertThat(HeadPullThrough.isInStatedRange(0.5 * Inches.M, most)).isTrue();
        assertThat(HeadPullThrough.isInStatedRange(0.233 * Inches.M, least)).isFalse();
        assertThat(HeadPullThrough.isInStatedRange(0.501 * Inches.M, most)).isFalse();
        assertThat(HeadPullThrough.isInStatedRange(0.4 * Inches.M, 0.006)).isFalse();
        assertThat(HeadPullThrough.isInStatedRange(0.4 * Inches.M, least - 2e-6))
                .isFalse();
        assertThat(HeadPullThrough.isInStatedRange(0.4 * Inches.M, 0.0383)).isFalse();
    }

    @Test
    void aFlushHeadCutsIntoTheWoodThatHoldsIt() {
        // No. 10 flat head, 82°: (9.22 − 4.83)/2 / tan 41°
        double depth = HeadPullThrough.countersinkDepth(0.00922, 0.00483, Math.toRadians(82));
        assertThat(depth).isCloseTo(0.002525, within(1e-6));
        double left = HeadPullThrough.thicknessUnderCountersink(0.019, depth);
        assertThat(left).isEqualTo(0.019 - depth);
        assertThat(HeadPullThrough.capacity(0.42, 0.00922, left))
                .isLessThan(HeadPullThrough.capacity(0.42, 0.00922, 0.019));
    }

    @Test
    void endGrainGivesNothingInWithdrawalAndTwoThirdsSideways() {
        assertThat(EndGrain.WITHDRAWAL).isEqualTo(0);
        assertThat(EndGrain.lateral(300)).isCloseTo(200, within(1e-9));
        assertThat(EndGrain.LAG_WITHDRAWAL_IN_THE_CODE).isEqualTo(0.75);
    }

    @Property
    void bearingBetweenTheGrainsLiesBetweenTheTwo(
            @ForAll @Scale(4) @DoubleRange(min = 0.2, max = 0.9) double g,
            @ForAll @Scale(4) @DoubleRange(min = 0.0064, max = 0.02) double d,
            @ForAll @Scale(4) @DoubleRange(max = 1.5) double angle) {
        double along = DowelBearing.along(g);
        double across = DowelBearing.across(g, d);
        double between = DowelBearing.wood(g, d, angle);
        assertThat(between).isBetween(Math.min(along, across) * (1 - 1e-12), Math.max(along, across) * (1 + 1e-12));
        assertThat(DowelBearing.wood(g, d, 0)).isCloseTo(along, within(1e-12 * along));
        assertThat(DowelBearing.wood(g, d, Math.PI / 2)).isCloseTo(across, within(1e-12 * across));
    }

    @Test
    void theGrainMattersFromAQuarterInchOn() {
        double justUnder = 0.2499 * Inches.M;
        assertThat(DowelBearing.wood(0.5, justUnder, 0)).isEqualTo(DowelBearing.small(0.5));
        assertThat(DowelBearing.wood(0.5, justUnder, 1)).isEqualTo(DowelBearing.small(0.5));
        assertThat(DowelBearing.wood(0.5, 0.25 * Inches.M, 0)).isCloseTo(DowelBearing.along(0.5), within(1e-3));
        assertThat(DowelBearing.wood(0.5, 6.35 / 1000, 0)).isCloseTo(DowelBearing.along(0.5), within(1e-3));
    }

    @Test
    void steelBearsInProportionToItsStrength() {
        double psi = Inches.PA_PER_PSI;
        // the printed 61 850 and 87 000 psi are these, rounded
        assertThat(DowelBearing.coldFormedSteel(45_000 * psi) / psi).isCloseTo(61_850, within(50.0));
        assertThat(DowelBearing.hotRolledSteel(58_000 * psi) / psi).isCloseTo(87_000, within(1e-6));
    }

    @Test
    void steelGetsSofterBandByBand() {
        double psi = Inches.PA_PER_PSI;
        double[] limits = {0.142, 0.177, 0.236, 0.273, 0.344};
        double[] strengths = {100_000, 90_000, 80_000, 70_000, 60_000, 45_000};
        for (int i = 0; i < limits.length; i++) {
            double limit = limits[i] * Inches.M;
            assertThat(BendingYield.commonSteel(limit) / psi).isCloseTo(strengths[i], within(1e-6));
            assertThat(BendingYield.commonSteel(limit + 2e-6) / psi).isCloseTo(strengths[i + 1], within(1e-6));
        }
    }

    @Test
    void theDivisorChangesByDiameterRootModeAndAngle() {
        double quarter = 0.25 * Inches.M;
        double half = 0.5 * Inches.M;
        double right = Math.PI / 2;
        assertThat(ReductionTerm.divisor(0.19 * Inches.M, 0.152 * Inches.M, right, YieldMode.IV))
                .as("small: direction does not matter")
                .isEqualTo(2.2);
        assertThat(ReductionTerm.divisor(quarter, 0.173 * Inches.M, 0, YieldMode.IM))
                .isCloseTo(2.23, within(1e-12));
        assertThat(ReductionTerm.divisor(quarter, 0.173 * Inches.M, right, YieldMode.IM))
                .isCloseTo(2.23 * 1.25, within(1e-12));
        assertThat(ReductionTerm.divisor(half, 0.371 * Inches.M, 0, YieldMode.IM))
                .isEqualTo(4);
        assertThat(ReductionTerm.divisor(half, 0.371 * Inches.M, 0, YieldMode.IS))
                .isEqualTo(4);
        assertThat(ReductionTerm.divisor(half, 0.371 * Inches.M, 0, YieldMode.II))
                .isEqualTo(3.6);
        assertThat(ReductionTerm.divisor(half, 0.371 * Inches.M, right, YieldMode.IIIS))
                .isEqualTo(4);
        assertThat(ReductionTerm.diameterFactor(0.17 * Inches.M + 2e-6)).isCloseTo(2.2, within(0.001));
        assertThat(ReductionTerm.diameterFactor(0.24 * Inches.M)).isCloseTo(2.9, within(1e-12));
    }

    @Property
    void aLongerScrewNeverReachesLessUntilItsPointComesOut(
            @ForAll @Scale(4) @DoubleRange(min = 0.04, max = 0.1) double length,
            @ForAll @Scale(4) @DoubleRange(max = 0.02) double longer) {
        double thread = 0.03;
        double side = 0.019;
        double gap = 0.0127;
        double stud = 0.089;
        double d = 0.0048;
        double p = Penetration.depth(length, side, gap, stud);
        double more = Penetration.depth(length + longer, side, gap, stud);
        assertThat(more).isGreaterThanOrEqualTo(p).isLessThanOrEqualTo(stud);
        assertThat(Penetration.woodScrewBearing(more, d)).isGreaterThanOrEqualTo(Penetration.woodScrewBearing(p, d));
        assertThat(Penetration.woodScrewBearing(p, d)).isLessThanOrEqualTo(p);
        double held = Penetration.thread(length, thread, 0, side + gap, stud);
        assertThat(Penetration.thread(length + longer, thread, 0, side + gap, stud))
                .isGreaterThanOrEqualTo(held);
        assertThat(held).isLessThanOrEqualTo(Math.min(thread, p) + 1e-12);
    }

    @Test
    void aPointThatComesOutTakesThreadWithIt() {
        assertThat(Penetration.thread(0.06, 0.03, 0, 0.02, 0.03)).isCloseTo(0.02, within(1e-12));
        assertThat(Penetration.thread(0.05, 0.03, 0, 0.02, 0.03)).isCloseTo(0.03, within(1e-12));
        assertThat(Penetration.thread(0.09, 0.03, 0, 0.02, 0.03))
                .as("all thread is past the member")
                .isEqualTo(0);
        assertThat(Penetration.lagScrewBearing(0.09, 0.02, 0, 0.03, 0.005)).isEqualTo(0.03);
        assertThat(Penetration.depth(0.02, 0.019, 0.0127, 0.089))
                .as("too short to reach")
                .isEqualTo(0);
    }

    @Test
    void theTipComesOffBelowTenDiameters() {
        double d = 0.005;
        assertThat(Penetration.woodScrewBearing(0.05, d)).isEqualTo(0.05);
        assertThat(Penetration.woodScrewBearing(0.0499, d)).isCloseTo(0.0449, within(1e-12));
        assertThat(Penetration.woodScrewBearing(0.004, d)).isEqualTo(0);
    }

    @Test
    void tooShallowIsToldApart() {
        double no10 = 0.19 * Inches.M;
        assertThat(Penetration.isEnoughForWoodScrew(6 * no10, no10)).isTrue();
        assertThat(Penetration.isEnoughForWoodScrew(0.0286, no10)).isFalse();
        assertThat(Penetration.isEnoughForLagScrew(1.0 * Inches.M, 0.25 * Inches.M))
                .isTrue();
        assertThat(Penetration.isEnoughForLagScrew(0.99 * Inches.M, 0.25 * Inches.M))
                .isFalse();
    }

    @Test
    void factorsMultiplyAndWetWoodHoldsLess() {
        assertThat(Adjustment.lateral(100, LoadDuration.PERMANENT, 0.7, 1, 0.9, 0.8, 0.5))
                .isCloseTo(100 * 0.9 * 0.7 * 0.9 * 0.8 * 0.5, within(1e-9));
        assertThat(Adjustment.axial(100, LoadDuration.SEVEN_DAYS, 0.7, 1)).isCloseTo(87.5, within(1e-9));
        assertThat(Adjustment.lateral(100, LoadDuration.TEN_YEARS, 1, 0.8, 1, 1, 1))
                .as("warm wood holds less")
                .isCloseTo(80, within(1e-9));
        assertThat(Adjustment.axial(100, LoadDuration.TEN_YEARS, 1, 0.8)).isCloseTo(80, within(1e-9));
        assertThat(Adjustment.wetServiceLateral(0.19)).isEqualTo(1);
        assertThat(Adjustment.wetServiceLateral(Math.nextUp(0.19))).isEqualTo(0.7);
        assertThat(Adjustment.wetServiceWithdrawal(0.25)).isEqualTo(0.7);
        assertThat(Adjustment.wetServiceNailWithdrawal(0.25)).isEqualTo(0.25);
        assertThat(Adjustment.wetServiceNailWithdrawal(0.12)).isEqualTo(1);
        assertThat(Adjustment.temperature(311)).isEqualTo(1);
    }

    @Test
    void shorterLoadsMayBeLarger() {
        LoadDuration[] durations = LoadDuration.values();
        for (int i = 1; i < durations.length; i++) {
            assertThat(durations[i].factor()).isGreaterThan(durations[i - 1].factor());
        }
        assertThat(LoadDuration.TEN_MINUTES.factor()).isEqualTo(1.6);
        assertThat(durations)
                .extracting(LoadDuration::words)
                .containsExactly("permanent", "ten years", "two months", "seven days", "ten minutes");
        assertThat(LoadDuration.PERMANENT.factor()).isEqualTo(0.9);
    }

    @Test
    void screwsOfARowShareUnevenly() {
        double ea = 1e8;
        double gamma = GroupAction.slipWoodToMetal(0.25 * Inches.M);
        assertThat(gamma).isCloseTo(1.5 * GroupAction.slipWoodToWood(0.25 * Inches.M), within(1e-6));
        assertThat(GroupAction.factor(1, 0.1, ea, ea, gamma)).isCloseTo(1, within(1e-9));
        double before = 1 + 1e-9;
        for (int n = 1; n <= 10; n++) {
            double factor = GroupAction.factor(n, 0.1, ea, 2 * ea, gamma);
            assertThat(factor).isLessThanOrEqualTo(before).isPositive();
            assertThat(factor).isCloseTo(GroupAction.factor(n, 0.1, 2 * ea, ea, gamma), within(1e-12));
            before = factor;
        }
    }

    @Test
    void aBoredScrewMaySitNearerTheEdge() {
        double d = 0.0048;
        assertThat(EdgeAndSpacing.smallEdgeBored(d)).isCloseTo(0.012, within(1e-12));
        assertThat(EdgeAndSpacing.smallEnd(d, true, true)).isCloseTo(10 * d, within(1e-12));
        assertThat(EdgeAndSpacing.smallEnd(d, false, true)).isCloseTo(15 * d, within(1e-12));
        assertThat(EdgeAndSpacing.smallEnd(d, true, false)).isCloseTo(5 * d, within(1e-12));
        assertThat(EdgeAndSpacing.smallEnd(d, false, false)).isCloseTo(10 * d, within(1e-12));
        assertThat(EdgeAndSpacing.smallAlongGrain(d, true)).isCloseTo(10 * d, within(1e-12));
        assertThat(EdgeAndSpacing.smallAlongGrain(d, false)).isCloseTo(15 * d, within(1e-12));
        assertThat(EdgeAndSpacing.smallAcrossGrain(d, true)).isCloseTo(3 * d, within(1e-12));
        assertThat(EdgeAndSpacing.smallAcrossGrain(d, false)).isCloseTo(5 * d, within(1e-12));
    }

    @Test
    void aStudFoundSixMillimetresOffStillTakesTheUsualScrews() {
        double edge = EdgeAndSpacing.studEdge(0.038);
        assertThat(edge / (0.19 * Inches.M)).as("No. 10").isCloseTo(2.7, within(0.05));
        assertThat(edge).isGreaterThan(EdgeAndSpacing.smallEdgeBored(0.19 * Inches.M));
        assertThat(edge / 0.00635).as("1/4 lag").isCloseTo(2.0, within(0.05));
        assertThat(edge).isGreaterThan(EdgeAndSpacing.largeEdge(0.00635, false));
        assertThat(edge).isLessThan(EdgeAndSpacing.largeEdge(0.00635, true));
        assertThat(EdgeAndSpacing.largeEnd(0.00635, true)).isCloseTo(7 * 0.00635, within(1e-12));
        assertThat(EdgeAndSpacing.largeEnd(0.00635, false)).isCloseTo(4 * 0.00635, within(1e-12));
        assertThat(EdgeAndSpacing.largeSpacing(0.00635)).isCloseTo(4 * 0.00635, within(1e-12));
    }

    @Test
    void pilotHolesGrowWithDensity() {
        double root = 0.0039;
        assertThat(PilotHole.pulledWoodScrew(0.5, root)).isEqualTo(0);
        assertThat(PilotHole.pulledWoodScrew(Math.nextUp(0.5), root)).isCloseTo(0.7 * root, within(1e-12));
        assertThat(PilotHole.pulledWoodScrew(0.6, root)).isCloseTo(0.7 * root, within(1e-12));
        assertThat(PilotHole.pulledWoodScrew(Math.nextUp(0.6), root)).isCloseTo(0.9 * root, within(1e-12));
        assertThat(PilotHole.sidewaysWoodScrew(0.6, root)).isEqualTo(root);
        assertThat(PilotHole.sidewaysWoodScrew(0.59, root)).isCloseTo(0.875 * root, within(1e-12));
        PilotHole.Hole soft = PilotHole.lagScrewThread(0.42, 0.00635);
        PilotHole.Hole middling = PilotHole.lagScrewThread(0.55, 0.00635);
        PilotHole.Hole dense = PilotHole.lagScrewThread(0.67, 0.00635);
        assertThat(soft.least()).isCloseTo(0.40 * 0.00635, within(1e-12));
        assertThat(middling.least()).isCloseTo(0.60 * 0.00635, within(1e-12));
        assertThat(dense.least()).isCloseTo(0.65 * 0.00635, within(1e-12));
        assertThat(PilotHole.lagScrewThread(0.6, 0.00635)).isEqualTo(middling);
        assertThat(PilotHole.lagScrewThread(0.5, 0.00635)).isEqualTo(soft);
        assertThat(soft.most()).isCloseTo(0.7 * 0.00635, within(1e-12));
        assertThat(middling.most()).isCloseTo(0.75 * 0.00635, within(1e-12));
        assertThat(dense.most()).isCloseTo(0.85 * 0.00635, within(1e-12));
    }

    @Test
    void theDivisorsOfBoardAreTheRoundedOnes() {
        assertThat(PanelScrew.PARTICLEBOARD_STANDING).isEqualTo(10);
        assertThat(PanelScrew.MDF_STANDING).isEqualTo(15);
        assertThat(PanelScrew.PARTICLEBOARD_LONG_TERM).isEqualTo(6.5);
        assertThat(PanelScrew.MDF_LONG_TERM).isEqualTo(7.3);
        assertThat(PanelScrew.PARTICLEBOARD_DAMP).isEqualTo(1.5);
        assertThat(PanelScrew.PLYWOOD).isEqualTo(5.5);
    }

    @Test
    void boardHoldsLessThanSolidWoodAndItsEdgeLeast() {
        double face = PanelScrew.particleboardFace(0.7, 0.0042, 0.016);
        double edge = PanelScrew.particleboardEdge(0.7, 0.0042, 0.016);
        assertThat(edge / face).isCloseTo(2055.0 / 2655, within(1e-12));
        double solid = UltimateWithdrawal.woodScrew(0.5, 0.0042, 0.016);
        assertThat(PanelScrew.plywoodFace(0.5, 0.0042, 0.016)).isCloseTo(0.75 * solid, within(1e-9));
        assertThat(PanelScrew.plywoodEdge(0.5, 0.0042, 0.016)).isCloseTo(0.5 * solid, within(1e-9));
        assertThat(PanelScrew.MDF_STANDING).isGreaterThan(PanelScrew.PARTICLEBOARD_STANDING);
        assertThat(PanelScrew.PARTICLEBOARD_STANDING * PanelScrew.PARTICLEBOARD_DAMP)
                .as("k_mod 0.20 in the damp")
                .isGreaterThanOrEqualTo(PanelScrew.divisor(0.20));
        assertThat(PanelScrew.PLYWOOD).isGreaterThan(PanelScrew.divisor(0.60));
        assertThat(PanelScrew.MDF_STANDING).isGreaterThan(PanelScrew.divisor(0.20));
        assertThat(PanelScrew.PARTICLEBOARD_STANDING).isGreaterThan(PanelScrew.divisor(0.30));
    }

    @Property
    void aThickerFarSheetIsNeverWeaker(
            @ForAll @Scale(6) @DoubleRange(min = 0.0004, max = 0.002) double near,
            @ForAll @Scale(6) @DoubleRange(min = 0.0004, max = 0.004) double far,
            @ForAll @Scale(6) @DoubleRange(max = 0.002) double thicker) {
        double d = 0.0048;
        double fu = 3.1e8;
        double thin = SteelStudScrew.shear(near, fu, far, fu, d);
        assertThat(SteelStudScrew.shear(near, fu, far + thicker, fu, d)).isGreaterThanOrEqualTo(thin);
        assertThat(thin).isLessThanOrEqualTo(SteelStudScrew.bearing(near, d, fu));
    }

    @Test
    void aWashersEdgeBeyondHalfAnInchDoesNotCount() {
        assertThat(SteelStudScrew.pullOver(0.001, 0.02, 3e8))
                .isEqualTo(SteelStudScrew.pullOver(0.001, 0.5 * Inches.M, 3e8));
        assertThat(SteelStudScrew.pullOver(0.001, 0.009, 3e8)).isLessThan(SteelStudScrew.pullOver(0.001, 0.01, 3e8));
    }

    @Test
    void theScrewMustOutlastTheSheetByAQuarter() {
        assertThat(SteelStudScrew.screwOutlastsSheet(125, 100)).isTrue();
        assertThat(SteelStudScrew.screwOutlastsSheet(124.9, 100)).isFalse();
    }

    @Test
    void theMarginLosesWhatTheReferenceValueAlreadyHolds() {
        assertThat(YieldMargin.atPermanentLoad(2.2)).isCloseTo(1.375, within(1e-12));
        assertThat(YieldMargin.atPermanentLoad(YieldMargin.PLAIN_NAIL)).isCloseTo(3.56, within(0.01));
    }

    @Test
    void halfTheYieldStrengthOnTheRootIsAllowed() {
        assertThat(ScrewSteel.tension(0.004, 5e8)).isCloseTo(0.5 * 5e8 * Math.PI * 4e-6, within(1e-9));
    }
}
