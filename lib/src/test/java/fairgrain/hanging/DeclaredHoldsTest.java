package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.fastener.DowelBearing;
import fairgrain.fastener.DowelConnection;
import fairgrain.fastener.LoadDuration;
import fairgrain.fastener.YieldLimit;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Anchors in masonry and hangers on the case, by what their makers declare. */
class DeclaredHoldsTest {
    private static DeclaredAnchor anchor(
            double tension, double shear, DeclaredScrew.Given given, boolean plastic, Masonry.Kind in) {
        return new DeclaredAnchor(
                "anchor",
                Length.mm(8),
                Length.mm(20),
                new Force(tension),
                new Force(shear),
                given,
                plastic,
                DeclaredAnchor.divisor(given, plastic),
                in,
                Length.mm(50),
                Length.mm(80),
                Length.mm(15));
    }

    private static Hanging anchored(double kg, DeclaredAnchor anchor, double lengthMm, double gapMm) {
        Hanging like = Hung.cabinet(kg, 1, gapMm);
        Fixing fixing = new Fixing(
                anchor, Length.mm(lengthMm), new Row(Length.mm(720), 1), Hung.at(90, 245, 400, 555, 710), Hung.RAIL);
        return new Hanging(
                "cabinet",
                like.hung(),
                like.cabinet(),
                fixing,
                new Masonry(Masonry.Kind.SOLID),
                like.layers(),
                LoadCases.ALWAYS,
                Optional.empty(),
                List.of(),
                Hung.IN);
    }

    @ParameterizedTest
    @CsvSource({
        "ULTIMATE, false, 4",
        "ULTIMATE, true, 7",
        "ALLOWABLE, false, 1",
        "ALLOWABLE, true, 1",
        "CHARACTERISTIC, true, 3.15"
    })
    void aValueIsDividedByWhatItIs(DeclaredScrew.Given given, boolean plastic, double divisor) {
        assertThat(DeclaredAnchor.divisor(given, plastic)).isCloseTo(divisor, within(1e-12));
        ScrewHold hold = anchored(20, anchor(4000, 3000, given, plastic, Masonry.Kind.SOLID), 90, 12)
                .hold();
        assertThat(hold.withdrawal()).isCloseTo(4000 / divisor, within(1e-9));
        // in the rail an 8 mm bolt, its thread 6.4 mm, held in concrete: the bolt bends across 12 mm of lining
        DowelConnection bolt = new DowelConnection(
                0.059, 0.019, 7500 * 6894.757, DowelBearing.wood(0.42, 0.008, Math.PI / 2), 0.0064, 45_000 * 6894.757);
        double wood =
                0.9 * YieldLimit.reference(bolt, 0.012, 0.008, Math.PI / 2).least();
        assertThat(hold.lateral()).isCloseTo(Math.min(3000 / divisor, wood), within(0.01));
        assertThat(hold.gain(LoadDuration.TEN_MINUTES)).isEqualTo(1);
    }

    @Test
    void weightAndPullOfAnAnchorAreAddedStraight() {
        ScrewHold hold = anchored(
                        20, anchor(2000, 400, DeclaredScrew.Given.ALLOWABLE, false, Masonry.Kind.SOLID), 90, 0)
                .hold();
        double pull = Math.min(2000, hold.head());
        assertThat(hold.used(100, 200)).isCloseTo(100 / Math.min(400, hold.lateral()) + 200 / pull, within(1e-9));
    }

    @Test
    void anAnchoredCaseIsJudgedAndWhatIsNotDeclaredIsNot() {
        DeclaredAnchor good = anchor(2000, 2000, DeclaredScrew.Given.ALLOWABLE, false, Masonry.Kind.SOLID);
        Finding holds = anchored(10, good, 90, 12).findings().get(0);
        assertThat(holds.verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        assertThat(holds.sizes()).anyMatch(s -> s.what().equals("anchor 5 from the left end"));
        assertThat(holds.notes()).noneMatch(n -> n.sentence().contains("stud"));
        assertThat(anchored(20, good, 90, 20).findings().get(0).missing())
                .containsExactly(new Missing(
                        "what the anchor holds sideways across what lies between rail and wall",
                        "ask its maker for a value across such a gap, or cut the lining away under the rail"));
        assertThat(anchored(10, good, 90, 15).findings().get(0).missing())
                .as("just the gap that its maker allows")
                .isEmpty();
        DeclaredAnchor concrete = anchor(2000, 2000, DeclaredScrew.Given.ALLOWABLE, false, Masonry.Kind.CONCRETE);
        assertThat(anchored(20, concrete, 90, 12).findings().get(0).missing())
                .containsExactly(new Missing(
                        "what the anchor holds in solid masonry",
                        "its values are for concrete: ask its maker for values in solid masonry"));
        Hanging shaken = anchored(5, good, 90, 12).cases(new LoadCases(List.of(), 1.5, OptionalDouble.of(0.2)));
        assertThat(shaken.findings().get(0).verdict()).isEqualTo(Verdict.NOT_JUDGED);
        // 60 mm less 19 and 12 reach 29 mm of the 50 that are asked for
        assertThat(anchored(20, good, 60, 12).findings().get(0).verdict()).isEqualTo(Verdict.FAILS);
        assertThat(anchored(400, good, 90, 12).findings().get(0).verdict()).isEqualTo(Verdict.FAILS);
    }

    @Test
    void masonryAndScrewsAreNotMixedUp() {
        Hanging wood = Hung.cabinet(20, 2, 0);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> wood.stud(new Masonry(Masonry.Kind.HOLLOW)))
                .withMessage("masonry takes anchors with values of their maker, and nothing else takes them");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DeclaredAnchor(
                        "plug",
                        Length.mm(8),
                        Length.mm(20),
                        new Force(1000),
                        new Force(1000),
                        DeclaredScrew.Given.ULTIMATE,
                        true,
                        4,
                        Masonry.Kind.SOLID,
                        Length.mm(50),
                        Length.mm(80),
                        Length.ZERO))
                .withMessage("the factor of ultimate values of such an anchor must be at least 7.0, but was 4.0");
    }

    private static Hangers hangers(double down, Optional<Force> out) {
        return new Hangers(
                "keyhole plates",
                Hung.at(100, 700),
                Length.mm(700),
                new Force(down),
                out,
                DeclaredScrew.Given.ULTIMATE,
                4);
    }

    /** Two hangers of a level load carry half each, weight and pull, added straight. */
    @Test
    void hangersShareTheWeightAndThePull() {
        Hanging hanging = Hung.cabinet(20, 2, 0);
        HangerHold hold = new HangerHold(hanging, hangers(2000, Optional.of(new Force(1000))));
        Hanging.Held held = hanging.answer();
        double pull = held.pull().newtons() * 0.700 / 0.680; // the hangers sit 20 mm lower than the screws
        assertThat(hold.answer().checks().get(0).demand())
                .isCloseTo(held.weight().newtons() / 2 / 500 + pull / 2 / 250, within(1e-6));
    }

    @Test
    void aHangerWithoutADeclaredPullIsNotJudgedAndOneOfAPairMustNotLetGo() {
        HangerHold unknown = new HangerHold(Hung.cabinet(2, 2, 0), hangers(20_000, Optional.empty()));
        assertThat(unknown.findings().get(0).missing())
                .containsExactly(new Missing(
                        "what a hanger holds against a pull away from the wall", "ask its maker and enter 'out'"));
        // with one of two gone, nothing keeps the case level: that is said, and judged for three
        assertThat(unknown.answer().checks()).noneMatch(c -> c.what().contains("one hanger gone"));
        assertThat(unknown.findings().get(0).notes())
                .anyMatch(n -> n.sentence().startsWith("If one of the two lets go the case falls"));
        HangerHold three = new HangerHold(
                Hung.cabinet(2, 2, 0), hangers(20_000, Optional.empty()).at(Hung.at(100, 400, 700)));
        assertThat(three.answer().checks())
                .anyMatch(c -> c.what().equals("use of the hardest worked hanger, one hanger gone, against all of it"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> hangers(2000, Optional.empty()).at(Hung.at(100)))
                .withMessage("a case hangs on two hangers at least, side by side");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new HangerHold(
                        Hung.cabinet(2, 2, 0), hangers(2000, Optional.empty()).at(Hung.at(100, 900))))
                .withMessage("every hanger must sit on the case, between its ends");
    }

    private static Ledger ledger(int perStud, LongGrain along) {
        Rail strip = Hung.ledger(Rail.Held.BOTH_EDGES, along);
        return new Ledger(strip, perStud, Length.inches(3));
    }

    /** All of the weight on the outer edge: T = V 19/40. */
    @Test
    void aLedgerCarriesAllOfTheWeightOnItsOuterEdge() {
        Hanging hanging = Hung.cabinet(20, 2, 0);
        LedgerHold.Held held = new LedgerHold(hanging, ledger(2, LongGrain.of(80e6, 9e6))).answer();
        double v = hanging.answer().weight().newtons();
        assertThat(held.weight().newtons()).isCloseTo(v, within(1e-9));
        assertThat(held.pull().newtons()).isCloseTo(v * 19 / 40, within(1e-9));
        // 406 mm from stud to stud; past the last one 200 mm: v a²/2 is nearly as much as v L²/8
        double w = v / 0.8;
        assertThat(held.checks().get(1).what())
                .isEqualTo("bending of the ledger from stud to stud, standing, against what is allowed");
        assertThat(held.checks().get(1).demand())
                .isCloseTo(w * 0.406 * 0.406 / 8 / (0.019 * 0.070 * 0.070 / 6), within(1.0));
    }

    @Test
    void aLedgerOfUnknownStrengthIsNotJudgedAndOneTooWeakIsMended() {
        assertThat(new LedgerHold(Hung.cabinet(5, 2, 0), ledger(2, LongGrain.UNKNOWN))
                        .findings()
                        .get(0)
                        .missing())
                .containsExactly(new Missing(
                        "how strong the ledger is in bending",
                        "make it of a solid wood whose strength is in the table"));
        Finding weak = new LedgerHold(Hung.cabinet(60, 2, 12.7), ledger(1, LongGrain.of(80e6, 9e6)))
                .findings()
                .get(0);
        assertThat(weak.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(weak.remedies()).hasSize(1);
        Remedy remedy = weak.remedies().get(0);
        assertThat(remedy.then().findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
    }

    @Property(tries = 50)
    void besideALedgerTheScrewsAboveCarryTheirShareAndAllOfThePull(@ForAll @DoubleRange(min = 5, max = 100) double kg) {
        Hanging alone = Hung.cabinet(kg, 2, 12.7);
        Hanging beside = alone.fixing(alone.fixing().beside(ledger(2, LongGrain.UNKNOWN)));
        for (int i = 0; i < 2; i++) {
            Hanging.Use one = alone.answer().uses().get(i);
            Hanging.Use two = beside.answer().uses().get(i);
            assertThat(two.shear().newtons()).isCloseTo(one.shear().newtons() / 2, within(1e-9));
            assertThat(two.pull().newtons()).isEqualTo(one.pull().newtons());
            assertThat(two.used()).isLessThan(one.used());
        }
    }

    /** Whoever leans: heavier contents, spread evenly, never rest lighter. */
    @Property(tries = 100)
    void aLedgerIsReckonedWhateverRestsOnIt(
            @ForAll @DoubleRange(min = 1, max = 300) double kg, @ForAll @DoubleRange(min = 0, max = 20) double more) {
        LedgerHold once = leaning(kg);
        LedgerHold heavier = leaning(kg + more);
        for (int i = 0; i < once.answer().checks().size(); i++) {
            assertThat(heavier.answer().checks().get(i).demand())
                    .as(once.answer().checks().get(i).what())
                    .isGreaterThanOrEqualTo(once.answer().checks().get(i).demand() * (1 - 1e-9));
        }
    }

    private static LedgerHold leaning(double kg) {
        Hanging like = Hung.cabinet(5, 2, 12.7);
        HungWeight hung = new HungWeight(List.of(
                new HungWeight.Item("case", 5, 5, 0.15, 0, OptionalDouble.empty(), HungWeight.Stays.ON),
                new HungWeight.Item("contents", kg, kg, 0.15, 0, OptionalDouble.empty(), HungWeight.Stays.NOT_YET)));
        return new LedgerHold(
                like.cases(LoadCases.of(LoadCase.ADULT_LEANING)).hung(hung), ledger(2, LongGrain.of(80e6, 9e6)));
    }

    /** More of what is declared never uses an anchor more; a larger divisor never less. */
    @Property(tries = 100)
    void anAnchorDeclaredStrongerIsNeverUsedMore(
            @ForAll @DoubleRange(min = 200, max = 20_000) double tension,
            @ForAll @DoubleRange(min = 200, max = 20_000) double shear,
            @ForAll @DoubleRange(min = 1, max = 500) double more) {
        double once = Hung.used(
                anchored(20, anchor(tension, shear, DeclaredScrew.Given.ALLOWABLE, false, Masonry.Kind.SOLID), 90, 12));
        assertThat(Hung.used(anchored(
                        20,
                        anchor(tension + more, shear + more, DeclaredScrew.Given.ALLOWABLE, false, Masonry.Kind.SOLID),
                        90,
                        12)))
                .isLessThanOrEqualTo(once * (1 + 1e-12));
        assertThat(Hung.used(anchored(
                        20, anchor(tension, shear, DeclaredScrew.Given.ULTIMATE, true, Masonry.Kind.SOLID), 90, 12)))
                .isGreaterThanOrEqualTo(once * (1 - 1e-12));
    }
}
