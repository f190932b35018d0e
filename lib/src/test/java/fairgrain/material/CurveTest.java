package fairgrain.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class CurveTest {
    /** A straight and a bent curve of one invented wood. */
    record Pair(double total, double start, double differential) {
        Curve straight() {
            return new StraightCurve(total, start);
        }

        BentCurve bent() {
            return new BentCurve(differential, total, start);
        }
    }

    @Provide
    Arbitrary<Pair> woods() {
        return Combinators.combine(
                        Arbitraries.doubles().between(0.01, 0.15).ofScale(6),
                        Arbitraries.doubles().between(0.15, 0.4).ofScale(6),
                        Arbitraries.doubles().between(0.01, 0.6).ofScale(6))
                .as(Pair::new);
    }

    @ParameterizedTest(name = "{0}, {8}")
    @CsvFileSource(resources = "/published/dimensional-change-second-form.csv", useHeadersInDisplayName = true)
    void theStraightCurveMovesABoardAsTheExampleSays(
            String board,
            double dimension,
            double shrinkage,
            double start,
            double from,
            double to,
            double expected,
            double tolerance,
            String source,
            String basis) {
        Curve curve = new StraightCurve(shrinkage / 100, start / 100);
        assertThat(dimension * (curve.at(to / 100) / curve.at(from / 100) - 1))
                .as(source)
                .isCloseTo(expected, within(tolerance));
    }

    @ParameterizedTest(name = "{0}, {9}, {10}")
    @CsvFileSource(resources = "/published/bent-curve.csv", useHeadersInDisplayName = true)
    void theBentCurveFollowsItsRule(
            String wood,
            double shrinkage,
            double start,
            double differential,
            double expectedTotal,
            double expectedSize,
            double toleranceTotal,
            double toleranceSize,
            boolean raises,
            String source,
            String basis) {
        BentCurve bent = new BentCurve(differential, shrinkage / 100, start / 100);
        assertThat(bent.total() * 100).isCloseTo(expectedTotal, within(toleranceTotal));
        assertThat(bent.at(0.08)).isCloseTo(expectedSize, within(toleranceSize));
        assertThat(bent.raisesTotal()).isEqualTo(raises);
    }

    @Property
    void theStraightLineEndsAtTheTotal(@ForAll("woods") Pair wood) {
        assertThat(wood.straight().at(0)).isCloseTo(1 - wood.total(), within(1e-15));
        assertThat(wood.straight().at(wood.start() / 2)).isCloseTo(1 - wood.total() / 2, within(1e-15));
    }

    @Property
    void bothCurvesAreOneFromTheStartOfShrinkageOn(
            @ForAll("woods") Pair wood, @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double above) {
        assertThat(wood.straight().at(wood.start() + above)).isEqualTo(1);
        assertThat(wood.bent().at(wood.start() + above)).isEqualTo(1);
    }

    @Property
    void moreMoistureNeverMeansASmallerBoard(
            @ForAll("woods") Pair wood,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.5) double dry,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.5) double more) {
        assertThat(wood.straight().at(dry + more))
                .isGreaterThanOrEqualTo(wood.straight().at(dry));
        assertThat(wood.bent().at(dry + more))
                .isGreaterThanOrEqualTo(wood.bent().at(dry) - 1e-15);
    }

    @Property
    void goingByAPlaceOnTheWayEndsAtTheSameSize(
            @ForAll("woods") Pair wood,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.4) double a,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.4) double b,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.4) double c) {
        for (Curve curve : new Curve[] {wood.straight(), wood.bent()}) {
            double byB = 0.6 * (curve.at(b) / curve.at(a)) * (curve.at(c) / curve.at(b));
            assertThat(byB).isCloseTo(0.6 * curve.at(c) / curve.at(a), within(1e-15));
        }
    }

    @Property
    void inTheRangeOfUseTheBentCurveNeverMovesLess(
            @ForAll("woods") Pair wood,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.2) double a,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.2) double b) {
        double dry = Math.min(Math.min(a, b), wood.start());
        double damp = Math.min(Math.max(a, b), wood.start());
        double straight = wood.straight().at(damp) / wood.straight().at(dry);
        assertThat(wood.bent().at(damp) / wood.bent().at(dry)).isGreaterThanOrEqualTo(straight - 1e-12);
    }

    @Property
    void theBentCurveNeverShrinksLessInAll(@ForAll("woods") Pair wood) {
        assertThat(wood.bent().total()).isGreaterThanOrEqualTo(wood.total() - 1e-12);
        assertThat(wood.bent().raisesTotal()).isEqualTo(wood.bent().total() > wood.total() + 1e-9);
    }

    @Property
    void aSmallDifferentialNeverMakesTheMovementSmaller(
            @ForAll @Scale(6) @DoubleRange(min = 0.02, max = 0.12) double total,
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.06) double differential) {
        double perWhole = 100 * ShrinkageCoefficient.of(total, 0.3);
        BentCurve bent = new BentCurve(differential, total, 0.3);
        assertThat((bent.at(0.12) - bent.at(0.06)) / 0.06).isCloseTo(perWhole, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {8, -0.01, 2.01, Double.NaN})
    void refusesWhatIsNoMoistureContent(double moisture) {
        String message = "moisture content must be from 0 to 2 (a fraction; 9 % is 0.09), but was ";
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new StraightCurve(0.08, 0.3).at(moisture))
                .withMessageStartingWith(message);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BentCurve(0.3, 0.08, 0.3).at(moisture))
                .withMessageStartingWith(message);
    }

    @Test
    void refusesPercentWhereAFractionIsMeant() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new StraightCurve(8, 0.3))
                .withMessage("shrinkage must be from 0.005 to 0.25 (a fraction; 8 % is 0.08), but was 8");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new StraightCurve(0.08, 30))
                .withMessage("start of shrinkage must be from 0.15 to 0.4 (a fraction; 30 % is 0.3), but was 30");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BentCurve(36, 0.08, 0.3))
                .withMessage("differential shrinkage must be from 0.01 to 1 % per 1 %, but was 36");
    }
}
