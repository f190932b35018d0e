package fairgrain.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each guard gives a good value back, refuses the first bad one on either side, and never lets NaN through. */
class RequireTest {
    private static final Limits SPAN = new Limits("span", 0.01, 100, "m");

    @ParameterizedTest
    @ValueSource(doubles = {0.01, 1, 100})
    void betweenTakesBothItsLimits(double span) {
        assertThat(Require.between("span", span, 0.01, 100, "m")).isEqualTo(span);
        assertThat(SPAN.check(span)).isEqualTo(span);
        assertThat(SPAN.allow(span)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.009, 100.001, -1, Double.NaN, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY})
    void betweenRefusesWhatLiesOutside(double span) {
        String message = "span must be from 0.01 to 100 m, but was " + (span == -1 ? "-1" : "" + span);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.between("span", span, 0.01, 100, "m"))
                .withMessage(message);
        assertThatIllegalArgumentException().isThrownBy(() -> SPAN.check(span)).withMessage(message);
        assertThat(SPAN.allow(span)).isFalse();
    }

    @Test
    void positiveTakesTheLeastNumberAboveZeroAndTheGreatestOfAll() {
        assertThat(Require.positive("area", Double.MIN_VALUE, "m²")).isEqualTo(Double.MIN_VALUE);
        assertThat(Require.positive("area", Double.MAX_VALUE, "m²")).isEqualTo(Double.MAX_VALUE);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -2, Double.NaN, Double.POSITIVE_INFINITY})
    void positiveRefusesZeroAndWhatIsNotFinite(double area) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.positive("area", area, "m²"))
                .withMessage("area must be above 0 m², but was " + (area <= 0 ? "" + (int) area : "" + area));
    }

    @Test
    void notNegativeTakesZero() {
        assertThat(Require.notNegative("load", 0, "N")).isZero();
        assertThat(Require.notNegative("load", 12.5, "N")).isEqualTo(12.5);
        assertThat(Require.notNegative("load", Double.MAX_VALUE, "N")).isEqualTo(Double.MAX_VALUE);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.25, Double.NaN, Double.POSITIVE_INFINITY})
    void notNegativeRefusesWhatLiesBelowZeroOrIsNotFinite(double load) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.notNegative("load", load, "N"))
                .withMessage("load must be 0 N or more, but was " + load);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-Double.MAX_VALUE, -2.5, 0, Double.MAX_VALUE})
    void finiteTakesAnyNumber(double value) {
        assertThat(Require.finite("shift", value, "m")).isEqualTo(value);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY})
    void finiteRefusesWhatIsNoNumber(double value) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.finite("shift", value, "m"))
                .withMessage("shift must be a finite number of m, but was " + value);
    }

    @Test
    void aMessageWritesWholeNumbersPlainlyBelowAMillion() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.between("modulus", 999_999, 1e6, 1e9, "Pa"))
                .withMessage("modulus must be from 1000000.0 to 1.0E9 Pa, but was 999999");
    }

    @Test
    void limitsGiveBackTheQuantityTheyChecked() {
        Length span = Length.metres(0.9);
        assertThat(SPAN.check(span)).isSameAs(span);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SPAN.check(Length.mm(5)))
                .withMessage("span must be from 0.01 to 100 m, but was 0.005");
    }

    @Test
    void limitsMayBeOneValueButNotUpsideDownNorUnknown() {
        assertThat(new Limits("span", 2, 2, "m").allow(2)).isTrue();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Limits("span", 3, 2, "m"))
                .withMessage("limits of span are upside down: 3.0 to 2.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Limits("span", Double.NaN, 2, "m"))
                .withMessage("limits of span are upside down: NaN to 2.0");
    }
}
