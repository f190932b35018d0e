package fairgrain.movement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class MovementTest {
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/published/dimensional-change.csv", useHeadersInDisplayName = true)
    void agreesWithThePublishedExample(
            String name,
            double dimension,
            double coefficient,
            double from,
            double to,
            double expected,
            double tolerance,
            String source,
            String basis) {
        assertThat(DimensionalChange.byCoefficient(dimension, coefficient, from / 100, to / 100))
                .as(source)
                .isCloseTo(expected, within(tolerance));
    }

    @Property
    void goingThereInTwoStepsIsGoingThereInOne(
            @ForAll @DoubleRange(min = 0.02, max = 0.28) double a,
            @ForAll @DoubleRange(min = 0.02, max = 0.28) double b,
            @ForAll @DoubleRange(min = 0.02, max = 0.28) double c) {
        double atB = 1 + DimensionalChange.byShrinkage(1, 0.08, 0.3, a, b);
        double atC = atB + DimensionalChange.byShrinkage(atB, 0.08, 0.3, b, c);
        assertThat(atC).isCloseTo(1 + DimensionalChange.byShrinkage(1, 0.08, 0.3, a, c), within(1e-12));
    }

    @Property
    void aSlantedLineShrinksBetweenTheTwoDirections(@ForAll @DoubleRange(min = 0, max = 1.57) double angle) {
        assertThat(RingDirection.shrinkage(0.08, 0.04, angle)).isBetween(0.04, 0.08);
    }
}
