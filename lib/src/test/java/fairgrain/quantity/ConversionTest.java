package fairgrain.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The value types: inch, pound and Fahrenheit against their definitions, sums, and what each refuses. */
class ConversionTest {
    private static final double ROUNDING = 1e-12;

    @Test
    void aFootOfTwelveInchesIs304Point8Millimetres() {
        assertThat(Length.inches(12).toMm()).isCloseTo(304.8, within(1e-9));
        assertThat(Length.mm(304.8).toInches()).isCloseTo(12, within(ROUNDING));
        assertThat(Length.metres(0.3048)).isEqualTo(new Length(0.3048));
        assertThat(Length.metres(0.3048).si()).isEqualTo(0.3048);
    }

    /** The pound is 0.45359237 kg exactly; times 9.80665 m/s² it weighs 4.4482216152605 N. */
    @Test
    void aPoundPressesWithAPoundOfForce() {
        assertThat(Mass.pounds(2).kilograms()).isCloseTo(0.90718474, within(ROUNDING));
        assertThat(Force.pounds(2).newtons()).isCloseTo(8.896443230521, within(ROUNDING));
        assertThat(Force.newtons(8.896443230521).toPounds()).isCloseTo(2, within(ROUNDING));
        assertThat(Mass.pounds(2).weight().toPounds()).isCloseTo(2, within(ROUNDING));
        assertThat(Mass.kilograms(10).weight().newtons()).isCloseTo(98.0665, within(ROUNDING));
    }

    @ParameterizedTest(name = "{0} °F is {1} °C is {2} K")
    @CsvSource({"32, 0, 273.15", "68, 20, 293.15", "-40, -40, 233.15", "212, 100, 373.15"})
    void waterFreezesAt32FahrenheitAndBoilsAt212(double fahrenheit, double celsius, double kelvin) {
        Temperature typed = Temperature.fahrenheit(fahrenheit);
        assertThat(typed.kelvin()).isCloseTo(kelvin, within(1e-10));
        assertThat(typed.toCelsius()).isCloseTo(celsius, within(1e-10));
        assertThat(Temperature.celsius(celsius).toFahrenheit()).isCloseTo(fahrenheit, within(1e-10));
    }

    @Test
    void aPercentIsAHundredthAndIsWrittenAsAPercentAgain() {
        assertThat(MoistureContent.percent(9).fraction()).isEqualTo(0.09);
        assertThat(MoistureContent.percent(9).toPercent()).isCloseTo(9, within(ROUNDING));
        assertThat(RelativeHumidity.percent(45).si()).isEqualTo(0.45);
        assertThat(RelativeHumidity.percent(45).toPercent()).isCloseTo(45, within(ROUNDING));
    }

    @Test
    void eachTypeSaysWhatItMeasures() {
        assertThat(Length.ZERO.dimension()).isEqualTo(Dimension.LENGTH);
        assertThat(Force.newtons(1).dimension()).isEqualTo(Dimension.FORCE);
        assertThat(Mass.kilograms(1).dimension()).isEqualTo(Dimension.MASS);
        assertThat(MoistureContent.percent(9).dimension()).isEqualTo(Dimension.MOISTURE);
        assertThat(RelativeHumidity.percent(45).dimension()).isEqualTo(Dimension.HUMIDITY);
        assertThat(Temperature.celsius(20).dimension()).isEqualTo(Dimension.TEMPERATURE);
        assertThat(Amount.of(7, Dimension.STRESS)).isEqualTo(new Amount(7, Dimension.STRESS));
        assertThat(Amount.ratio(1.5)).isEqualTo(new Amount(1.5, Dimension.RATIO));
        assertThat(Amount.count(3)).isEqualTo(new Amount(3, Dimension.COUNT));
    }

    @Test
    void lengthsAndMassesAddUp() {
        assertThat(Length.mm(500).plus(Length.mm(250)).toMm()).isCloseTo(750, within(1e-9));
        assertThat(Length.mm(250).minus(Length.mm(500)).toMm()).isCloseTo(-250, within(1e-9));
        assertThat(Length.mm(250).times(3).toMm()).isCloseTo(750, within(1e-9));
        assertThat(Mass.kilograms(2).plus(Mass.kilograms(0.5))).isEqualTo(Mass.kilograms(2.5));
    }

    @Property
    void whatIsAddedCanBeTakenAwayAgain(
            @ForAll @DoubleRange(min = -400, max = 400) double first,
            @ForAll @DoubleRange(min = -400, max = 400) double second) {
        Length sum = Length.metres(first).plus(Length.metres(second));
        assertThat(sum.minus(Length.metres(second)).metres()).isCloseTo(first, within(1e-9));
        assertThat(Length.metres(second).plus(Length.metres(first))).isEqualTo(sum);
    }

    @Test
    void theLongerLengthAndTheWetterWoodComeLast() {
        assertThat(Length.mm(2)).isGreaterThan(Length.mm(1)).isLessThan(Length.mm(3));
        assertThat(Length.mm(2)).isEqualByComparingTo(Length.metres(0.002));
        assertThat(MoistureContent.percent(9))
                .isGreaterThan(MoistureContent.percent(6))
                .isLessThan(MoistureContent.percent(12))
                .isEqualByComparingTo(MoistureContent.percent(9));
    }

    @Test
    void aWindowHoldsBothItsEndsAndNothingBeyond() {
        Window window = new Window(Length.mm(300), Length.mm(302));
        assertThat(window.contains(Length.mm(300))).isTrue();
        assertThat(window.contains(Length.mm(301))).isTrue();
        assertThat(window.contains(Length.mm(302))).isTrue();
        assertThat(window.contains(Length.mm(299.999))).isFalse();
        assertThat(window.contains(Length.mm(302.001))).isFalse();
        assertThat(window.middle().toMm()).isCloseTo(301, within(1e-9));
    }

    @Test
    void aWindowOfOneSizeIsNotEmptyButOneUpsideDownIs() {
        assertThat(new Window(Length.mm(300), Length.mm(300)).isEmpty()).isFalse();
        assertThat(new Window(Length.mm(300), Length.mm(301)).isEmpty()).isFalse();
        assertThat(new Window(Length.mm(301), Length.mm(300)).isEmpty()).isTrue();
    }

    @Test
    void anEstimateIsReadSoManyDeviationsAboveOrBelow() {
        Estimate estimate = new Estimate(10, 3);
        assertThat(estimate.at(0)).isEqualTo(10);
        assertThat(estimate.at(2)).isEqualTo(16);
        assertThat(estimate.at(-2)).isEqualTo(4);
        assertThat(new Estimate(10, 0).at(5)).isEqualTo(10);
    }

    @Test
    void anEstimateNeedsANumberAndASpreadOfZeroOrMore() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Estimate(Double.NaN, 1))
                .withMessage("expected value must be a finite number of (SI), but was NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Estimate(10, -1))
                .withMessage("standard deviation must be 0 (SI) or more, but was -1");
    }

    @Test
    void eachTypeTakesItsLimitsAndRefusesWhatLiesBeyond() {
        assertThat(Length.metres(-1000).metres()).isEqualTo(-1000);
        assertThat(Length.metres(1000).metres()).isEqualTo(1000);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.metres(1000.5))
                .withMessage("length must be from -1000 to 1000 m, but was 1000.5");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Mass.kilograms(-0.5))
                .withMessage("mass must be from 0 to 100000 kg, but was -0.5");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Force.newtons(2e7))
                .withMessage("force must be from -1.0E7 to 1.0E7 N, but was 2.0E7");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Temperature.celsius(101))
                .withMessage("temperature must be from 213.15 to 373.15 K, but was 374.15");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MoistureContent(9))
                .withMessage("moisture content must be from 0 to 2 (a fraction; 9 % is 0.09), but was 9");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RelativeHumidity(45))
                .withMessage("relative humidity must be from 0 to 1 (a fraction; 45 % is 0.45), but was 45");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Amount.of(Double.POSITIVE_INFINITY, Dimension.MOMENT))
                .withMessage("amount must be a finite number of SI (MOMENT), but was Infinity");
    }
}
