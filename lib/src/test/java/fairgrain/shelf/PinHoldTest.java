package fairgrain.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.bending.PinInHole;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.material.SheetGood;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class PinHoldTest {
    private static final List<SheetGood> SHEETS = SheetGood.read(
            new InputStreamReader(
                    Objects.requireNonNull(PinHoldTest.class.getResourceAsStream("/fairgrain/data/sheet-goods.csv")),
                    StandardCharsets.UTF_8),
            "sheet-goods.csv");
    private static final PinSide CHERRY = PinSide.solid("cherry", 0.5007, Shelves.ANY);

    private static PinHold hold(
            PinSide side, double massKg, double heavy, double diameterMm, double inHoleMm, double inMm, double pushN) {
        return new PinHold(
                "shelf pins",
                massKg,
                Length.mm(800),
                Length.mm(280),
                new ShelfLoad("books", heavy * 0.75, heavy, 0.2, Shelves.ANY),
                side,
                new ShelfPinSet(
                        Length.mm(diameterMm),
                        Length.mm(inHoleMm),
                        Length.mm(6),
                        Length.mm(inMm),
                        Length.mm(60),
                        Length.mm(150),
                        Optional.of(Metal.STEEL)),
                Force.newtons(pushN),
                Shelves.in(ShopRule.MILLIMETRES));
    }

    private static SheetGood sheet(String id) {
        return SHEETS.stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
    }

    @ParameterizedTest(name = "{0}, {7}")
    @CsvFileSource(resources = "/published/shelf-pins-hold.csv", useHeadersInDisplayName = true)
    void aPinInASideOfWoodIsAsStrongAsPrinted(
            String name,
            double gravity,
            double diameter,
            double depth,
            double arm,
            double expected,
            double tolerance,
            String source,
            String basis) {
        double bearing = PinSide.solid("cherry", gravity, Shelves.ANY).bearing(diameter / 1000, depth / 1000);
        assertThat(PinInHole.stiffPin(bearing, diameter / 1000, depth / 1000, arm / 1000))
                .as(source)
                .isCloseTo(expected, within(tolerance));
    }

    /** W = 3 kg + 0.8 m x 40 kg/m = 343.2 N: rocking 171.6 N; pushed 37 mm in on 280: 1.18 x 100 + 85.8 = 203.8 N. Working 458 x 0.41 at e 3, less at e 4. */
    @Test
    void theFrontPinBearsMoreThanHalfOfAllWhereACornerIsPushed() {
        PinHold.Held held = hold(CHERRY, 3, 40, 5, 10, 37, 100).answer();
        assertThat(held.rocking().newtons()).isCloseTo(171.6, within(0.1));
        assertThat(held.corner().newtons()).isCloseTo(100 * 243 / 206.0 + 85.8, within(0.1));
        assertThat(held.onOnePin()).isEqualTo(held.corner());
        double reach = 2 * 4 + 10;
        double stiff = 32.0 * 5 * (Math.hypot(reach, 10) - reach);
        assertThat(held.checks().get(0).capacity()).isCloseTo(0.9 / 2.2 * stiff, within(1.0));
        assertThat(hold(CHERRY, 3, 40, 5, 10, 37, 0).answer().onOnePin().newtons())
                .isCloseTo(171.6, within(0.1));
    }

    /** The pin lifts when P a/(B - 2 a) > W/4: 100 x 37/206 = 17.96 N against 7.35 N of an empty shelf of 3 kg. */
    @Test
    void theRearPinOfALightShelfLiftsAndThatIsSaid() {
        PinHold light = hold(CHERRY, 3, 10, 6, 12, 37, 100);
        assertThat(light.answer().rearEmpty().newtons()).isCloseTo(3 * 9.80665 / 4 - 100 * 37 / 206.0, within(0.01));
        assertThat(light.findings().get(0).notes().get(0).in(ShopRule.MILLIMETRES))
                .isEqualTo(
                        "Pushed so while it is empty, the shelf lifts off the rear pin by 10.6 N: it rocks, and can be"
                                + " tipped out.");
    }

    /** 100 (a - 25) > W (B/2 - a), N and mm. */
    @Property
    void tipsJustWhereThePublishedTestSaysSo(
            @ForAll @DoubleRange(min = 0.5, max = 10) double mass,
            @ForAll @DoubleRange(min = 10, max = 130) double in) {
        boolean tips = 100 * (in - 25) > mass * 9.80665 * (140 - in);
        PinHold hold = hold(CHERRY, mass, 0, 6, 12, in, 0);
        assertThat(hold.answer().checks().get(4).holds()).isEqualTo(!tips);
    }

    @ParameterizedTest(name = "{0}: a {1}th for good")
    @CsvSource({"particleboard, 10", "mdf, 15"})
    void boardBearsByItsOwnDivisor(String kind, double divisor) {
        SheetGood board = SHEETS.stream()
                .filter(each -> each.kind().equals(kind) && !each.isDampGrade())
                .findFirst()
                .orElseThrow();
        PinSide side = PinSide.sheet(board, false);
        // the formula gives the 5 % value, the divisors go with the mean
        assertThat(side.divisor()).isCloseTo(0.67 * divisor, within(1e-9));
        assertThat(side.longTerm()).isLessThan(side.divisor());
        assertThat(side.bearing(0.005, 0.010) / 1e6)
                .isCloseTo(65 * Math.pow(5, -0.7) * Math.pow(10, 0.1), within(1e-9));
        assertThat(PinSide.standing(board, true)).isEmpty();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PinSide.sheet(board, true))
                .withMessage("pins in " + board.name() + " are not judged in such a place");
    }

    @Test
    void noBoardOfUnknownBearingAndNoMdfInADampPlaceIsJudged() {
        assertThat(PinSide.standing(sheet("mdf-hls-30-to-45-mm"), true)).isEmpty();
        assertThat(SHEETS).anyMatch(each -> each.kind().equals("osb")).allSatisfy(each -> {
            if (each.kind().equals("osb") || each.kind().equals("hardboard")) {
                assertThat(PinSide.standing(each, false)).isEmpty();
            }
        });
    }

    @Test
    void pinsOfUnknownStuffAreNeverSaidToHold() {
        PinHold known = hold(CHERRY, 4, 5, 6, 12, 37, 30);
        assertThat(known.findings().get(0).verdict()).isEqualTo(Verdict.HOLDS);
        ShelfPinSet p = known.pins();
        PinHold unknown = known.pins(new ShelfPinSet(
                p.diameter(), p.inHole(), p.standingOut(), p.in(), p.fromEdge(), p.fromEnd(), Optional.empty()));
        Finding finding = unknown.findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(finding.missing())
                .containsExactly(new Missing(
                        "what the pins are made of", "use pins of steel or brass, and enter it as 'pins of'"));
    }

    @Test
    void aHoleTooNearAnEdgeFails() {
        PinHold good = hold(CHERRY, 4, 5, 6, 12, 37, 30);
        ShelfPinSet p = good.pins();
        for (ShelfPinSet near : List.of(
                new ShelfPinSet(
                        p.diameter(), p.inHole(), p.standingOut(), p.in(), Length.mm(23), p.fromEnd(), p.metal()),
                new ShelfPinSet(
                        p.diameter(), p.inHole(), p.standingOut(), p.in(), p.fromEdge(), Length.mm(41), p.metal()))) {
            assertThat(good.pins(near).findings().get(0).verdict()).isEqualTo(Verdict.FAILS);
        }
    }

    @Property(tries = 200)
    void moreOnItNeverAsksLessAndADeeperHoleNeverBearsLess(
            @ForAll @DoubleRange(min = 0, max = 100) double load,
            @ForAll @DoubleRange(min = 4, max = 20) double depth,
            @ForAll @DoubleRange(min = 0, max = 300) double push) {
        PinHold.Held once = hold(CHERRY, 3, load, 5, depth, 37, push).answer();
        assertThat(hold(CHERRY, 3, load + 1, 5, depth, 37, push)
                        .answer()
                        .onOnePin()
                        .newtons())
                .isGreaterThan(once.onOnePin().newtons());
        assertThat(hold(CHERRY, 3, load, 5, depth, 37, push + 1)
                        .answer()
                        .onOnePin()
                        .newtons())
                .isGreaterThanOrEqualTo(once.onOnePin().newtons());
        assertThat(hold(CHERRY, 3, load, 5, depth + 1, 37, push)
                        .answer()
                        .mayBear()
                        .newtons())
                .isGreaterThanOrEqualTo(once.mayBear().newtons());
    }

    @Property(tries = 100)
    void everyCureAskedAgainHolds(
            @ForAll @DoubleRange(min = 0.3, max = 8) double mass,
            @ForAll @DoubleRange(min = 0, max = 100) double load,
            @ForAll @DoubleRange(min = 3, max = 9) double diameter,
            @ForAll @DoubleRange(min = 4, max = 20) double depth,
            @ForAll @DoubleRange(min = 10, max = 130) double in) {
        for (Remedy remedy : hold(CHERRY, mass, load, diameter, depth, in, 80)
                .findings()
                .get(0)
                .remedies()) {
            assertThat(remedy.then().findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        }
    }

    @Test
    void fullLoadOnShallowPinsFailsAndIsOfferedDeeperHoles() {
        Finding finding = hold(CHERRY, 3, 40, 5, 8, 37, 100).findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.remedies().get(0).words().in(ShopRule.MILLIMETRES)).startsWith("Let the pins ");
    }

    @Test
    void refusesPinsBehindTheMiddle() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> hold(CHERRY, 3, 20, 5, 10, 138, 50))
                .withMessage("the front pins must be in front of the rear ones: less than half the depth from the front"
                        + " edge");
    }
}
