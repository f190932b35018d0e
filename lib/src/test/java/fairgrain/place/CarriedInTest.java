package fairgrain.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Basis;
import fairgrain.moisture.HumidityCeiling;
import fairgrain.moisture.MoistureExcess;
import fairgrain.moisture.Occupancy;
import fairgrain.place.Indoors.Kept;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.RelativeHumidity;
import fairgrain.quantity.Temperature;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Rooms reckoned from the weather outside. */
class CarriedInTest {
    private static final List<OutdoorClimate> CLIMATES = OutdoorClimate.read(
            new InputStreamReader(
                    Objects.requireNonNull(
                            OutdoorClimate.class.getResourceAsStream("/fairgrain/data/outdoor-climates.csv")),
                    StandardCharsets.UTF_8),
            "outdoor-climates.csv");

    private static OutdoorClimate climate(String place) {
        return CLIMATES.stream()
                .filter(one -> one.place().startsWith(place))
                .findFirst()
                .orElseThrow();
    }

    private static MoistureYear year(String place, Kept kept) {
        return CarriedIn.of(climate(place), Indoors.of(kept));
    }

    private static IndoorClimate.Air air(double celsius, double fraction) {
        return new IndoorClimate.Air(Temperature.celsius(celsius), new RelativeHumidity(fraction));
    }

    private static double mean(MoistureYear year) {
        return year.byMonth().orElseThrow().months().stream()
                .mapToDouble(Estimate::expected)
                .average()
                .orElseThrow();
    }

    @ParameterizedTest(name = "{0}, {1}, {5}")
    @CsvFileSource(resources = "/published/emc-outdoors.csv", useHeadersInDisplayName = true)
    void anOpenPorchIsOutdoors(
            String place,
            String month,
            double temperature,
            double humidity,
            double expected,
            double tolerance,
            String source,
            String basis) {
        Month when = Month.ofDate(month);
        IndoorClimate.Air outdoors =
                Objects.requireNonNull(climate(place).months().get(when));
        assertThat(outdoors.temperature().toCelsius()).isCloseTo(temperature, within(1e-9));
        assertThat(outdoors.humidity().toPercent()).isCloseTo(humidity, within(1e-9));
        Estimate porch = year(place, Kept.PORCH).byMonth().orElseThrow().in(when);
        assertThat(100 * porch.expected()).as(source + ", " + basis).isCloseTo(expected, within(tolerance));
    }

    @ParameterizedTest(name = "{0}, {15}")
    @CsvFileSource(resources = "/published/outdoor-cities.csv", useHeadersInDisplayName = true)
    void citiesLieAsFarFromTheHandbookAsTheyDidBefore(ArgumentsAccessor row) {
        YearByMonth porch = year(row.getString(0), Kept.PORCH).byMonth().orElseThrow();
        double difference = 0;
        for (Month month : Month.values()) {
            difference += Math.abs(100 * porch.in(month).expected() - row.getDouble(month.number())) / 12;
        }
        assertThat(difference).as(row.getString(15)).isCloseTo(row.getDouble(13), within(row.getDouble(14)));
    }

    @ParameterizedTest(name = "{0}, {1}, {2}, {5}")
    @CsvFileSource(resources = "/published/indoors-by-outdoors.csv", useHeadersInDisplayName = true)
    void roomsAgreeWithOtherReckonings(
            String place, Kept kept, String end, double expected, double tolerance, String source, String basis) {
        MoistureYear year = year(place, kept);
        double reckoned = switch (end) {
            case "dry" -> year.dry().expected();
            case "damp" -> year.damp().expected();
            case "mean" -> mean(year);
            default -> throw new IllegalArgumentException(end);
        };
        assertThat(100 * reckoned).as(source + ", " + basis).isCloseTo(expected, within(tolerance));
    }

    @Test
    void saysWhereItComesFromAndWhatIsAChoice() {
        MoistureYear cooled = year("Chicago", Kept.COOLED);
        assertThat(cooled.said())
                .isEqualTo("outdoors as in Chicago O'Hare, Illinois, carried into a house heated and cooled (60 %"
                        + " humidity at most); driest in January, dampest in July");
        assertThat(cooled.evidence().sources())
                .contains(
                        climate("Chicago").source(),
                        MoistureExcess.MEAN_OF_HOUSES,
                        HumidityCeiling.SOURCE,
                        CarriedIn.SPREAD);
        assertThat(cooled.evidence().weakest()).isEqualTo(Basis.JUDGEMENT);
        assertThat(year("Zurich", Kept.NOW_AND_THEN).said())
                .startsWith(
                        "outdoors as in Zurich ETH, carried into a room heated now and then (2 days of 7); driest in");
        assertThat(year("Montreal", Kept.UNHEATED).said())
                .contains(
                        "carried into an unheated room; in frost, what wood settles at lies beyond the printed table;");
        assertThat(year("Singapore", Kept.UNHEATED).said()).doesNotContain("frost");
    }

    @Property
    void damperOutdoorsNeverDriesTheRoom(
            @ForAll Kept kept,
            @ForAll @DoubleRange(min = -28, max = 40) double celsius,
            @ForAll @DoubleRange(min = 0.05, max = 1) double one,
            @ForAll @DoubleRange(min = 0.05, max = 1) double other) {
        Indoors indoors = Indoors.of(kept);
        SettledMonth drier = CarriedIn.settled(air(celsius, Math.min(one, other)), indoors);
        SettledMonth damper = CarriedIn.settled(air(celsius, Math.max(one, other)), indoors);
        assertThat(damper.middle()).isGreaterThanOrEqualTo(drier.middle() - 1e-12);
        assertThat(drier.middle()).isBetween(0.0, 0.3);
        assertThat(drier.sd()).isBetween(0.001, 0.05);
    }

    @Property
    void morePeopleNeverDryARoomAndCoolingNeverDampensOne(
            @ForAll Kept kept,
            @ForAll @DoubleRange(min = -28, max = 40) double celsius,
            @ForAll @DoubleRange(min = 0.05, max = 1) double h,
            @ForAll @DoubleRange(min = 0.3, max = 0.9) double ceiling) {
        double before = 0;
        for (Occupancy people : Occupancy.values()) {
            double moisture = CarriedIn.settled(
                            air(celsius, h), new Indoors(kept, 2, people, new RelativeHumidity(0.6)))
                    .middle();
            assertThat(moisture).isGreaterThanOrEqualTo(before);
            before = moisture;
        }
        SettledMonth cooled = CarriedIn.settled(
                air(celsius, h), new Indoors(Kept.COOLED, 2, Occupancy.NORMAL, new RelativeHumidity(ceiling)));
        SettledMonth uncooled = CarriedIn.settled(
                air(Math.min(celsius, 20), h), new Indoors(Kept.HEATED, 2, Occupancy.NORMAL, new RelativeHumidity(1)));
        assertThat(cooled.middle()).isPositive();
        if (celsius <= 20) {
            assertThat(cooled.middle()).isLessThanOrEqualTo(uncooled.middle());
        }
    }

    @Property
    void theMoreDaysAreHeatedInWinterTheDrierTheRoom(
            @ForAll @IntRange(min = 1, max = 5) int days,
            @ForAll @DoubleRange(min = -28, max = 5) double celsius,
            @ForAll @DoubleRange(min = 0.5, max = 1) double h) {
        IndoorClimate.Air outdoors = air(celsius, h);
        RelativeHumidity ceiling = new RelativeHumidity(0.6);
        double fewer = CarriedIn.settled(outdoors, new Indoors(Kept.NOW_AND_THEN, days, Occupancy.NORMAL, ceiling))
                .middle();
        double more = CarriedIn.settled(outdoors, new Indoors(Kept.NOW_AND_THEN, days + 1, Occupancy.NORMAL, ceiling))
                .middle();
        double none = CarriedIn.settled(outdoors, Indoors.of(Kept.UNHEATED)).middle();
        double porch = CarriedIn.settled(outdoors, Indoors.of(Kept.PORCH)).middle();
        assertThat(more).isLessThan(fewer);
        assertThat(fewer).isLessThan(none);
        assertThat(none).isLessThan(porch);
    }

    @ParameterizedTest
    @EnumSource
    void theEndsHoldEveryMonthOfEveryPlace(Kept kept) {
        for (OutdoorClimate place : CLIMATES) {
            MoistureYear year = CarriedIn.of(place, Indoors.of(kept));
            YearByMonth months = year.byMonth().orElseThrow();
            assertThat(months.drawn()).isEmpty();
            assertThat(months.months())
                    .as(place.id())
                    .allSatisfy(month -> assertThat(month.expected())
                            .isBetween(year.dry().expected(), year.damp().expected()));
            assertThat(year.swing()).as(place.id()).isBetween(0.0, 0.2);
        }
    }

    @Test
    void enteredMonthsAreReckonedLikeThoseOfAPlace() {
        OutdoorClimate chicago = climate("Chicago");
        MoistureYear entered = CarriedIn.entered(chicago.months(), Indoors.of(Kept.HEATED));
        MoistureYear named = year("Chicago", Kept.HEATED);
        assertThat(entered.dry()).isEqualTo(named.dry());
        assertThat(entered.damp()).isEqualTo(named.damp());
        assertThat(entered.said())
                .isEqualTo("outdoors as entered, carried into a heated house; driest in January, dampest in July");
        Map<Month, IndoorClimate.Air> some = new EnumMap<>(chicago.months());
        some.keySet().retainAll(List.of(Month.JANUARY, Month.APRIL, Month.JULY, Month.OCTOBER));
        MoistureYear fewer = CarriedIn.entered(some, Indoors.of(Kept.HEATED));
        assertThat(fewer.dry().sd()).isGreaterThan(entered.dry().sd());
        some.keySet().retainAll(List.of(Month.JANUARY));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CarriedIn.entered(some, Indoors.of(Kept.HEATED)))
                .withMessage("must reach into the dry and the damp half of the year, but these months are all from"
                        + " January: add May and September; until then 'climate' will do");
    }

    @Test
    void refusals() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Indoors(Kept.NOW_AND_THEN, 7, Occupancy.NORMAL, new RelativeHumidity(0.6)))
                .withMessage("heated days must be from 1 to 6 days of a week, but was 7");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Indoors(Kept.COOLED, 2, Occupancy.NORMAL, new RelativeHumidity(0.2)))
                .withMessage("highest humidity must be from 0.3 to 1 (a fraction; 60 % is 0.60), but was 0.2");
    }
}
