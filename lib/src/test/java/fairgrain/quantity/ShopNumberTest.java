package fairgrain.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShopNumberTest {
    @ParameterizedTest
    @CsvSource({
        "2 1/4, 57.15",
        "2-1/4, 57.15",
        "2¼, 57.15",
        "2 ¼, 57.15",
        "¼, 6.35",
        "2.25 in, 57.15",
        "2.25, 57.15",
        "7/8, 22.225",
        "7/8 in, 22.225",
        "57 mm, 57",
        "57mm, 57",
        "18.5 mm, 18.5",
        "2.5 cm, 25",
        "1.5 m, 1500",
        "47 3/8 in, 1203.325",
        "'47 3/8\"', 1203.325",
        "1 ft 2 1/2 in, 368.3",
        "'1'' 2 1/2\"', 368.3",
        "6 ft, 1828.8",
        "-1/8 in, -3.175",
        "' 30 ', 762"
    })
    void readsLengthsAsMakersWriteThem(String text, double mm) {
        assertThat(ShopNumber.length(text, UnitSystem.INCHES).toMm()).isCloseTo(mm, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"18, 18", "18.5, 18.5", "3/4 in, 19.05", "1 m, 1000"})
    void aBareNumberTakesTheUnitOfTheDesign(String text, double mm) {
        assertThat(ShopNumber.length(text, UnitSystem.MILLIMETRES).toMm()).isCloseTo(mm, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"4/4", "5/4", "8/4", "12/4", "2x4", "1 x 10", "2×4", "3/4 ply", "18 mm plywood", "3/4 stock"})
    void asksForTheMeasuredSizeWhereANameIsGiven(String text) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShopNumber.length(text, UnitSystem.INCHES))
                .withMessageStartingWith("'" + text + "' is a name, not a size")
                .withMessageEndingWith("measure it and write what you find, such as 23/32 or 18.2 mm");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "11,5 | write the decimal mark as a point, such as 11.5, not '11,5'",
                "7/8 7 | must look like 2 1/4, 2-1/4, 2.25 in, 1 ft 2 1/2 in or 57 mm, but was '7/8 7'",
                "9/8 | a fraction must be less than one, but was '9/8'",
                "3/0 | a fraction must be less than one, but was '3/0'",
                "11 lb | has no unit 'lb'; write 2 1/4, 2-1/4, 2.25 in, 1 ft 2 1/2 in or 57 mm, but was '11 lb'",
                "NaN | must look like 2 1/4, 2-1/4, 2.25 in, 1 ft 2 1/2 in or 57 mm, but was 'NaN'",
                "1e3 mm | must look like 2 1/4, 2-1/4, 2.25 in, 1 ft 2 1/2 in or 57 mm, but was '1e3 mm'"
            })
    void refusesAndSaysHowToMendIt(String text, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShopNumber.length(text, UnitSystem.INCHES))
                .withMessage(message);
    }

    @ParameterizedTest
    @CsvSource({
        "68 F, TEMPERATURE, 293.15",
        "20 °C, TEMPERATURE, 293.15",
        "20 C, TEMPERATURE, 293.15",
        "-5 C, TEMPERATURE, 268.15",
        "35 %, HUMIDITY, 0.35",
        "9%, MOISTURE, 0.09",
        "7½ %, MOISTURE, 0.075",
        "25 lb, MASS, 11.33980925",
        "400 g, MASS, 0.4",
        "20 lb/ft, LINE_MASS, 29.76327",
        "30 kg/m, LINE_MASS, 30",
        "15 lb/ft2, AREA_MASS, 73.2364",
        "65 lbf, FORCE, 289.1345",
        "3 weeks, TIME, 1814400",
        "1 year, TIME, 31557600",
        "1.5, RATIO, 1.5",
        "3, COUNT, 3"
    })
    void readsOtherNumbersWithTheirUnits(String text, Dimension dimension, double si) {
        assertThat(ShopNumber.si(text, dimension)).isCloseTo(si, within(1e-4 * Math.abs(si)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "9 | MOISTURE | needs its unit, such as 9 %, but was '9'",
                "68 | TEMPERATURE | needs its unit, such as 68 F or 20 C, but was '68'",
                "68 % | TEMPERATURE | has no unit '%'; write 68 F or 20 C, but was '68 %'"
            })
    void neverGuessesTheUnitOfAnythingButALength(String text, Dimension dimension, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShopNumber.si(text, dimension))
                .withMessage(message);
    }

    @Property
    void everySixtyFourthIsWrittenAndReadBackTheSame(
            @ForAll @IntRange(max = 99) int whole, @ForAll @IntRange(max = 63) int over) {
        Length length = Length.inches(whole + over / 64.0);
        String text = ShopRule.INCHES.text(length);
        assertThat(ShopRule.INCHES.length(text).metres()).isCloseTo(length.metres(), within(1e-12));
        assertThat(ShopRule.INCHES.text(ShopRule.INCHES.length(text))).isEqualTo(text);
    }

    @Property
    void whatIsWrittenReadsBackAsWhatIsWritten(@ForAll @DoubleRange(min = -9000, max = 9000) double mm) {
        for (ShopRule rule : new ShopRule[] {ShopRule.INCHES, ShopRule.MILLIMETRES}) {
            String text = rule.text(Length.mm(mm));
            assertThat(rule.text(rule.length(text))).isEqualTo(text);
        }
    }

    @Property
    void inchesReadAsInchesWhateverTheDesignsUnit(@ForAll @DoubleRange(min = 0, max = 100) double mm) {
        String text = ShopRule.INCHES.text(Length.mm(mm));
        assertThat(ShopRule.MILLIMETRES.length(text)).isEqualTo(ShopRule.INCHES.length(text));
    }

    @ParameterizedTest
    @CsvSource({"5/4, rough board", "2x4, sawn board", "3/4 ply, sheet", "4/4, rough board"})
    void saysWhatKindOfNameItIs(String text, String kind) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShopNumber.length(text, UnitSystem.INCHES))
                .withMessage("'" + text + "' is a name, not a size: a " + kind + " called so is thinner than it sounds;"
                        + " measure it and write what you find, such as 23/32 or 18.2 mm");
    }

    @ParameterizedTest
    @CsvSource({"3/4, 19.05", "1/4, 6.35", "2/4, 12.7"})
    void quartersBelowOneInchAreSizes(String text, double mm) {
        assertThat(ShopNumber.length(text, UnitSystem.INCHES).toMm()).isCloseTo(mm, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"4/4 in", "3/3", "2 8/8"})
    void aFractionThatMakesAWholeIsRefused(String text) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShopNumber.length(text, UnitSystem.INCHES))
                .withMessage("a fraction must be less than one, but was '" + text + "'");
    }

    /** Two digits, two letters and 96 blanks are a hundred signs, which is the most; one blank more is refused. */
    @Test
    void aHundredSignsAreReadAndOneMoreIsNot() {
        String blanks = " ".repeat(96);
        assertThat(ShopNumber.si("25" + blanks + "kg", Dimension.MASS)).isEqualTo(25);
        assertThat(ShopNumber.length("25" + blanks + "mm", UnitSystem.INCHES).toMm())
                .isCloseTo(25, within(1e-9));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShopNumber.si("25 " + blanks + "kg", Dimension.MASS))
                .withMessage("must look like 25 lb or 11.3 kg, but was '25" + " ".repeat(58) + "...'");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShopNumber.length("25 " + blanks + "mm", UnitSystem.INCHES))
                .withMessage("must look like 2 1/4, 2-1/4, 2.25 in, 1 ft 2 1/2 in or 57 mm, but was '25"
                        + " ".repeat(58) + "...'");
    }

    @ParameterizedTest
    @CsvSource({
        "FORCE, 65 lbf, 290 N",
        "STRESS, 1500 psi, 10 MPa",
        "PRESSURE, 15 lb/ft2, 0.72 kPa",
        "MASS, 25 lb, 11.3 kg",
        "LINE_MASS, 20 lb/ft, 30 kg/m",
        "AREA_MASS, 15 lb/ft2, 73 kg/m2",
        "DENSITY, 40 lb/ft3, 640 kg/m3",
        "MOMENT, 650 in-lb, 73 Nm"
    })
    void theTwoExamplesOfADimensionAreAboutTheSame(Dimension dimension, String pounds, String metric) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShopNumber.si("much", dimension))
                .withMessage("must look like " + pounds + " or " + metric + ", but was 'much'");
        assertThat(ShopNumber.si(pounds, dimension) / ShopNumber.si(metric, dimension))
                .isBetween(0.96, 1.04);
    }
}
