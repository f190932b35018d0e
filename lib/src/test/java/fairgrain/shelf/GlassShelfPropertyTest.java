package fairgrain.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import fairgrain.finding.Finding;
import fairgrain.finding.Outcome;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.quantity.Length;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What a glass shelf promises whatever its sizes and loads. */
class GlassShelfPropertyTest {
    private static final List<String> KINDS =
            List.of("float-polished", "float-arrissed", "toughened-polished", "laminated-arrissed");
    private static final List<Integer> MADE = List.of(4, 5, 6, 8, 10);

    private static Finding finding(GlassShelf shelf) {
        return shelf.findings().get(0);
    }

    @Property(tries = 30)
    void thickerGlassIsNeverStressedMoreNorSagsMore(
            @ForAll GlassSupport support,
            @ForAll @DoubleRange(min = 150, max = 1500) double span,
            @ForAll @DoubleRange(min = 100, max = 600) double depth,
            @ForAll @IntRange(min = 0, max = 3) int thin,
            @ForAll @DoubleRange(min = 0, max = 60) double load) {
        GlassShelf one =
                GlassPanes.shelf("float-polished", GlassPanes.rest(support, span, depth), MADE.get(thin), load, 100);
        GlassShelf.Held thinner = one.answer();
        GlassShelf.Held thicker = one.thickness(Length.mm(MADE.get(thin + 1))).answer();
        assertThat(thicker.field()).isLessThan(thinner.field());
        assertThat(thicker.overPins()).isLessThanOrEqualTo(thinner.overPins());
        assertThat(thicker.sag().metres()).isLessThanOrEqualTo(thinner.sag().metres());
    }

    @Property(tries = 30)
    void moreOnTheShelfNeverAsksLessOfIt(
            @ForAll GlassSupport support,
            @ForAll @DoubleRange(min = 150, max = 1500) double span,
            @ForAll @DoubleRange(min = 0, max = 60) double load,
            @ForAll @DoubleRange(min = 0, max = 300) double push) {
        GlassRest rest = GlassPanes.rest(support, span, 250);
        GlassShelf.Held light =
                GlassPanes.shelf("float-polished", rest, 8, load, push).answer();
        GlassShelf.Held heavy =
                GlassPanes.shelf("float-polished", rest, 8, load + 1, push + 1).answer();
        for (int check = 0; check < 3; check++) {
            assertThat(heavy.checks().get(check).demand())
                    .isGreaterThanOrEqualTo(light.checks().get(check).demand());
        }
    }

    @Property(tries = 15)
    void everyCureAskedAgainHoldsAndNoShelfLacksAnAnswer(
            @ForAll GlassSupport support,
            @ForAll @IntRange(min = 0, max = 3) int kind,
            @ForAll @DoubleRange(min = 100, max = 2000) double span,
            @ForAll @DoubleRange(min = 51, max = 1000) double depth,
            @ForAll @IntRange(min = 0, max = 4) int thick,
            @ForAll @DoubleRange(min = 0, max = 200) double load) {
        Finding finding = finding(
                GlassPanes.shelf(KINDS.get(kind), GlassPanes.rest(support, span, depth), MADE.get(thick), load, 60));
        for (Outcome outcome : finding.outcomes()) {
            assertThat(outcome.planned().demand()).isFinite();
        }
        for (Remedy remedy : finding.remedies()) {
            assertThat(remedy.then().findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        }
    }

    @Property(tries = 20)
    void theLongestSpanHoldsAndAStepMoreFails(
            @ForAll @IntRange(min = 0, max = 4) int thick, @ForAll @DoubleRange(min = 2, max = 40) double load) {
        GlassShelf asked = GlassPanes.shelf(
                "float-polished", GlassPanes.rest(GlassSupport.CLEATS, 500, 250), MADE.get(thick), load, 0);
        GlassShelf longest = new GlassLimits(asked).longestSpan().orElseThrow();
        assertThat(finding(longest).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        assertThat(finding(asked.span(longest.rest().span().plus(Length.mm(5)))).verdict())
                .isEqualTo(Verdict.FAILS);
    }

    @Property(tries = 20)
    void theHeaviestLoadHoldsAndAStepMoreFails(@ForAll @DoubleRange(min = 250, max = 700) double span) {
        GlassShelf asked =
                GlassPanes.shelf("float-polished", GlassPanes.rest(GlassSupport.CLEATS, span, 250), 10, 20, 0);
        GlassShelf heaviest = new GlassLimits(asked).heaviestLoad().orElseThrow();
        assertThat(finding(heaviest).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        double more = heaviest.use().load().heavy() + 0.5;
        assertThat(finding(asked.load(new ShelfLoad("books", more * 0.75, more, 0.2, Shelves.ANY)))
                        .verdict())
                .isEqualTo(Verdict.FAILS);
    }

    @Property(tries = 20)
    void theThinnestGlassHoldsAndTheNextThinnerFails(
            @ForAll @DoubleRange(min = 200, max = 900) double span,
            @ForAll @DoubleRange(min = 2, max = 40) double load) {
        GlassShelf asked =
                GlassPanes.shelf("float-arrissed", GlassPanes.rest(GlassSupport.CLEATS, span, 250), 10, load, 50);
        new GlassLimits(asked).leastThickness().ifPresent(thinnest -> {
            assertThat(finding(thinnest).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
            List<Length> made = asked.glass().thicknesses();
            int at = made.indexOf(thinnest.thickness());
            if (at > 0) {
                assertThat(finding(asked.thickness(made.get(at - 1))).verdict()).isEqualTo(Verdict.FAILS);
            }
        });
    }
}
