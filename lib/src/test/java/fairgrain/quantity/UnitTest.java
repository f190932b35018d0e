package fairgrain.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitTest {
    /** The inch is 0.0254 m and the pound 0.45359237 kg, both exactly; the sizes follow, here to seven digits. */
    @ParameterizedTest(name = "1 {0} is {1} SI")
    @CsvSource({
        "CENTIMETRE, 0.01",
        "INCH, 0.0254",
        "FOOT, 0.3048",
        "KILONEWTON, 1000",
        "POUND_FORCE, 4.448222",
        "KILOGRAM_FORCE, 9.80665",
        "GIGAPASCAL, 1e9",
        "PSI, 6894.757",
        "KILOPASCAL, 1000",
        "POUND_PER_SQUARE_FOOT, 47.88026",
        "GRAM, 0.001",
        "POUND, 0.4535924",
        "OUNCE, 0.02834952",
        "POUND_PER_FOOT, 1.488164",
        "POUND_PER_AREA, 4.882428",
        "POUND_PER_CUBIC_FOOT, 16.01846",
        "POUND_INCH, 0.1129848",
        "FAHRENHEIT, 255.9278",
        "WEEK, 604800",
        "YEAR, 31557600",
        "PERCENT, 0.01"
    })
    void oneOfEachIsItsKnownSize(Unit unit, double si) {
        assertThat(unit.toSi(1)).isCloseTo(si, within(5e-7 * si));
    }

    @Test
    void twelveMonthsAreOneYear() {
        assertThat(Unit.MONTH.toSi(12)).isCloseTo(Unit.YEAR.toSi(1), within(1e-6));
    }

    @Property
    void whatIsReadInAUnitIsWrittenInItAgain(
            @ForAll Unit unit, @ForAll @DoubleRange(min = -1000, max = 1000) double value) {
        assertThat(unit.fromSi(unit.toSi(value))).isCloseTo(value, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource
    void everySignFindsItsUnitInCapitalsToo(Unit unit) {
        assertThat(Unit.find(unit.dimension(), unit.sign())).isEqualTo(unit);
        assertThat(Unit.find(unit.dimension(), capitals(unit.sign()))).isEqualTo(unit);
    }

    private static String capitals(String sign) {
        return sign.toUpperCase(Locale.ROOT);
    }

    @Test
    void aSignMeansWhatTheDimensionMakesOfIt() {
        assertThat(Unit.find(Dimension.MASS, "lb")).isEqualTo(Unit.POUND);
        assertThat(Unit.find(Dimension.FORCE, "lb")).isEqualTo(Unit.POUND_FORCE);
        assertThat(Unit.find(Dimension.LENGTH, "lb")).isNull();
        assertThat(Unit.find(Dimension.LENGTH, "cubit")).isNull();
    }

    @Test
    void theSignsOfADimensionAreTheFirstOfEachUnit() {
        assertThat(Unit.signs(Dimension.LENGTH)).containsExactly("m", "cm", "mm", "in", "ft");
        assertThat(Unit.signs(Dimension.TEMPERATURE)).containsExactly("°C", "°F");
    }

    @Test
    void aPlainNumberHasNoSign() {
        assertThat(Unit.signs(Dimension.COUNT)).isEmpty();
        assertThat(Unit.signs(Dimension.RATIO)).containsExactly("%");
    }

    @ParameterizedTest
    @CsvSource({
        "LENGTH, INCH, MILLIMETRE",
        "FORCE, POUND_FORCE, NEWTON",
        "STRESS, PSI, MEGAPASCAL",
        "PRESSURE, POUND_PER_SQUARE_FOOT, KILOPASCAL",
        "MASS, POUND, KILOGRAM",
        "LINE_MASS, POUND_PER_FOOT, KILOGRAM_PER_METRE",
        "AREA_MASS, POUND_PER_AREA, KILOGRAM_PER_AREA",
        "DENSITY, POUND_PER_CUBIC_FOOT, KILOGRAM_PER_CUBIC_METRE",
        "MOMENT, POUND_INCH, NEWTON_METRE",
        "MOISTURE, MOISTURE_PERCENT, MOISTURE_PERCENT",
        "HUMIDITY, HUMIDITY_PERCENT, HUMIDITY_PERCENT",
        "TEMPERATURE, FAHRENHEIT, CELSIUS",
        "TIME, DAY, DAY",
        "RATIO, TIMES, TIMES",
        "COUNT, PIECES, PIECES"
    })
    void eachShopWritesItsOwnUnits(Dimension dimension, Unit inches, Unit millimetres) {
        assertThat(UnitSystem.INCHES.unit(dimension)).isEqualTo(inches);
        assertThat(UnitSystem.MILLIMETRES.unit(dimension)).isEqualTo(millimetres);
        assertThat(inches.dimension()).isEqualTo(dimension);
        assertThat(millimetres.dimension()).isEqualTo(dimension);
    }

    @Test
    void aShopIsCalledByItsUnit() {
        assertThat(UnitSystem.INCHES.word()).isEqualTo("inches");
        assertThat(UnitSystem.MILLIMETRES.word()).isEqualTo("millimetres");
        assertThat(UnitSystem.INCHES.also()).contains("in", "inch").doesNotContain("mm");
        assertThat(UnitSystem.MILLIMETRES.also()).contains("mm", "millimeters").doesNotContain("in");
    }
}
