package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.fastener.DowelBearing;
import fairgrain.fastener.DowelConnection;
import fairgrain.fastener.LoadDuration;
import fairgrain.fastener.YieldLimit;
import fairgrain.part.Setting;
import fairgrain.place.MoistureYear;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The strength of one screw in each kind of wall, worked out by hand from the printed rules. */
class ScrewStrengthTest {
    private static final double LB = 4.4482216152605;
    private static final double INCH = 0.0254;
    private static final Stud SPF = Hung.stud("spruce-pine-fir");
    private static final Setting WET = new Setting(
            new MoistureYear(new Estimate(0.14, 0.005), new Estimate(0.20, 0.005), 0.005, "a test", Hung.ANY),
            Hung.IN.day(),
            Hung.IN.rule(),
            Hung.IN.deviations());

    /** Two screws in each stud, so long, through 19 mm of rail and what lies behind it. */
    private static Hanging through(HangingScrew screw, double lengthIn, int perStud, Stud stud, double gapMm) {
        Hanging h = Hung.cabinet(5, perStud, gapMm);
        Fixing f = h.fixing();
        return h.fixing(new Fixing(screw, Length.inches(lengthIn), f.rows(), f.studs(), f.rail()))
                .stud(stud);
    }

    private static ScrewHold hold(String screw, double lengthIn, int perStud, Stud stud, double gapMm) {
        return through(Hung.screw(screw), lengthIn, perStud, stud, gapMm).hold();
    }

    private static ScrewHold wet(Hanging dry) {
        return new Hanging(
                        dry.part(),
                        dry.hung(),
                        dry.cabinet(),
                        dry.fixing(),
                        dry.stud(),
                        dry.layers(),
                        dry.cases(),
                        dry.carries(),
                        dry.open(),
                        WET)
                .hold();
    }

    private static Backing plywood(double mm) {
        return new Backing("plywood", 0.42, Length.mm(mm), Hung.ANY);
    }

    @Test
    void wetWoodHoldsSevenTenthsInEveryWayAndTheSteelOfTheScrewAsBefore() {
        for (Stud stud : List.of(SPF, plywood(18))) {
            Hanging asked = through(Hung.screw("wood-screw-10"), 3, 2, stud, 12.7);
            ScrewHold dry = asked.hold();
            ScrewHold wet = wet(asked);
            assertThat(wet.lateral()).isCloseTo(0.7 * dry.lateral(), within(1e-9));
            assertThat(wet.ungapped()).isCloseTo(0.7 * dry.ungapped(), within(1e-9));
            assertThat(wet.withdrawal()).isCloseTo(0.7 * dry.withdrawal(), within(1e-9));
            assertThat(wet.head()).isCloseTo(0.7 * dry.head(), within(1e-9));
            assertThat(wet.shortLateral()).isCloseTo(0.7 * dry.shortLateral(), within(1e-9));
            assertThat(wet.shortWithdrawal()).isCloseTo(0.7 * dry.shortWithdrawal(), within(1e-9));
            assertThat(wet.steel()).isEqualTo(dry.steel());
        }
    }

    /** A small screw yields at 2.2 times its ten-year value, and its thread has 0.67 of a mean of 5.5 times its own. */
    @Test
    void inAShortTestAScrewHoldsWhatItsDivisorsTookOff() {
        ScrewHold ten = hold("wood-screw-10", 3, 2, SPF, 12.7);
        assertThat(ten.shortLateral()).isCloseTo(ten.lateral() / 0.9 * 2.2, within(1e-9));
        assertThat(ten.shortWithdrawal()).isCloseTo(ten.withdrawal() / 0.9 * 15_700 / 2850 * 0.67, within(1e-9));
        ScrewHold lag = hold("lag-screw-1-4", 3, 1, SPF, 12.7);
        // across the grain of the rail: 10 · 0.173 + 0.5, times 1.25
        assertThat(lag.shortLateral()).isCloseTo(lag.lateral() / 0.9 * 2.23 * 1.25, within(1e-9));
        assertThat(lag.shortWithdrawal()).isCloseTo(lag.withdrawal() / 0.9 * 4.5 * 0.67, within(1e-9));
        // in a column both lose the same by the group rule
        ScrewHold column = hold("lag-screw-1-4", 3, 4, SPF, 12.7);
        assertThat(column.group()).isLessThan(0.9);
        assertThat(column.shortLateral()).isCloseTo(column.lateral() / 0.9 * 2.23 * 1.25, within(1e-9));
    }

    /** 18 mm of thread: 0.75 · 15 700 · 0.42² · 0.19 · 18/25.4 = 279.7 lb on average, 1/5.5 of it, 0.9 for good. */
    @Test
    void plywoodHoldsAThreadByItsThickness() {
        ScrewHold hold = hold("wood-screw-10", 3, 2, plywood(18), 12.7);
        double mean = 0.75 * 15_700 * 0.42 * 0.42 * 0.19 * 18 / 25.4 * LB;
        assertThat(hold.withdrawal()).isCloseTo(mean / 5.5 * 0.9, within(1e-6)).isCloseTo(203.6, within(0.05));
        assertThat(hold.shortWithdrawal()).isCloseTo(0.67 * mean, within(1e-6));
        assertThat(hold.point().toMm()).isCloseTo(3 * 25.4 - 19 - 12.7, within(1e-9));
        assertThat(hold.leastDepth()).isEqualTo(Length.mm(18));
        assertThat(hold.lateral())
                .isLessThan(hold("wood-screw-10", 3, 2, plywood(30), 12.7).lateral());
    }

    private static void holdsNothing(ScrewHold hold) {
        assertThat(hold.used(0, 0)).isEqualTo(ScrewHold.USED_UP);
        assertThat(hold.straightLine(0, 0, LoadDuration.PERMANENT)).isEqualTo(ScrewHold.USED_UP);
        assertThat(hold.usedInATest(0, 0)).isEqualTo(ScrewHold.USED_UP);
        assertThat(hold.weakest(1, 1)).isEqualTo("it does not reach");
        assertThat(hold.lateral()).isZero();
        assertThat(hold.withdrawal()).isZero();
    }

    @Test
    void aScrewThatDoesNotReachHoldsNothingInAnyWall() {
        // 1 in through 19 mm of rail and 12.7 mm of board
        for (Stud stud : List.of(SPF, plywood(18), Hung.stud("steel-stud-54-mil"))) {
            ScrewHold hold = hold("wood-screw-10", 1, 2, stud, 12.7);
            holdsNothing(hold);
            assertThat(hold.point()).isEqualTo(Length.ZERO);
        }
        holdsNothing(through(declared(Optional.empty()), 1, 2, SPF, 12.7).hold());
        holdsNothing(anchored(1000, 1).hold());
    }

    @Test
    void aThreadThatHasGoneThroughTheWoodHoldsNothing() {
        // half of 6 in is thread: it begins 76 mm in, past 19 mm of rail and 18 mm of panel or 38 mm of blocking
        holdsNothing(hold("lag-screw-1-4", 6, 1, plywood(18), 0));
        WoodStud blocking = ((WoodStud) SPF).asBlocking(Length.mm(140), Length.mm(38));
        holdsNothing(hold("lag-screw-1-4", 6, 1, blocking, 0));
        // with 4 in it begins 51 mm in, six of the blocking left
        assertThat(hold("lag-screw-1-4", 4, 1, blocking, 0).withdrawal()).isPositive();
    }

    /** 0.85 t d F / 3, whatever the moisture; the screw must show three threads and its drill point behind the sheet. */
    @Test
    void aSteelStudHoldsTheThreadByItsSheet() {
        ScrewHold hold = hold("wood-screw-10", 3, 2, Hung.stud("steel-stud-54-mil"), 12.7);
        assertThat(hold.withdrawal()).isCloseTo(0.85 * 0.001437 * 0.19 * INCH * 310.2e6 / 3, within(1e-6));
        assertThat(hold.depth().toMm()).isCloseTo(3 * 25.4 - 19 - 12.7, within(1e-9));
        assertThat(hold.point()).isEqualTo(hold.depth());
        assertThat(hold.leastDepth().toMm()).isCloseTo(11.437, within(1e-9));
        assertThat(hold.usedInATest(10, 10)).as("no test values of steel").isEqualTo(ScrewHold.USED_UP);
    }

    /** On a sheet of 18 mil the root bears 1.375 F t D/3, less than tilting; a foil of 0.3 mm tilts first: 4.2 √(t³ d) F/3. */
    @Test
    void inSteelItIsSaidWhetherTheSheetOrTheWoodGivesWayFirst() {
        Stud thin = Hung.stud("steel-stud-18-mil");
        ScrewHold straight = hold("wood-screw-10", 3, 2, thin, 0);
        assertThat(straight.lateral()).isCloseTo(1.375 * 227.5e6 * 0.000477 * 0.152 * INCH / 3, within(1e-6));
        assertThat(straight.ungapped()).isEqualTo(straight.lateral());
        assertThat(straight.weakest(1, 0)).isEqualTo("the member in the wall crushes under a straight screw");
        ScrewHold gapped = hold("wood-screw-10", 3, 2, thin, 12.7);
        assertThat(gapped.lateral()).isLessThan(straight.lateral());
        assertThat(gapped.ungapped()).isEqualTo(straight.lateral());
        assertThat(gapped.weakest(1, 0)).isEqualTo("both members crush and the straight screw turns");
        SteelStud foil = new SteelStud("foil", "a foil", List.of(), 12, Length.mm(0.3), 227.5e6, Hung.ANY);
        ScrewHold tilts = hold("wood-screw-14", 3, 2, foil, 0);
        double d = 0.242 * INCH;
        assertThat(tilts.lateral()).isCloseTo(4.2 * Math.sqrt(2.7e-11 * d) * 227.5e6 / 3, within(1e-6));
        assertThat(tilts.weakest(1, 0)).isEqualTo("the screw tilts in the steel of the stud or tears it");
    }

    @Test
    void aWetRailOnSteelStudsHoldsSevenTenthsWhereTheWoodGivesWay() {
        Hanging asked = through(Hung.screw("wood-screw-10"), 3, 2, Hung.stud("steel-stud-18-mil"), 12.7);
        ScrewHold dry = asked.hold();
        ScrewHold wet = wet(asked);
        assertThat(wet.lateral()).isCloseTo(0.7 * dry.lateral(), within(1e-9));
        assertThat(wet.weakest(1, 0)).as("the rail all the more").isEqualTo(dry.weakest(1, 0));
        assertThat(wet.withdrawal()).as("the sheet does not know").isEqualTo(dry.withdrawal());
        assertThat(wet.head()).isCloseTo(0.7 * dry.head(), within(1e-9));
    }

    private static DeclaredScrew declared(Optional<Force> head) {
        return new DeclaredScrew(
                "a screw",
                Length.mm(5),
                Force.newtons(2200),
                Force.newtons(1100),
                head,
                DeclaredScrew.Given.ULTIMATE,
                5.5,
                0.42,
                Optional.empty(),
                Length.mm(16));
    }

    /** 400 N of thread, 200 N sideways, 300 N of head; wet 280, 140 and 210. Six diameters of 5 mm deep. */
    @Test
    void declaredValuesAreForDryWoodToo() {
        Hanging asked = through(declared(Optional.of(Force.newtons(1650))), 3, 2, SPF, 12.7);
        ScrewHold dry = asked.hold();
        assertThat(new double[] {dry.withdrawal(), dry.lateral(), dry.head(), dry.steel()})
                .containsExactly(new double[] {400, 200, 300, 300}, within(1e-9));
        ScrewHold wet = wet(asked);
        assertThat(new double[] {wet.withdrawal(), wet.lateral(), wet.head(), wet.steel()})
                .containsExactly(new double[] {280, 140, 210, 210}, within(1e-9));
        assertThat(dry.leastDepth().toMm()).isCloseTo(30, within(1e-9));
        assertThat(dry.point().toMm()).isCloseTo(3 * 25.4 - 19 - 12.7, within(1e-9));
        assertThat(through(declared(Optional.empty()), 3, 2, plywood(18), 12.7)
                        .hold()
                        .point())
                .as("no deeper than the panel is thick")
                .isEqualTo(Length.mm(18));
    }

    private static Hanging anchored(double shear, double lengthIn) {
        DeclaredAnchor anchor = new DeclaredAnchor(
                "anchor",
                Length.mm(8),
                Length.mm(20),
                Force.newtons(2000),
                Force.newtons(shear),
                DeclaredScrew.Given.ALLOWABLE,
                false,
                1,
                Masonry.Kind.SOLID,
                Length.mm(50),
                Length.mm(80),
                Length.mm(15));
        Hanging like = Hung.cabinet(5, 1, 12.7);
        return new Hanging(
                "cabinet",
                like.hung(),
                like.cabinet(),
                new Fixing(
                        anchor, Length.inches(lengthIn), new Row(Length.mm(720), 1), Hung.at(90, 400, 710), Hung.RAIL),
                new Masonry(Masonry.Kind.SOLID),
                like.layers(),
                LoadCases.ALWAYS,
                Optional.empty(),
                List.of(),
                Hung.IN);
    }

    @Test
    void ofAnAnchorItIsSaidWhetherTheWallOrTheRailGivesWayFirst() {
        ScrewHold weak = anchored(100, 4).hold();
        assertThat(weak.lateral()).isEqualTo(100);
        assertThat(weak.weakest(1, 0)).isEqualTo("the wall gives way, by its maker's value");
        assertThat(weak.depth().toMm()).isCloseTo(4 * 25.4 - 19 - 12.7, within(1e-9));
        assertThat(weak.leastDepth()).isEqualTo(Length.mm(50));
        assertThat(anchored(100, 4).answer().deepEnough().what())
                .isEqualTo("least depth in the wall, against the depth reached");
        assertThat(through(Hung.screw("wood-screw-10"), 3, 2, SPF, 0)
                        .answer()
                        .deepEnough()
                        .what())
                .isEqualTo("least depth in the stud, against the depth reached");
        ScrewHold strong = anchored(5000, 4).hold();
        assertThat(strong.lateral()).isLessThan(5000);
        assertThat(strong.weakest(1, 0)).startsWith("the screw bends").isNotEqualTo(weak.weakest(1, 0));
        assertThat(weak.weakest(0, 1)).isEqualTo("its head pulls through the rail");
    }

    /**
     * The group rule by a calculator of its own: slip 180 000 D^1.5 lb/in; 7000 MPa on 38 by 89 mm of stud and on four diameters of a rail
     * of 19 mm; 100 mm apart where that is not said.
     */
    @Test
    void lagScrewsInAColumnLoseByTheGroupRule() {
        assertThat(hold("lag-screw-1-4", 3, 1, SPF, 0).group()).isEqualTo(1);
        assertThat(hold("lag-screw-1-4", 3, 2, SPF, 0).group()).isCloseTo(0.95522, within(5e-6));
        assertThat(hold("lag-screw-1-4", 3, 4, SPF, 0).group()).isCloseTo(0.76445, within(5e-6));
        // of blocking four diameters work, 38 mm thick
        WoodStud blocking = ((WoodStud) SPF).asBlocking(Length.mm(140), Length.mm(38));
        assertThat(hold("lag-screw-1-4", 3, 4, blocking, 0).group()).isCloseTo(0.82232, within(5e-6));
        Hanging near = through(Hung.screw("lag-screw-1-4"), 3, 2, SPF, 0);
        Row apart = new Row(Length.mm(720), 2, Optional.of(Length.mm(50)));
        Fixing f = near.fixing();
        assertThat(near.fixing(new Fixing(f.screw(), f.length(), apart, f.studs(), f.rail()))
                        .hold()
                        .group())
                .isCloseTo(0.97638, within(5e-6));
    }

    /** 2 in through 19 mm: 31.8 mm, of which the tip of 0.1562 in bears nothing; an upright stud is loaded along its grain. */
    @Test
    void aLagScrewBearsWithoutItsTipAndAWoodScrewWithHalfOfIt() {
        double rail = DowelBearing.across(0.42, 0.00635);
        DowelConnection lag = new DowelConnection(
                0.0318 - 0.1562 * INCH,
                0.019,
                DowelBearing.along(0.42),
                rail,
                0.173 * INCH,
                Hung.screw("lag-screw-1-4").bendingYield());
        assertThat(hold("lag-screw-1-4", 2, 1, SPF, 0).lateral())
                .isCloseTo(
                        0.9 * YieldLimit.reference(lag, 0, 0.00635, Math.PI / 2).least(), within(1e-6));
        // No. 10, 31.8 mm, less than ten diameters: one diameter of its tip is taken off
        double small = DowelBearing.small(0.42);
        DowelConnection ten = new DowelConnection(
                0.0318 - 0.19 * INCH,
                0.019,
                small,
                small,
                0.152 * INCH,
                Hung.screw("wood-screw-10").bendingYield());
        assertThat(hold("wood-screw-10", 2, 1, SPF, 0).lateral())
                .isCloseTo(0.9 * YieldLimit.reference(ten, 0, 0.19 * INCH, 0).least(), within(1e-6));
    }

    @Test
    void theWeakestLinkOfAPulledScrewIsNamed() {
        ScrewHold ten = hold("wood-screw-10", 3, 2, SPF, 12.7);
        String sideways = "the screw bends in the member in the wall and crushes the one under the head";
        assertThat(ten.weakest(1, 0)).isEqualTo(sideways);
        assertThat(ten.weakest(0, 1)).isEqualTo("its head pulls through the rail");
        assertThat(ten.weakest(ten.lateral(), ten.head()))
                .as("of equal uses the weight's")
                .isEqualTo(sideways);
        // 1 3/8 in through the rail alone: 16 mm of thread hold less than the head
        assertThat(hold("wood-screw-10", 1.375, 2, SPF, 0).weakest(0, 1)).isEqualTo("its thread pulls out of the stud");
        assertThat(anchored(100, 4).hold().straightOnTheStud().weakest(1, 0))
                .isEqualTo("the wall gives way, by its maker's value");
    }
}
