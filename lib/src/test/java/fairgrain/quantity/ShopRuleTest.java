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

class ShopRuleTest {
    @ParameterizedTest
    @CsvSource({
        "57.15, 2 1/4 in, 57.2 mm",
        "22.225, 7/8 in, 22.2 mm",
        "0, 0 in, 0 mm",
        "1.1, 0.043 in, 1.1 mm",
        "0.25, 0.01 in, 0.25 mm",
        "-3.175, -1/8 in, -3.2 mm",
        "300, 11 13/16 in, 300 mm",
        "18, 0.709 in, 18 mm"
    })
    void writesLengthsOfBothKinds(double mm, String inches, String millimetres) {
        assertThat(ShopRule.INCHES.text(Length.mm(mm))).isEqualTo(inches);
        assertThat(ShopRule.MILLIMETRES.text(Length.mm(mm))).isEqualTo(millimetres);
    }

    @Test
    void writesOtherNumbersInTheUnitsOfTheShop() {
        assertThat(ShopRule.INCHES.text(Force.newtons(289.13))).isEqualTo("65 lbf");
        assertThat(ShopRule.MILLIMETRES.text(Force.newtons(289.13))).isEqualTo("289 N");
        assertThat(ShopRule.INCHES.text(Mass.kilograms(25))).isEqualTo("55.1 lb");
        assertThat(ShopRule.MILLIMETRES.text(MoistureContent.percent(7.46))).isEqualTo("7.5 %");
        assertThat(ShopRule.INCHES.text(Temperature.celsius(20))).isEqualTo("68 °F");
        assertThat(ShopRule.INCHES.text(Amount.of(1e7, Dimension.STRESS))).isEqualTo("1450 psi");
        assertThat(ShopRule.INCHES.text(Amount.of(86_400 * 21, Dimension.TIME))).isEqualTo("3 weeks");
        assertThat(ShopRule.INCHES.text(Amount.of(86_400, Dimension.TIME))).isEqualTo("1 day");
    }

    @Property
    void upAndDownEncloseTheLengthWithinOneMark(@ForAll @DoubleRange(min = -3, max = 3) double metres) {
        Length length = new Length(metres);
        for (ShopRule rule : new ShopRule[] {ShopRule.INCHES, ShopRule.MILLIMETRES}) {
            double hair = rule.step().metres() * 1e-5;
            assertThat(rule.up(length).metres())
                    .isBetween(metres - hair, metres + rule.step().metres());
            assertThat(rule.down(length).metres())
                    .isBetween(metres - rule.step().metres(), metres + hair);
            assertThat(rule.up(rule.down(length))).isEqualTo(rule.down(length));
        }
    }

    @Test
    void aLengthOnAMarkStaysThere() {
        Length mark = Length.inches(11 + 7 / 32.0);
        assertThat(ShopRule.INCHES.up(mark).metres()).isCloseTo(mark.metres(), within(1e-12));
        assertThat(ShopRule.INCHES.down(mark).metres()).isCloseTo(mark.metres(), within(1e-12));
    }

    @Test
    void refusesWhatIsNotANumber() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.mm(Double.NaN))
                .withMessage("length must be from -1000 to 1000 m, but was NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MoistureContent.percent(-1))
                .withMessage("moisture content must be from 0 to 200 %, but was -1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RelativeHumidity.percent(140))
                .withMessage("relative humidity must be from 0 to 100 %, but was 140");
    }

    @Test
    void aShopCalledByItsUnitsWorksToItsUsualMark() {
        assertThat(ShopRule.of(UnitSystem.INCHES)).isEqualTo(ShopRule.INCHES);
        assertThat(ShopRule.of(UnitSystem.MILLIMETRES)).isEqualTo(ShopRule.MILLIMETRES);
        assertThat(ShopRule.INCHES.step().toInches()).isCloseTo(1 / 32.0, within(1e-15));
        assertThat(ShopRule.MILLIMETRES.step().toMm()).isCloseTo(0.5, within(1e-15));
    }

    /** On half millimetres 10.2 is nearer to 10, 10.3 to 10.5; below zero alike. */
    @ParameterizedTest
    @CsvSource({"10.2, 10", "10.3, 10.5", "-10.2, -10", "-10.3, -10.5", "0.1, 0", "-0.1, 0"})
    void theNearestMarkIsAtMostHalfAStepAway(double mm, double mark) {
        assertThat(ShopRule.MILLIMETRES.nearest(Length.mm(mm)).toMm()).isCloseTo(mark, within(1e-9));
    }

    @Property
    void noMarkIsNearerThanTheNearest(@ForAll @DoubleRange(min = -3, max = 3) double metres) {
        Length length = new Length(metres);
        double off = Math.abs(ShopRule.INCHES.nearest(length).minus(length).metres());
        assertThat(off)
                .isLessThanOrEqualTo(
                        Math.abs(ShopRule.INCHES.up(length).minus(length).metres()) + 1e-12)
                .isLessThanOrEqualTo(
                        Math.abs(ShopRule.INCHES.down(length).minus(length).metres()) + 1e-12);
    }

    @Test
    void nothingIsNeverWrittenAsMinusNothing() {
        assertThat(ShopRule.INCHES.text(Length.mm(-0.01))).isEqualTo("0 in");
        assertThat(ShopRule.MILLIMETRES.text(Length.mm(-0.001))).isEqualTo("0 mm");
        assertThat(ShopRule.MILLIMETRES.down(Length.mm(-1e-9))).isEqualTo(Length.ZERO);
    }

    @ParameterizedTest
    @CsvSource({
        "1, 1 day",
        "13, 13 days",
        "13.9, 14 days",
        "14, 2 weeks",
        "89, 13 weeks",
        "90, 3 months",
        "365.25, 12 months",
        "729, 24 months",
        "730, 2 years",
        "3652.5, 10 years"
    })
    void timesAreWrittenInDaysThenWeeksThenMonthsThenYears(double days, String text) {
        assertThat(ShopRule.INCHES.text(Amount.of(86_400 * days, Dimension.TIME)))
                .isEqualTo(text);
    }

    @Test
    void ratiosAndCountsCarryNoUnitAndAHugeRatioIsOnlyTold() {
        assertThat(ShopRule.INCHES.text(Amount.ratio(1.2345))).isEqualTo("1.23");
        assertThat(ShopRule.INCHES.text(Amount.ratio(0.5))).isEqualTo("0.5");
        assertThat(ShopRule.INCHES.text(Amount.ratio(999))).isEqualTo("999");
        assertThat(ShopRule.INCHES.text(Amount.ratio(1000))).isEqualTo("over 999");
        assertThat(ShopRule.INCHES.text(Amount.count(3))).isEqualTo("3");
        assertThat(ShopRule.INCHES.text(Amount.count(123_456))).isEqualTo("123456");
    }

    @Test
    void humidityIsWrittenInPercentAndCelsiusWithoutDecimals() {
        assertThat(ShopRule.INCHES.text(RelativeHumidity.percent(45.26))).isEqualTo("45.3 %");
        assertThat(ShopRule.MILLIMETRES.text(Temperature.celsius(-4.6))).isEqualTo("-5 °C");
    }

    @ParameterizedTest
    @CsvSource({
        "1, 1 in",
        "1.01, 1 1/64 in",
        "0.5, 1/2 in",
        "-0.5, -1/2 in",
        "0.3, 0.3 in",
        "-0.3, -0.3 in",
        "-2.25, -2 1/4 in",
        "0.998, 0.998 in",
        "0.015625, 1/64 in"
    })
    void inchesAreSixtyFourthsInTheLowestTermsOrThousandthsBelowOne(double inches, String text) {
        assertThat(ShopRule.INCHES.text(Length.inches(inches))).isEqualTo(text);
    }

    @Test
    void aShopsFinestMarkIsFromAHundredthOfAMillimetreToADecimetre() {
        assertThat(new ShopRule(UnitSystem.MILLIMETRES, Length.metres(1e-5)).step())
                .isEqualTo(Length.metres(1e-5));
        assertThat(new ShopRule(UnitSystem.MILLIMETRES, Length.metres(0.1)).step())
                .isEqualTo(Length.metres(0.1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ShopRule(UnitSystem.MILLIMETRES, Length.ZERO))
                .withMessage("shop step must be from 1.0E-5 to 0.1 m, but was 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ShopRule(UnitSystem.MILLIMETRES, Length.metres(0.5)))
                .withMessage("shop step must be from 1.0E-5 to 0.1 m, but was 0.5");
    }
}
