package fairgrain.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class YieldLimitPropertyTest {
    private static final double ROUNDING = 1e-12;

    @Provide
    Arbitrary<DowelConnection> screws() {
        Arbitrary<Double> lengths =
                Arbitraries.doubles().between(0.005, 0.12).ofScale(5).withoutEdgeCases();
        Arbitrary<Double> bearings = Arbitraries.doubles().between(5e6, 1e8).withoutEdgeCases();
        return Combinators.combine(
                        lengths,
                        lengths,
                        bearings,
                        bearings,
                        Arbitraries.doubles().between(0.002, 0.01).ofScale(6),
                        Arbitraries.doubles().between(2e8, 1e9))
                .as(DowelConnection::new);
    }

    @Property
    void noGapGivesThePrintedClosedForm(@ForAll("screws") DowelConnection screw) {
        ModeLoads closed = YieldLimit.touching(screw);
        ModeLoads gap = YieldLimit.acrossGap(screw, 0);
        for (YieldMode mode : YieldMode.values()) {
            assertThat(gap.in(mode)).as(mode.label()).isCloseTo(closed.in(mode), within(ROUNDING * closed.in(mode)));
        }
    }

    @Property
    void aLargerGapIsNeverStronger(
            @ForAll("screws") DowelConnection screw,
            @ForAll @Scale(5) @DoubleRange(max = 0.03) double gap,
            @ForAll @Scale(5) @DoubleRange(max = 0.03) double more) {
        ModeLoads narrow = YieldLimit.acrossGap(screw, gap);
        ModeLoads wide = YieldLimit.acrossGap(screw, gap + more);
        for (YieldMode mode : YieldMode.values()) {
            assertThat(wide.in(mode)).as(mode.label()).isLessThanOrEqualTo(narrow.in(mode) * (1 + ROUNDING));
        }
    }

    @Property
    void everySizeTwiceAsLargeCarriesFourTimesAsMuch(
            @ForAll("screws") DowelConnection s, @ForAll @Scale(5) @DoubleRange(max = 0.03) double gap) {
        var twice = new DowelConnection(
                2 * s.mainLength(),
                2 * s.sideLength(),
                s.mainBearing(),
                s.sideBearing(),
                2 * s.diameter(),
                s.bendingYield());
        ModeLoads small = YieldLimit.acrossGap(s, gap);
        ModeLoads large = YieldLimit.acrossGap(twice, 2 * gap);
        for (YieldMode mode : YieldMode.values()) {
            assertThat(large.in(mode))
                    .as(mode.label())
                    .isCloseTo(4 * small.in(mode), within(ROUNDING * large.in(mode)));
        }
    }

    @Property
    @SuppressWarnings("ArgumentSelectionDefectChecker") // the members change places on purpose
    void turnedRoundTheTwoMembersChangeRoles(
            @ForAll("screws") DowelConnection s, @ForAll @Scale(5) @DoubleRange(max = 0.03) double gap) {
        var turned = new DowelConnection(
                s.sideLength(), s.mainLength(), s.sideBearing(), s.mainBearing(), s.diameter(), s.bendingYield());
        ModeLoads one = YieldLimit.acrossGap(s, gap);
        ModeLoads other = YieldLimit.acrossGap(turned, gap);
        assertThat(other.im()).isEqualTo(one.is());
        assertThat(other.ii()).isCloseTo(one.ii(), within(ROUNDING * one.ii()));
        assertThat(other.iiim()).isCloseTo(one.iiis(), within(ROUNDING * one.iiis()));
        assertThat(other.iv()).isCloseTo(one.iv(), within(ROUNDING * one.iv()));
    }

    @Property
    void deeperDenserOrHarderIsNeverWeaker(
            @ForAll("screws") DowelConnection s,
            @ForAll @Scale(5) @DoubleRange(max = 0.03) double gap,
            @ForAll @Scale(5) @DoubleRange(min = 1, max = 2) double more) {
        double least = YieldLimit.acrossGap(s, gap).least() * (1 - ROUNDING);
        assertThat(YieldLimit.acrossGap(
                                new DowelConnection(
                                        s.mainLength() * more,
                                        s.sideLength(),
                                        s.mainBearing(),
                                        s.sideBearing(),
                                        s.diameter(),
                                        s.bendingYield()),
                                gap)
                        .least())
                .as("deeper in the wall")
                .isGreaterThanOrEqualTo(least);
        assertThat(YieldLimit.acrossGap(
                                new DowelConnection(
                                        s.mainLength(),
                                        s.sideLength(),
                                        s.mainBearing() * more,
                                        s.sideBearing() * more,
                                        s.diameter(),
                                        s.bendingYield()),
                                gap)
                        .least())
                .as("denser wood")
                .isGreaterThanOrEqualTo(least);
        assertThat(YieldLimit.acrossGap(
                                new DowelConnection(
                                        s.mainLength(),
                                        s.sideLength(),
                                        s.mainBearing(),
                                        s.sideBearing(),
                                        s.diameter(),
                                        s.bendingYield() * more),
                                gap)
                        .least())
                .as("harder steel")
                .isGreaterThanOrEqualTo(least);
    }

    /** Statics by itself: the force that a straight screw makes in the wood balances about the middle of the gap. */
    @Property
    void aStraightScrewIsInBalance(
            @ForAll("screws") DowelConnection s, @ForAll @Scale(5) @DoubleRange(max = 0.03) double gap) {
        double p = YieldLimit.acrossGap(s, gap).ii();
        double um = s.mainBearing() * s.diameter();
        double us = s.sideBearing() * s.diameter();
        // In each member the screw turns about a point: it presses one way over z, the other way over the rest.
        double zs = (s.sideLength() + p / us) / 2;
        double zm = (s.mainLength() + p / um) / 2;
        double momentSide = momentAtFace(us, zs, s.sideLength());
        double momentMain = momentAtFace(um, zm, s.mainLength());
        // The force P and the moments at the two faces of the gap leave nothing over.
        double scale = us * s.sideLength() * s.sideLength() + um * s.mainLength() * s.mainLength() + p * gap;
        assertThat(-momentSide - momentMain).isCloseTo(p * gap, within(1e-12 * scale));
    }

    /** Of a bearing force u along [0, z] from the face and −u along [z, length]. */
    private static double momentAtFace(double u, double z, double length) {
        return u * z * z / 2 - u * (length - z) * (length + z) / 2;
    }

    @Property
    void theGoverningModeIsTheLeast(
            @ForAll("screws") DowelConnection screw,
            @ForAll @Scale(5) @DoubleRange(max = 0.03) double gap,
            @ForAll @Scale(5) @DoubleRange(max = 1.5) double angle) {
        ModeLoads z = YieldLimit.reference(screw, gap, screw.diameter(), angle);
        for (YieldMode mode : YieldMode.values()) {
            assertThat(z.in(mode)).isGreaterThanOrEqualTo(z.least());
        }
        assertThat(z.least()).isEqualTo(z.in(z.governing()));
        assertThat(z.least()).isLessThan(YieldLimit.acrossGap(screw, gap).least());
    }

    @Test
    void ofEqualModesTheFirstGoverns() {
        assertThat(new ModeLoads(3, 2, 2, 5, 2, 4).governing()).isEqualTo(YieldMode.IS);
        assertThat(new ModeLoads(3, 3, 3, 3, 3, 3).governing()).isEqualTo(YieldMode.IM);
    }

    @Test
    void theModesGoByTheCodesNames() {
        assertThat(Arrays.stream(YieldMode.values()).map(YieldMode::label))
                .containsExactly("Im", "Is", "II", "IIIm", "IIIs", "IV");
        assertThat(YieldMode.IIIS.words())
                .isEqualTo("the screw bends in the member in the wall and crushes the one under the head");
    }

    /** Half an inch, root 0.371 in, along the grain: 4 where wood crushes under a straight screw, 3.6 where it turns, 3.2 where it bends. */
    @Test
    void everyModeHasTheDivisorOfItsOwn() {
        double inch = 0.0254;
        DowelConnection bolt = new DowelConnection(0.05, 0.019, 20e6, 25e6, 0.371 * inch, 3.1e8);
        ModeLoads yield = YieldLimit.acrossGap(bolt, 0.0127);
        ModeLoads z = YieldLimit.reference(bolt, 0.0127, 0.5 * inch, 0);
        // Im: 0.371 in · 50 mm · 20 MPa / 4; Is: 0.371 in · 19 mm · 25 MPa / 4
        assertThat(z.im()).isCloseTo(0.0094234 * 0.05 * 20e6 / 4, within(1e-6));
        assertThat(z.is()).isCloseTo(0.0094234 * 0.019 * 25e6 / 4, within(1e-6));
        assertThat(z.ii()).isCloseTo(yield.ii() / 3.6, within(1e-9));
        assertThat(z.iiim()).isCloseTo(yield.iiim() / 3.2, within(1e-9));
        assertThat(z.iiis()).isCloseTo(yield.iiis() / 3.2, within(1e-9));
        assertThat(z.iv()).isCloseTo(yield.iv() / 3.2, within(1e-9));
    }
}
