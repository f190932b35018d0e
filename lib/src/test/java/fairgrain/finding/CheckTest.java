package fairgrain.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.quantity.Dimension;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CheckTest {
    private static Check check(double demand, double capacity, double required) {
        return new Check("pull", demand, capacity, Dimension.FORCE, required);
    }

    @ParameterizedTest(name = "{0} asked of {1}, {2} times wanted: {3}")
    @CsvSource({
        "100, 100, 1, CLOSE", // exactly at the limit still holds
        "100, 99.999, 1, FAILS",
        "100, 109.9, 1, CLOSE",
        "100, 110.1, 1, HOLDS",
        "100, 200, 2, CLOSE",
        "100, 199, 2, FAILS",
        "100, 221, 2, HOLDS",
        "0, 0, 1, HOLDS", // nothing asked, nothing left
        "0, 5, 1, HOLDS",
        "0, -0.1, 1, FAILS", // a gap already used up
        "-3, 0, 1, HOLDS", // a panel that only shrinks
        "-3, -2, 1, HOLDS",
        "-3, -4, 1, FAILS",
        "5, -1, 1, FAILS"
    })
    void comesToItsVerdict(double demand, double capacity, double required, Verdict expected) {
        assertThat(check(demand, capacity, required).verdict()).isEqualTo(expected);
    }

    @Test
    void theFactorIsCapacityOverDemandAndNeverBelowZero() {
        assertThat(check(100, 250, 1).factor()).isCloseTo(2.5, within(1e-12));
        assertThat(check(100, -5, 1).factor()).isZero();
        assertThat(check(0, 5, 1).factor()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(check(-1, 0, 1).factor()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(check(-1, -2, 1).factor()).isZero();
    }

    @Test
    void aNegativeDemandIsNotMultipliedByTheFactorWanted() {
        assertThat(check(-3, -2, 2).margin()).isCloseTo(1, within(1e-12));
    }

    @Test
    void refusesWhatIsNotANumber() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> check(Double.NaN, 1, 1))
                .withMessage("demand of pull must be a finite number of SI, but was NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> check(1, Double.NaN, 1))
                .withMessage("capacity of pull must be a finite number of SI, but was NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> check(1, Double.POSITIVE_INFINITY, 1))
                .withMessage("capacity of pull must be a finite number of SI, but was Infinity");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> check(1, 1, 0.9))
                .withMessage("required factor of pull must be from 1 to 100 (a ratio), but was 0.9");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> check(1, 1, Double.NaN))
                .withMessage("required factor of pull must be from 1 to 100 (a ratio), but was NaN");
    }

    @Property
    void itHoldsExactlyWhereItsMarginIsNotBelowZeroAndAskingMoreNeverHelps(
            @ForAll @DoubleRange(min = -100, max = 100) double demand,
            @ForAll @DoubleRange(min = -100, max = 100) double capacity,
            @ForAll @DoubleRange(min = 0, max = 50) double more) {
        Check check = check(demand, capacity, 1.5);
        assertThat(check.holds()).isEqualTo(check.margin() >= 0).isEqualTo(check.verdict() != Verdict.FAILS);
        if (Math.abs(check.margin()) > 1e-9) { // nearer to the limit than that, a quotient rounds the other way
            assertThat(check.holds()).isEqualTo(demand > 0 ? check.factor() >= 1.5 : capacity >= demand);
        }
        assertThat(check(demand + more, capacity, 1.5).verdict()).isGreaterThanOrEqualTo(check.verdict());
    }
}
