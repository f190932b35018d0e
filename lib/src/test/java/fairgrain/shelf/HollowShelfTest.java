package fairgrain.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Check;
import fairgrain.finding.Finding;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class HollowShelfTest {
    private static final double GRAVITY = 9.80665;

    private static ShelfStock board(double density, @Nullable Double strength) {
        return new ShelfStock(
                "a board",
                3e9,
                0.1,
                strength,
                density,
                new Creep(1, 2.25, Shelves.ANY),
                ShelfStock.ANY_THICKNESS,
                Shelves.ANY);
    }

    private static HollowShelf box(double spanMm, double heightMm, int ribs, double heavy, @Nullable Double strength) {
        ShelfStock of = board(750, strength);
        return new HollowShelf(
                "hollow shelf",
                new HollowSkin(of, Length.mm(6), 3e9),
                new Inside.Ribs(of, ribs, Length.mm(18), 150e6),
                Length.mm(heightMm),
                Length.mm(spanMm),
                Length.mm(300),
                new ShelfLoad("books", heavy * 0.75, heavy, 0.2, Shelves.ANY),
                SagLimit.OPEN,
                Shelves.in(ShopRule.MILLIMETRES));
    }

    private static HollowShelf cored(double shearModulus, double creep, double heavy) {
        return new HollowShelf(
                "cored shelf",
                new HollowSkin(board(750, 2.2e6), Length.mm(4), 3e9),
                new Inside.Core("paper honeycomb", shearModulus, 0.5e6, new Creep(creep, creep, Shelves.ANY), 40),
                Length.mm(40),
                Length.mm(900),
                Length.mm(300),
                new ShelfLoad("books", heavy * 0.75, heavy, 0.2, Shelves.ANY),
                SagLimit.OPEN,
                Shelves.in(ShopRule.MILLIMETRES));
    }

    /**
     * Finite elements, case D1: 1200 x 300 x 40, skins 6, three ribs 18 wide, all 3000 MPa, shear modulus 1200 MPa, 450 N/m over 1190: sag 3.486 mm, tension
     * 1.419 MPa. With 1.05 on top ours lies above both, by 4 % at most.
     */
    @Test
    void liesAboveTheFiniteElementsOfABox() {
        ShelfStock light = board(50, 2e6);
        double own = 50 * (2 * 0.006 * 0.3 + 0.028 * (3 * 0.018 + 2 * 0.018 * 0.3 / 1.19));
        double load = 450 / GRAVITY - own;
        HollowShelf shelf = new HollowShelf(
                "box",
                new HollowSkin(light, Length.mm(6), 3e9),
                new Inside.Ribs(light, 3, Length.mm(18), 1200e6),
                Length.mm(40),
                Length.mm(1190),
                Length.mm(300),
                new ShelfLoad("books", load, load, 0.2, Shelves.ANY),
                SagLimit.OPEN,
                Shelves.in(ShopRule.MILLIMETRES));
        assertThat(shelf.answer().firstDay().toMm() / 3.4863).isBetween(1.0, 1.045);
        assertThat(shelf.answer().checks().get(2).demand() / 1.419e6).isBetween(1.0, 1.04);
        assertThat(shelf.mass()).isCloseTo(own * 1.19, within(1e-9));
    }

    /** Skins 4, core 32, d 36: D = 3e9 x 0.004 x 0.036^2/2 + 3e9 x 0.004^3/6 = 7808 N m; S = 20e6 x 0.036^2/0.032 = 810 kN/m. */
    @Test
    void aCoreSlipsByTheHandCalculation() {
        HollowShelf shelf = cored(20e6, 1, 40);
        double own = 2 * 0.004 * 0.3 * 750 + 0.032 * 0.3 * 40;
        double pressure = (own + 30) * GRAVITY / 0.3;
        double bending = 5 * pressure * Math.pow(0.9, 4) / (384 * 7808);
        double slip = pressure * 0.81 / (8 * 810e3);
        assertThat(shelf.answer().firstDay().metres()).isCloseTo(1.05 * (bending + slip), within(1e-7));
        assertThat(shelf.answer().afterYears().metres()).isCloseTo(1.05 * 2 * (bending + slip), within(2e-7));
        // V = (own + 40) g 0.9/2 = 202 N; over 0.3 x 0.036
        Check core = shelf.answer().checks().get(3);
        assertThat(core.demand()).isCloseTo((own + 40) * GRAVITY * 0.45 / (0.3 * 0.036), within(1.0));
        assertThat(core.capacity()).isCloseTo(0.05e6, within(1e-6));
    }

    @Test
    void aCoreThatCreepsMoreSagsMoreAfterYearsButNotOnTheFirstDay() {
        HollowShelf.Held little = cored(5e6, 1, 30).answer();
        HollowShelf.Held much = cored(5e6, 3, 30).answer();
        assertThat(much.firstDay()).isEqualTo(little.firstDay());
        assertThat(much.afterYears().metres()).isGreaterThan(little.afterYears().metres());
    }

    @Test
    void withoutAStrengthItIsNeverSaidToHold() {
        Finding finding = box(400, 60, 3, 5, null).findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(finding.missing().get(0).todo())
                .isEqualTo("choose woods or sheets whose bending strength is in the table");
        assertThat(box(400, 60, 3, 5, 2.2e6).findings().get(0).verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Property
    void aHigherBoxNeverSagsMoreNorIsStressedMore(
            @ForAll @DoubleRange(min = 200, max = 2000) double span,
            @ForAll @DoubleRange(min = 20, max = 120) double height,
            @ForAll @IntRange(min = 2, max = 6) int ribs,
            @ForAll @DoubleRange(min = 5, max = 60) double load) {
        HollowShelf.Held low = box(span, height, ribs, load, 2.2e6).answer();
        HollowShelf.Held high = box(span, height + 2, ribs, load, 2.2e6).answer();
        assertThat(high.firstDay().metres()).isLessThanOrEqualTo(low.firstDay().metres());
        assertThat(high.checks().get(2).demand()).isLessThan(low.checks().get(2).demand());
    }

    @Property(tries = 100)
    void moreOnItNeverAsksLess(
            @ForAll @DoubleRange(min = 200, max = 2000) double span,
            @ForAll @DoubleRange(min = 5, max = 60) double load) {
        HollowShelf.Held light = box(span, 40, 3, load, 2.2e6).answer();
        HollowShelf.Held heavy = box(span, 40, 3, load + 1, 2.2e6).answer();
        for (int check = 0; check < light.checks().size(); check++) {
            assertThat(heavy.checks().get(check).demand())
                    .isGreaterThan(light.checks().get(check).demand());
        }
    }

    @Property(tries = 40)
    void everyCureAskedAgainHolds(
            @ForAll @DoubleRange(min = 100, max = 2900) double span,
            @ForAll @DoubleRange(min = 16, max = 200) double height,
            @ForAll @IntRange(min = 2, max = 6) int ribs,
            @ForAll @DoubleRange(min = 0, max = 100) double load) {
        for (Remedy remedy :
                box(span, height, ribs, load, 2.2e6).findings().get(0).remedies()) {
            assertThat(remedy.then().findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        }
        for (Remedy remedy : cored(5e6, 2, load).findings().get(0).remedies()) {
            assertThat(remedy.then().findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        }
    }

    @Test
    void refusesSkinsThatMeetAndRibsThatFillIt() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> box(600, 12.5, 3, 20, 2.2e6))
                .withMessage("the shelf must be higher than its two skins together");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> box(600, 40, 17, 20, 2.2e6))
                .withMessage("the ribs together must be narrower than the shelf is deep");
    }
}
