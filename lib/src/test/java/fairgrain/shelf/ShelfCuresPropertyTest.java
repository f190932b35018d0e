package fairgrain.shelf;

import static fairgrain.shelf.Shelves.shelf;
import static fairgrain.shelf.Shelves.stock;
import static org.assertj.core.api.Assertions.assertThat;

import fairgrain.finding.Finding;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.quantity.Length;
import fairgrain.quantity.Mass;
import fairgrain.quantity.ShopRule;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** What a shelf promises when it is asked backwards, and when things are added to it. */
class ShelfCuresPropertyTest {
    private static final ShelfStock BOARD = stock(12e9, 600, 1, 20e6);

    private static ShelfSag built(double span, double thickness, double load, int kind, boolean inches) {
        ShelfSag plain =
                shelf(BOARD, span, thickness, load, SagLimit.OPEN, inches ? ShopRule.INCHES : ShopRule.MILLIMETRES);
        Supports ends = plain.supports();
        EdgePiece strip = new EdgePiece(BOARD, Length.mm(20), Length.mm(45), EdgePiece.Place.EDGE, true);
        Section section = new Section(plain.depth(), plain.thickness(), kind == 1 ? strip : null, null, null);
        Supports supports = kind == 2 ? ends.middle(List.of(Length.mm(span / 2))) : ends;
        Loads loads = kind == 3
                ? new Loads(
                        plain.load(),
                        null,
                        List.of(new Thing(
                                "stack", Mass.kilograms(4), Length.mm(span / 2), Length.mm(100), Length.mm(150))),
                        null)
                : kind == 4
                        ? new Loads(plain.load(), null, new Row(Row.Edge.FRONT, Length.mm(156)), List.of(), null)
                        : plain.loads();
        return new ShelfSag(
                "shelf",
                BOARD,
                section,
                supports,
                loads,
                plain.limit(),
                plain.in(),
                () -> List.of(stiffer("a stiffer wood", 16e9), stiffer("the stiffest wood", 22e9)));
    }

    private static ShelfStock stiffer(String name, double elasticity) {
        ShelfStock s = stock(elasticity, 700, 1, 20e6);
        return new ShelfStock(
                name,
                s.elasticity(),
                s.elasticityCv(),
                s.strength(),
                s.density(),
                s.creep(),
                s.thicknesses(),
                s.evidence());
    }

    @Property(tries = 12)
    void everyCureAskedAgainHolds(
            @ForAll @DoubleRange(min = 500, max = 1400) double span,
            @ForAll @DoubleRange(min = 12, max = 28) double thickness,
            @ForAll @DoubleRange(min = 10, max = 60) double load,
            @ForAll boolean inches) {
        for (int kind = 0; kind < 5; kind++) {
            Finding finding =
                    built(span, thickness, load, kind, inches).findings().get(0);
            boolean fails = finding.verdict() == Verdict.FAILS;
            assertThat(finding.remedies().isEmpty()).isNotEqualTo(fails);
            for (Remedy remedy : finding.remedies()) {
                assertThat(remedy.then().findings().get(0).verdict())
                        .as(remedy.words().in(ShopRule.MILLIMETRES))
                        .isIn(Verdict.HOLDS, Verdict.CLOSE);
            }
        }
    }

    @Property(tries = 40)
    void theMostBooksHoldAndOneStepMoreFails(
            @ForAll @DoubleRange(min = 600, max = 1200) double span,
            @ForAll @DoubleRange(min = 15, max = 25) double thickness,
            @ForAll boolean inches) {
        ShelfSag asked = built(span, thickness, 30, 0, inches);
        Optional<ShelfSag> found = new ShelfLimits(asked).heaviestLoad();
        found.ifPresent(most -> {
            assertThat(most.findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
            double step = inches ? Mass.KILOGRAMS_PER_POUND / 0.3048 : 0.5;
            ShelfLoad more = new ShelfLoad(
                    "books", most.load().expected() + step, (most.load().expected() + step) * 4 / 3, 0.2, Shelves.ANY);
            assertThat(asked.load(more).findings().get(0).verdict()).isEqualTo(Verdict.FAILS);
        });
        assertThat(found.isPresent()).isEqualTo(asked.load(nothing()).plannedMargin() >= 0);
    }

    private static ShelfLoad nothing() {
        return new ShelfLoad("books", 0, 0, 0.2, Shelves.ANY);
    }

    @Property(tries = 40)
    void aGluedStripIsNeverWorseThanNone(
            @ForAll @DoubleRange(min = 500, max = 1400) double span,
            @ForAll @DoubleRange(min = 12, max = 28) double thickness,
            @ForAll @DoubleRange(min = 0, max = 60) double more,
            @ForAll EdgePiece.Place place) {
        ShelfStock light = stock(12e9, 50, 1, 20e6); // so that the weight of the strip is next to nothing
        ShelfSag bare = shelf(light, span, thickness, 30, SagLimit.OPEN, ShopRule.MILLIMETRES);
        EdgePiece strip = new EdgePiece(light, Length.mm(20), Length.mm(thickness + more), place, true);
        ShelfSag.Sag with = bare.front(strip).answer();
        double without = bare.answer().firstDay().metres();
        double heavier = bare.front(strip).section().massPerLength(light)
                - bare.section().massPerLength(light);
        assertThat(with.firstDay().metres()).isLessThanOrEqualTo(without * (1 + heavier / 30) * (1 + 1e-9));
    }

    @Property(tries = 20)
    void moreLoadNeverSagsLessHoweverItIsBuilt(
            @ForAll @DoubleRange(min = 500, max = 1400) double span,
            @ForAll @DoubleRange(min = 0, max = 60) double load) {
        for (int kind = 0; kind < 4; kind++) {
            ShelfSag.Sag less = built(span, 20, load, kind, false).answer();
            ShelfSag.Sag more = built(span, 20, load + 1, kind, false).answer();
            assertThat(more.firstDay()).isGreaterThan(less.firstDay());
            assertThat(more.front()).isGreaterThan(less.front());
            assertThat(more.back()).isGreaterThan(less.back());
        }
    }

    @Property(tries = 20)
    void aMiddleSupportNeverSagsMore(
            @ForAll @DoubleRange(min = 500, max = 1400) double span,
            @ForAll @DoubleRange(min = 0.3, max = 0.7) double at) {
        ShelfSag one = built(span, 20, 30, 0, false);
        ShelfSag two = one.middle(List.of(Length.mm(span * at)));
        assertThat(two.answer().firstDay()).isLessThan(one.answer().firstDay());
    }

    /** Whatever is not refused when it is told has an answer, and what is offered holds. */
    @Property(tries = 40)
    void noShelfThatMayBeBuiltLacksAnAnswer(
            @ForAll @DoubleRange(min = 60, max = 3000) double span,
            @ForAll @DoubleRange(min = 30, max = 1000) double depth,
            @ForAll @DoubleRange(min = 3, max = 100) double thickness,
            @ForAll @DoubleRange(min = 0, max = 1) double share,
            @ForAll BackEdge held,
            @ForAll Support ends,
            @ForAll EdgePiece.Place place,
            @ForAll boolean glued) {
        ShelfStock board = stock(3e9, 700, 1, 5e6);
        double width = Math.min(200, 3 + share * 0.37 * depth);
        EdgePiece front = new EdgePiece(board, Length.mm(width), Length.mm(3 + share * 290), place, glued);
        EdgePiece back = share < 0.5 ? front : null;
        boolean flat = thickness <= depth / 4;
        boolean strips = flat && width <= 0.4 * depth && share > 0.1;
        Section section =
                new Section(Length.mm(depth), Length.mm(thickness), strips ? front : null, strips ? back : null, null);
        Supports supports = new Supports(
                ends,
                Length.mm(span),
                Length.mm(share * 0.4 * depth),
                flat ? held : BackEdge.FREE,
                share > 0.7 && share < 0.9 && span > 600 ? List.of(Length.mm(span * share)) : List.of(),
                List.of(),
                Length.ZERO,
                Length.ZERO,
                null);
        ShelfSag plain = built(800, 20, 20 * share, 0, share > 0.5);
        ShelfSag asked =
                new ShelfSag("shelf", board, section, supports, plain.loads(), plain.limit(), plain.in(), List::of);
        for (Finding finding : asked.findings()) {
            finding.outcomes().forEach(outcome -> {
                assertThat(outcome.planned().demand()).isFinite();
                assertThat(outcome.planned().factor()).isNotNaN();
            });
            for (Remedy remedy : finding.remedies()) {
                assertThat(remedy.then().findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
            }
        }
    }
}
