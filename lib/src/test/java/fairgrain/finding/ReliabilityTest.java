package fairgrain.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.quantity.Dimension;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ReliabilityTest {
    private static final Evidence ANY = Evidence.of(Citation.of("own", "a test", Basis.JUDGEMENT));

    private record Numbers(List<Check> checks) implements Answer {}

    /** A question whose check has this margin. */
    private record Asked(int count, ToDoubleFunction<Draw> margin) implements Question<Numbers> {
        @Override
        public String part() {
            return "part";
        }

        @Override
        public List<Spread> spreads() {
            return Collections.nCopies(count, new Spread("part/any", "anything", 1));
        }

        @Override
        public Model<Numbers> model() {
            return draw -> new Numbers(List.of(Check.of("margin", 0, margin.applyAsDouble(draw), Dimension.RATIO)));
        }

        @Override
        public List<Finding> findings() {
            return List.of(Finding.about("part", "any", Words.of("Any."), ANY)
                    .outcomes(Reliability.outcomes(this, Reliability.NINETEEN_IN_TWENTY))
                    .done());
        }
    }

    private static double planned(Asked asked, double deviations) {
        return Reliability.outcomes(asked, deviations).get(0).planned().margin();
    }

    @Property
    void ofALinearMarginItIsTheExactQuantile(
            @ForAll @DoubleRange(min = -5, max = 5) double a,
            @ForAll @DoubleRange(min = -5, max = 5) double b,
            @ForAll @DoubleRange(min = -5, max = 5) double c,
            @ForAll @DoubleRange(min = 0, max = 3) double deviations) {
        Asked asked = new Asked(3, d -> 7 + a * d.of(0) + b * d.of(1) + c * d.of(2));
        double sd = Math.sqrt(a * a + b * b + c * c); // of a sum of normal spreads
        assertThat(planned(asked, deviations)).isCloseTo(7 - deviations * sd, within(1e-9));
    }

    @Test
    void whatNothingSpreadsIsWhatIsExpected() {
        assertThat(planned(new Asked(2, d -> 4), Reliability.NINETEEN_IN_TWENTY))
                .isEqualTo(4);
        assertThat(planned(new Asked(0, d -> -1), Reliability.NINETEEN_IN_TWENTY))
                .isEqualTo(-1);
    }

    @Test
    void itSeesABendThatTheFirstSlopeMisses() {
        // the slope at the plan leads along the first spread; a little further out the second one counts more
        Asked bent = new Asked(2, d -> 10 - d.of(0) - 0.2 * d.of(1) - 0.5 * d.of(1) * d.of(0));
        double alongTheFirstSlope = 1.6449 / Math.hypot(1, 0.2);
        double there = 10
                - alongTheFirstSlope
                - 0.2 * 0.2 * alongTheFirstSlope
                - 0.5 * 0.2 * alongTheFirstSlope * alongTheFirstSlope;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 3600; i++) {
            double x = 1.6449 * Math.cos(Math.toRadians(i / 10.0));
            double y = 1.6449 * Math.sin(Math.toRadians(i / 10.0));
            least = Math.min(least, 10 - x - 0.2 * y - 0.5 * y * x);
        }
        assertThat(planned(bent, 1.6449)).isLessThan(there).isCloseTo(least, within(0.01));
    }

    @Test
    void whatIsPlannedCountsWhereItIsTheWorstItself() {
        assertThat(planned(new Asked(1, d -> 1 + d.of(0) * d.of(0)), 1.6449)).isEqualTo(1);
        assertThat(planned(new Asked(2, d -> 1 + d.of(0) * d.of(0) + Math.abs(d.of(1))), 1.6449))
                .isEqualTo(1);
    }

    @Test
    void eachCheckHasAWorstCaseOfItsOwn() {
        Model<Numbers> model = draw -> new Numbers(List.of(
                Check.of("one", 0, 5 - draw.of(0), Dimension.RATIO),
                Check.of("other", 0, 5 + 2 * draw.of(0), Dimension.RATIO)));
        List<Spread> spreads = List.of(new Spread("a", "a", 1));
        assertThat(Reliability.worst(model, spreads, 0, 2).of(0)).isCloseTo(2, within(1e-12));
        assertThat(Reliability.worst(model, spreads, 1, 2).of(0)).isCloseTo(-2, within(1e-12));
    }
}
