package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.fastener.BevelledStrip;
import fairgrain.fastener.ClearWood;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is said of a hanging rail 19 mm thick and 80 mm deep, and what mends one that splits. */
class RailWordsTest {
    private static final LongGrain STRONG = LongGrain.of(80e6, 9e6);

    private static Rail rail(Rail.Kind kind, Rail.Held held, OptionalDouble across, LongGrain along, double screwsUp) {
        return new Rail(
                "a rail",
                kind,
                0.42,
                Length.mm(19),
                Optional.of(Length.mm(80)),
                Optional.of(Length.mm(screwsUp)),
                held,
                across,
                along,
                Hung.ANY);
    }

    private static RailStrength on(double kg, Rail rail) {
        Hanging h = Hung.cabinet(kg, 2, 0);
        return new RailStrength(h.fixing(h.fixing().rail(rail)));
    }

    private static RailStrength solid(double kg, Rail.Held held) {
        return on(kg, rail(Rail.Kind.SOLID, held, OptionalDouble.of(4e6), STRONG, 40));
    }

    private static Finding finding(RailStrength strength) {
        return strength.findings().get(0);
    }

    private static List<String> notes(RailStrength strength) {
        return finding(strength).notes().stream().map(Words::sentence).toList();
    }

    @Test
    void whatIsTakenOfTheRailIsSaid() {
        String edges =
                "It is taken that the case holds the rail all along the edges that were said, so that it does not"
                        + " bend from side to side.";
        String plywood = "Plywood does not split along a row of screws; the figure is that of solid wood.";
        RailStrength both = solid(5, Rail.Held.BOTH_EDGES);
        assertThat(notes(both)).contains(edges).doesNotContain(plywood);
        assertThat(finding(both).evidence().sources()).doesNotContain(BevelledStrip.LIMIT_SOURCE, ClearWood.SOURCE);
        RailStrength top = solid(5, Rail.Held.TOP_EDGE);
        assertThat(notes(top)).contains(edges);
        assertThat(finding(top).evidence().sources())
                .contains(BevelledStrip.LIMIT_SOURCE)
                .doesNotContain(ClearWood.SOURCE);
        RailStrength ends = solid(5, Rail.Held.ENDS);
        assertThat(notes(ends)).doesNotContain(edges);
        assertThat(finding(ends).evidence().sources()).contains(BevelledStrip.LIMIT_SOURCE, ClearWood.SOURCE);
        RailStrength sheet =
                on(5, rail(Rail.Kind.PLYWOOD, Rail.Held.TOP_EDGE, OptionalDouble.empty(), LongGrain.UNKNOWN, 40));
        assertThat(notes(sheet)).contains(plywood);
        assertThat(finding(sheet).evidence().sources()).doesNotContain(BevelledStrip.LIMIT_SOURCE);
    }

    /** A rail that cannot roll needs no strength across its grain, one that cannot bend none along it; plywood does not split. */
    @Test
    void aStrengthThatIsNeededAndNotKnownIsMissing() {
        Missing across = new Missing(
                "how strong a rail is across its grain", "hold the rail along both edges, so that it cannot roll");
        Missing along = new Missing(
                "how strong a rail is in bending",
                "fix the rail to the top of the case along its edge, or make it of a wood whose strength is in the"
                        + " table");
        for (Rail.Held held : Rail.Held.values()) {
            Rail unknown = rail(Rail.Kind.SOLID, held, OptionalDouble.empty(), LongGrain.UNKNOWN, 40);
            List<Missing> wanted = held == Rail.Held.BOTH_EDGES
                    ? List.of()
                    : held == Rail.Held.TOP_EDGE ? List.of(across) : List.of(across, along);
            assertThat(finding(on(5, unknown)).missing()).as(held.word()).isEqualTo(wanted);
            assertThat(finding(solid(5, held)).missing()).as(held.word()).isEmpty();
        }
        assertThat(finding(on(
                                5,
                                rail(
                                        Rail.Kind.PLYWOOD,
                                        Rail.Held.TOP_EDGE,
                                        OptionalDouble.empty(),
                                        LongGrain.UNKNOWN,
                                        40)))
                        .missing())
                .isEmpty();
    }

    @Test
    void whatHoldsIsOfferedNoCure() {
        assertThat(finding(solid(5, Rail.Held.BOTH_EDGES)).remedies()).isEmpty();
        assertThat(finding(solid(5, Rail.Held.BOTH_EDGES)).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
    }

    /** The force told is that of the heavy contents on the worst stud: they stand at 200 and 606 of 800 mm. */
    @Test
    void theWorstStudIsTold() {
        RailStrength both = solid(20, Rail.Held.BOTH_EDGES);
        double heavy = (20 + 8.8 + 25) * 9.80665 * 206 / 406;
        assertThat(finding(both).why().numbers().get(0).si()).isCloseTo(heavy, within(1e-3));
    }

    // Cures

    private static List<String> cures(RailStrength strength) {
        return finding(strength).remedies().stream()
                .map(remedy -> remedy.words().in(ShopRule.MILLIMETRES))
                .toList();
    }

    private static void hold(RailStrength strength) {
        for (Remedy remedy : finding(strength).remedies()) {
            assertThat(remedy.then().findings().get(0).verdict())
                    .as(remedy.words().sentence())
                    .isIn(Verdict.HOLDS, Verdict.CLOSE);
        }
    }

    @Test
    void aRailThatOnlyRollsIsHeldAlongBothEdgesFirst() {
        RailStrength rolls = on(20, rail(Rail.Kind.SOLID, Rail.Held.TOP_EDGE, OptionalDouble.of(1e6), STRONG, 40));
        assertThat(finding(rolls).verdict()).isEqualTo(Verdict.FAILS);
        assertThat(cures(rolls)).hasSizeLessThanOrEqualTo(3);
        assertThat(cures(rolls).get(0))
                .isEqualTo("Hold the rail along both edges, so that it can neither roll nor bend.");
        RailStrength then = (RailStrength) finding(rolls).remedies().get(0).then();
        assertThat(then.hanging().fixing().rail())
                .isEqualTo(rolls.hanging().fixing().rail().held(Rail.Held.BOTH_EDGES));
        hold(rolls);
    }

    /** Screws near the upper edge split it off: set lower, as low as their edge distance lets them, and as much lower on the wall. */
    @Test
    void screwsNearTheUpperEdgeAreSetLower() {
        RailStrength high = on(40, rail(Rail.Kind.SOLID, Rail.Held.BOTH_EDGES, OptionalDouble.of(4e6), STRONG, 64));
        assertThat(finding(high).verdict()).isEqualTo(Verdict.FAILS);
        assertThat(cures(high).get(0)).endsWith("above the lower edge of the rail, so much lower on the wall.");
        RailStrength then = (RailStrength) finding(high).remedies().get(0).then();
        Fixing was = high.hanging().fixing();
        Fixing is = then.hanging().fixing();
        assertThat(is.rail().below()).isLessThan(was.rail().below());
        assertThat(is.rail().depth()).isEqualTo(was.rail().depth());
        assertThat(was.top().height().metres() - is.top().height().metres())
                .as("the rail stays where it is")
                .isCloseTo(was.rail().below() - is.rail().below(), within(1e-12));
        hold(high);
    }

    /** Where lower screws do not do it is deeper downward, and otherwise thicker with screws as much longer. */
    @Test
    void aRailTooWeakIsMadeDeeperOrThicker() {
        RailStrength heavy = on(100, rail(Rail.Kind.SOLID, Rail.Held.BOTH_EDGES, OptionalDouble.of(4e6), STRONG, 40));
        assertThat(finding(heavy).verdict()).isEqualTo(Verdict.FAILS);
        assertThat(cures(heavy)).isNotEmpty();
        for (Remedy remedy : finding(heavy).remedies()) {
            Rail then = ((RailStrength) remedy.then()).hanging().fixing().rail();
            Rail was = heavy.hanging().fixing().rail();
            assertThat(then.thickness().metres() > was.thickness().metres()
                            || then.below() < was.below()
                            || !then.depth().equals(was.depth()))
                    .as(remedy.words().sentence())
                    .isTrue();
        }
        hold(heavy);
    }
}
