package fairgrain.form;

import static org.assertj.core.api.Assertions.assertThat;

import fairgrain.quantity.Dimension;
import fairgrain.quantity.Limits;
import fairgrain.quantity.ShopNumber;
import fairgrain.quantity.UnitSystem;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoundsTest {
    @ParameterizedTest(name = "{0} {1} to {2}")
    @CsvSource({
        "LENGTH, 0.002, 0.04, from 3/32 to 1 9/16 in, from 2 to 40 mm",
        "LENGTH, 0, 2, from 0 to 78 in, from 0 to 2000 mm",
        "LENGTH, 0.0001, 0.003, from 0.004 to 7/64 in, from 0.1 to 3 mm",
        "LENGTH, -0.01, 0.0254, from -25/64 to 1 in, from -10 to 25.4 mm",
        "MASS, 0.45359237, 226.796185, from 1 to 500 lb, from 0.454 to 226 kg",
        "FORCE, 0, 1000, from 0 to 224 lbf, from 0 to 1000 N",
        "MOISTURE, 0.03, 0.25, from 3 to 25 %, from 3 to 25 %",
        "HUMIDITY, 0, 1, from 0 to 100 %, from 0 to 100 %",
        "TEMPERATURE, 213.15, 373.15, from -76 to 212 °F, from -60 to 100 °C",
        "TIME, 86400, 1577880000, from 1 day to 50 years, from 1 day to 50 years",
        "TIME, 604800, 259200000, from 1 week to 3000 days, from 1 week to 3000 days",
        "RATIO, 1, 4, from 1 to 4, from 1 to 4",
        "STRESS, 1e6, 5e7, from 146 to 7250 psi, from 1 to 50 MPa",
        "MASS, 1, Infinity, from 2.21 lb upwards, from 1 kg upwards"
    })
    void limitsAreRoundedInwardsInTheUnitsOfTheShop(
            Dimension dimension, double least, double most, String inches, String metric) {
        Limits limits = new Limits("number", least, most, "");
        assertThat(Bounds.text(limits, dimension, UnitSystem.INCHES)).isEqualTo(inches);
        assertThat(Bounds.text(limits, dimension, UnitSystem.MILLIMETRES)).isEqualTo(metric);
    }

    @Property
    void whatIsPrintedIsAllowed(
            @ForAll @DoubleRange(min = 0.0005, max = 1) @Scale(7) double least,
            @ForAll @DoubleRange(min = 1.01, max = 20) @Scale(4) double factor,
            @ForAll UnitSystem system) {
        Limits limits = new Limits("length", least, least * factor, "m");
        String[] ends = Bounds.text(limits, Dimension.LENGTH, system)
                .replace("from ", "")
                .split(" to ", -1);
        double from = ShopNumber.length(ends[0], system).metres();
        double to = ShopNumber.length(ends[1], system).metres();
        assertThat(from).isBetween(least * (1 - 1e-9), to);
        assertThat(to).isLessThanOrEqualTo(least * factor * (1 + 1e-9));
    }
}
