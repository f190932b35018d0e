package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.fastener.LoadDuration;
import fairgrain.fastener.RailBetweenSides;
import fairgrain.finding.Caution;
import fairgrain.finding.Check;
import fairgrain.finding.Missing;
import fairgrain.finding.Reliability;
import fairgrain.finding.Verdict;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * Rail and ledger by hand. Studs at 200 and 606 mm of 800: of what stands in the middle the first carries 206/406, of what stands at the left end
 * 606/406; the second then lifts with 200/406 of it.
 */
class RailByHandTest {
    private static final double G = Force.STANDARD_GRAVITY;
    private static final double WEIGHT = 66 * G;
    private static final double MOMENT = (18 * 0.15 + 8 * 0.31 + 40 * 0.22) * G;
    private static final double ADULT = 1.5 * 1112;
    private static final double MIDDLE = 206 / 406.0;
    private static final double END = 606 / 406.0;
    private static final double LIFTS = 200 / 406.0;

    private static Hanging on(Rail.Held held, Optional<Length> apart, HangingScrew screw) {
        Rail rail = new Rail(
                "a rail",
                Rail.Kind.SOLID,
                0.42,
                Length.mm(19),
                Optional.of(Length.mm(80)),
                Optional.of(Length.mm(40)),
                held,
                OptionalDouble.of(4e6),
                LongGrain.of(80e6, 9e6),
                Hung.ANY);
        Hanging h = Hung.cabinet(40, new Row(Length.mm(720), 2, apart), 12.7, Hung.at(200, 606))
                .cases(LoadCases.of(LoadCase.ADULT_LEANING));
        Fixing f = h.fixing();
        return h.fixing(new Fixing(screw, f.length(), f.rows(), f.studs(), rail));
    }

    private static Hanging on(Rail.Held held) {
        return on(held, Optional.empty(), Hung.screw("wood-screw-10"));
    }

    private static Check check(List<Check> checks, String start) {
        return checks.stream()
                .filter(c -> c.what().startsWith(start))
                .findFirst()
                .orElseThrow();
    }

    private static Check rail(Hanging hanging, String start) {
        return check(new RailStrength(hanging).answer().checks(), start);
    }

    /** 14 · 19 · √(40/(1 − 40/80)) N over 1.3 and 1.5; 0.6 of it for good, 0.8 for a week, 0.9 for ten minutes. */
    @Test
    void aRailSplitsLaterUnderAShortLoad() {
        double splits = 14 * 19 * Math.sqrt(80) / 1.3 / 1.5;
        Hanging hanging = on(Rail.Held.BOTH_EDGES);
        Check standing = rail(hanging, "weight on one stud");
        assertThat(standing.demand()).isCloseTo(MIDDLE * WEIGHT, within(1e-6));
        assertThat(standing.capacity()).isCloseTo(0.6 * splits, within(1e-6));
        // one door of 4 kg open to the left, its centre 199 mm beside the middle
        assertThat(rail(hanging, "use of the rail where it is worked hardest, doors open")
                        .demand())
                .isCloseTo((MIDDLE * WEIGHT + 4 * G * 0.199 / 0.406) / (0.8 * splits), within(1e-9));
        assertThat(rail(hanging, "use of the rail where it is worked hardest, adult leaning")
                        .demand())
                .isCloseTo((MIDDLE * WEIGHT + END * ADULT) / (0.9 * splits), within(1e-9));
        assertThat(new RailStrength(hanging).answer().checks())
                .as("a screw gone does not change what splits the rail")
                .noneMatch(c -> c.what().contains("screw gone"));
    }

    /** Pulls of the case alone: M and 0.3 m of the adult on 0.7 m; the second stud would be pushed and has none. */
    @Test
    void aRailThatOnlyTheSidesHoldIsBentBothWaysByWhoeverLeans() {
        double level = (MIDDLE * MOMENT + END * ADULT * 0.3) / 0.7;
        double[] places = {0.182, 0.588};
        double upright = RailBetweenSides.moment(
                places, new double[] {MIDDLE * WEIGHT + END * ADULT, LIFTS * (ADULT - WEIGHT)}, 0.764);
        double out = RailBetweenSides.moment(places, new double[] {level, 0}, 0.764);
        double stress = RailBetweenSides.stress(out, upright, 0.080, 0.019);
        double bent = stress / (40e6 * (1 - 1.645 * 0.16) * 0.65 * 0.9 / 2.3 * 1.6 / 0.9);
        // across the grain: 6 T a/(b t²) on 80 mm of rail, a = 40 mm
        double across = 6 * level * 0.040 / (0.080 * 0.019 * 0.019) / (1e6 * (1 - 1.645 * 0.25) / 2.1 * 1.6 / 0.9);
        double splits = (MIDDLE * WEIGHT + END * ADULT) / (0.9 * 14 * 19 * Math.sqrt(80) / 1.3 / 1.5);
        assertThat(leaning(Rail.Held.ENDS, 20e6)).isCloseTo(bent, within(1e-6)).isGreaterThan(splits);
        assertThat(leaning(Rail.Held.TOP_EDGE, 1e6))
                .isCloseTo(across, within(1e-6))
                .isGreaterThan(splits);
        assertThat(leaning(Rail.Held.BOTH_EDGES, 1e6)).isCloseTo(splits, within(1e-6));
        // standing: 0.9 in place of 1.6 on the strengths
        Check rolls = rail(weak(Rail.Held.TOP_EDGE, 1e6), "bending of the rail across its grain");
        assertThat(rolls.demand()).isCloseTo(6 * MIDDLE * MOMENT / 0.7 * 0.040 / (0.080 * 0.019 * 0.019), within(1e-3));
    }

    /** A rail of 40 MPa along its grain and so much across. */
    private static Hanging weak(Rail.Held held, double across) {
        Hanging h = on(held);
        Rail r = h.fixing().rail();
        return h.fixing(h.fixing()
                .rail(new Rail(
                        r.name(),
                        r.kind(),
                        r.gravity(),
                        r.thickness(),
                        r.depth(),
                        r.screwsUp(),
                        held,
                        OptionalDouble.of(across),
                        LongGrain.of(40e6, 9e6),
                        Hung.ANY)));
    }

    private static double leaning(Rail.Held held, double across) {
        return rail(weak(held, across), "use of the rail where it is worked hardest, adult leaning")
                .demand();
    }

    /** Two screws 30 mm apart reach 15 mm nearer to both edges, and 15 mm farther from the upper one with the lower screw. */
    @Test
    void screwsInAColumnComeNearerToTheEdges() {
        Hanging column = on(Rail.Held.BOTH_EDGES, Optional.of(Length.mm(30)), Hung.screw("wood-screw-10"));
        Check upper = rail(column, "least distance of a screw from the upper edge");
        assertThat(upper.demand()).isCloseTo(2.5 * 0.19 * 0.0254, within(1e-9));
        assertThat(upper.capacity()).isCloseTo(0.025, within(1e-9));
        Check lower = rail(column, "least distance of a screw from the lower edge");
        assertThat(lower.capacity()).isCloseTo(0.025, within(1e-9));
        assertThat(rail(column, "weight on one stud").capacity())
                .isCloseTo(0.6 * 14 * 19 * Math.sqrt(55 / (1 - 55 / 80.0)) / 1.3 / 1.5, within(1e-6));
        Hanging lag = on(Rail.Held.BOTH_EDGES, Optional.of(Length.mm(30)), Hung.screw("lag-screw-1-4"));
        assertThat(rail(lag, "least distance of a screw from the upper edge").demand())
                .as("the edge that is pressed")
                .isCloseTo(4 * 0.00635, within(1e-9));
        assertThat(rail(lag, "least distance of a screw from the lower edge").demand())
                .isCloseTo(1.5 * 0.00635, within(1e-9));
    }

    /** Case 20, doors 8.8, contents 50 kg: half of weight and pull at each end. */
    @Test
    void theJointAtEachEndCarriesHalf() {
        double pull = (20 * 0.15 + 8.8 * 0.31 + 50 * 0.22) * G / 0.7;
        assertThat(new RailStrength(on(Rail.Held.ENDS)).heavyEndForce().newtons())
                .isCloseTo(Math.hypot(78.8 * G, pull) / 2, within(1e-9));
    }

    private static Ledger ledger(LongGrain along) {
        Rail strip = Hung.ledger(Rail.Held.BOTH_EDGES, along);
        return new Ledger(strip, 2, Length.inches(3));
    }

    private static Check ledger(String start) {
        return check(
                new LedgerHold(on(Rail.Held.BOTH_EDGES), ledger(LongGrain.of(80e6, 9e6)))
                        .answer()
                        .checks(),
                start);
    }

    /** Weight by 19 mm over the 40 mm of the screws above the heel; an adult at the end with its weight alone. */
    @Test
    void theScrewsOfALedgerCarryTheWeightOnItsOuterEdge() {
        Hanging hanging = on(Rail.Held.BOTH_EDGES);
        Fixing below = ledger(LongGrain.UNKNOWN).fixing(hanging.fixing());
        ScrewHold hold = new ScrewStrength(below, hanging.gap(), hanging.dampest()).in(hanging.stud());
        double first = MIDDLE * WEIGHT / 2;
        assertThat(ledger("use of the hardest worked screw of the ledger, standing")
                        .demand())
                .isCloseTo(hold.used(first, first * 19 / 40), within(1e-9));
        double leaned = (MIDDLE * WEIGHT + END * ADULT) / 2;
        assertThat(ledger("use of the hardest worked screw of the ledger, adult leaning")
                        .demand())
                .isCloseTo(hold.used(leaned, leaned * 19 / 40, LoadDuration.TEN_MINUTES), within(1e-9));
        assertThat(ledger("least distance of a screw from the edges of the ledger")
                        .capacity())
                .isCloseTo(0.030, within(1e-9));
        // 3 in less 19 mm of ledger and 12.7 mm of board
        assertThat(ledger("least depth of the ledger's screws").capacity()).isCloseTo(0.0445, within(1e-9));
    }

    /** Standing w L²/8 between the studs; leaning w a²/2 + F a past the first, a 200 mm; with a door open the load leans. */
    @Test
    void aLedgerIsBentFromStudToStudAndPastThem() {
        double modulus = 0.019 * 0.070 * 0.070 / 6;
        double w = WEIGHT / 0.8;
        Check standing = ledger("bending of the ledger from stud to stud, standing");
        assertThat(standing.demand()).isCloseTo(w * 0.406 * 0.406 / 8 / modulus, within(1.0));
        assertThat(standing.capacity()).isCloseTo(80e6 * (1 - 1.645 * 0.16) * 0.65 * 0.9 / 2.3, within(1.0));
        Check leaning = ledger("bending of the ledger from stud to stud, adult leaning");
        assertThat(leaning.demand()).isCloseTo((w * 0.02 + ADULT * 0.2) / modulus, within(1.0));
        assertThat(leaning.capacity()).isCloseTo(standing.capacity() * 1.6 / 0.9, within(1.0));
        Check open = ledger("bending of the ledger from stud to stud, doors open");
        assertThat(open.demand())
                .isCloseTo((WEIGHT + 6 * 4 * G * 0.199 / 0.8) / 0.8 * 0.406 * 0.406 / 8 / modulus, within(1.0));
        assertThat(new LedgerHold(on(Rail.Held.BOTH_EDGES), ledger(LongGrain.of(80e6, 9e6)))
                        .answer()
                        .checks())
                .noneMatch(c -> c.what().contains("stud to stud, one screw gone"));
    }

    @Test
    void aLedgerOnSteelStudsIsNotJudged() {
        Hanging steel = Hung.cabinet(5, 2, 0).stud(Hung.stud("steel-stud-54-mil"));
        LedgerHold hold = new LedgerHold(steel, ledger(LongGrain.of(80e6, 9e6)));
        assertThat(hold.findings().get(0).verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(hold.findings().get(0).missing())
                .containsExactly(new Missing(
                        "whether steel studs bear a load at their edge there",
                        "screw the ledger into wood blocking or a plywood backing, and enter that"));
    }

    @Test
    void heavyContentsRestOnTheLedgerAndItsOpenPointsAreAsked() {
        LedgerHold hold = new LedgerHold(on(Rail.Held.BOTH_EDGES), ledger(LongGrain.of(80e6, 9e6)));
        assertThat(hold.part()).isEqualTo("cabinet");
        assertThat(hold.spreads()).isEqualTo(hold.hanging().spreads()).hasSize(1);
        assertThat(new RailStrength(hold.hanging()).part()).isEqualTo("cabinet");
        assertThat(new RailStrength(hold.hanging()).spreads()).hasSize(1);
        assertThat(hold.model()
                        .at(spread -> Reliability.NINETEEN_IN_TWENTY)
                        .weight()
                        .newtons())
                .isCloseTo(78.8 * G, within(1e-6));
        assertThat(hold.findings().get(0).cautions()).contains(Caution.CHILDREN);
        Hanging children = hold.hanging().cases(LoadCases.of(LoadCase.CHILD_CLIMBING, LoadCase.CHILD_ON_DOOR));
        assertThat(new LedgerHold(children, ledger(LongGrain.of(80e6, 9e6)))
                        .findings()
                        .get(0)
                        .cautions())
                .doesNotContain(Caution.CHILDREN);
        Rail thin = ledger(LongGrain.of(80e6, 9e6)).strip().thickness(Length.mm(6));
        assertThat(new LedgerHold(hold.hanging(), new Ledger(thin, 2, Length.inches(3)))
                        .findings()
                        .get(0)
                        .missing())
                .extracting(Missing::what)
                .containsExactly("whether the heads pull through a rail so thin or so thick");
    }
}
