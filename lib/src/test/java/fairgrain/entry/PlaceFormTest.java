package fairgrain.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.design.Design;
import fairgrain.form.Node;
import fairgrain.form.Problem;
import fairgrain.form.Reading;
import fairgrain.form.Taken;
import fairgrain.moisture.HailwoodHorrobin;
import fairgrain.place.MoistureYear;
import fairgrain.place.Month;
import fairgrain.place.RoomAir;
import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where the wood lives, as a design tells it. */
class PlaceFormTest {
    private static final Catalog CATALOG = Catalog.shipped();

    /** Keys and values by turns; a value is text, a block or a list. */
    private static Node.Mapping block(Object... keysAndValues) {
        List<Node.Entry> entries = new ArrayList<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            entries.add(new Node.Entry(
                    new Node.Scalar("d.yaml:2:3", (String) keysAndValues[i]), node(keysAndValues[i + 1])));
        }
        return new Node.Mapping("d.yaml:2:1", entries);
    }

    private static Node node(Object value) {
        return value instanceof Node node ? node : new Node.Scalar("d.yaml:2:9", (String) value);
    }

    private static Node list(Node... items) {
        return new Node.Sequence("d.yaml:3:1", List.of(items));
    }

    private static Node.Mapping month(String month, String temperature, String humidity) {
        return block("month", month, "temperature", temperature, "humidity", humidity);
    }

    private static Node.Mapping reading(String date, String temperature, String humidity) {
        return block("date", date, "temperature", temperature, "humidity", humidity);
    }

    /** A whole design of nothing but its place. */
    private static Node.Mapping design(Node.Mapping place) {
        return block("name", "Cupboard", "units", "inches", "place", place);
    }

    private static Design read(Node.Mapping place) {
        Reading in = new Reading(ShopRule.INCHES);
        return Objects.requireNonNull(
                new DesignForm(CATALOG).design(design(place), in),
                () -> in.problems().toString());
    }

    private static MoistureYear year(Object... keysAndValues) {
        return read(block(keysAndValues)).setting().year();
    }

    private static List<String> problems(Object... keysAndValues) {
        Reading in = new Reading(ShopRule.INCHES);
        assertThat(new DesignForm(CATALOG).design(design(block(keysAndValues)), in))
                .isNull();
        return in.problems().stream().map(Problem::text).toList();
    }

    private static double moisture(double fahrenheit, double humidity) {
        return HailwoodHorrobin.moisture((fahrenheit - 32) / 1.8 + 273.15, humidity);
    }

    @Test
    void aNamedClimateIsShownMonthByMonthNorthAndSouth() {
        MoistureYear north = year("climate", "weekend cabin");
        MoistureYear south = year("climate", "weekend cabin", "south of the equator", "yes");
        assertThat(north.said()).isEqualTo("Cabin, cool temperate, heated only at weekends");
        assertThat(north.byMonth().orElseThrow().in(Month.APRIL)).isEqualTo(north.dry());
        assertThat(north.byMonth().orElseThrow().in(Month.SEPTEMBER)).isEqualTo(north.damp());
        assertThat(south.dry()).isEqualTo(north.dry());
        assertThat(south.byMonth().orElseThrow().in(Month.OCTOBER)).isEqualTo(north.dry());
        assertThat(south.byMonth().orElseThrow().in(Month.MARCH)).isEqualTo(north.damp());
    }

    @Test
    void twoMeasuredMonthsDoAsBefore() {
        MoistureYear year = year(
                "dry month", block("temperature", "68 F", "humidity", "30 %"),
                "damp month", block("temperature", "75 F", "humidity", "55 %"));
        assertThat(year.dry().expected()).isCloseTo(moisture(68, 0.30), within(1e-9));
        assertThat(year.damp().expected()).isCloseTo(moisture(75, 0.55), within(1e-9));
        assertThat(year.said()).isEqualTo("measured temperature and humidity");
        assertThat(year.byMonth()).isEmpty();
    }

    @Test
    void twoMonthsMayHaveTheirNamesAndTheirLowestAndHighest() {
        MoistureYear year = year(
                "dry month",
                block("month", "Jan", "temperature", "68 F", "lowest humidity", "20 %", "highest humidity", "40 %"),
                "damp month",
                month("7", "75 F", "55 %"));
        assertThat(year.dry().expected()).isCloseTo(moisture(68, 0.25), within(1e-9));
        assertThat(year.byMonth().orElseThrow().in(Month.JULY)).isEqualTo(year.damp());
        assertThat(year.byMonth().orElseThrow().in(Month.JANUARY).expected())
                .isCloseTo(moisture(68, 0.30), within(1e-9));
        assertThat(year.said()).contains("drawn in to half their range");
    }

    @Test
    void monthsAreReadFromAList() {
        MoistureYear year = year(
                "months",
                list(
                        month("January", "68 F", "30 %"),
                        month("April", "66 F", "40 %"),
                        block(
                                "month",
                                "jul",
                                "temperature",
                                "75 F",
                                "lowest humidity",
                                "45 %",
                                "highest humidity",
                                "65 %"),
                        month("10", "68 F", "45 %")));
        assertThat(year.dry().expected()).isCloseTo(moisture(68, 0.30), within(1e-9));
        assertThat(year.damp().expected()).isCloseTo(moisture(75, 0.60), within(1e-9));
        assertThat(year.said()).contains("4 of 12 months known");
    }

    @Test
    void readingsAreReadFromAList() {
        MoistureYear year = year(
                "readings",
                list(
                        reading("2025-01-15", "68 F", "30 %"),
                        reading("April", "66 F", "40 %"),
                        reading("2024-08-02", "75 F", "62 %")));
        assertThat(year.said()).startsWith("3 readings jotted down in the room; driest in January, dampest in August");
        assertThat(year.dry().sd())
                .isGreaterThan(RoomAir.of(CATALOG.climates().get(0)).dry().sd());
    }

    @Test
    void theWeatherOutsideIsCarriedInAndWhatWasTakenIsTold() {
        Design house = read(block("outdoors", block("climate", "zurich", "room", "heated")));
        assertThat(house.taken().stream().map(Taken::text))
                .contains("place outdoors people taken as ordinary: as in the mean of measured houses");
        assertThat(house.setting().year().said())
                .startsWith("outdoors as in Zurich ETH, carried into a heated house; driest in ");
        Design cabin = read(block("outdoors", block("climate", "Zurich", "room", "heated now and then")));
        assertThat(cabin.taken().stream().map(Taken::text))
                .contains("place outdoors heated days taken as 2: a weekend");
        Design cooled = read(block("outdoors", block("climate", "Atlanta", "room", "heated and cooled")));
        assertThat(cooled.taken().stream().map(Taken::text))
                .contains("place outdoors highest humidity taken as 60 %: the safe side of what cooling holds");
    }

    @Test
    void everyKeyOfTheWeatherOutsideCounts() {
        MoistureYear few = year("outdoors", block("climate", "Zurich", "room", "heated", "people", "few"));
        MoistureYear many = year("outdoors", block("climate", "Zurich", "room", "heated", "people", "many"));
        assertThat(few.dry().expected()).isLessThan(many.dry().expected());
        MoistureYear often =
                year("outdoors", block("climate", "Zurich", "room", "heated now and then", "heated days", "5"));
        MoistureYear seldom =
                year("outdoors", block("climate", "Zurich", "room", "heated now and then", "heated days", "1"));
        assertThat(often.damp().expected()).isLessThan(seldom.damp().expected());
        MoistureYear held =
                year("outdoors", block("climate", "Atlanta", "room", "heated and cooled", "highest humidity", "50 %"));
        MoistureYear loose = year("outdoors", block("climate", "Atlanta", "room", "heated and cooled"));
        assertThat(held.damp().expected()).isLessThan(loose.damp().expected());
        MoistureYear shed = year("outdoors", block("climate", "Brussels", "room", "unheated"));
        MoistureYear porch = year("outdoors", block("climate", "Brussels", "room", "open porch"));
        assertThat(shed.damp().expected()).isLessThan(porch.damp().expected());
    }

    @Test
    void outdoorMonthsMayBeTypedIn() {
        MoistureYear year = year(
                "outdoors",
                block(
                        "room",
                        "unheated",
                        "months",
                        list(
                                month("jan", "30 F", "80 %"),
                                month("may", "55 F", "60 %"),
                                month("sep", "60 F", "75 %"))));
        assertThat(year.said()).startsWith("outdoors as entered, carried into an unheated room");
        assertThat(year.damp().expected()).isBetween(0.14, 0.18);
    }

    @ParameterizedTest
    @ValueSource(strings = {"outside wall", "above a heater", "in the sun", "steamy room"})
    void aSpotWidensTheYearOfAnyWay(String spot) {
        MoistureYear room = year("climate", "heated-temperate");
        MoistureYear there = year("climate", "heated-temperate", "spot", spot);
        assertThat(there.swing()).isGreaterThan(room.swing());
        assertThat(there.said()).startsWith(room.said() + "; ").contains(" end moves from ");
        MoistureYear jotted = year(
                "spot",
                spot,
                "readings",
                list(
                        reading("January", "68 F", "30 %"),
                        reading("May", "66 F", "40 %"),
                        reading("Sep", "70 F", "60 %")));
        assertThat(jotted.said()).contains("readings jotted down").contains(" end moves from ");
    }

    @Test
    void anywhereInTheRoomIsTheSameAsNotSaid() {
        assertThat(year("climate", "heated-temperate", "spot", "anywhere"))
                .isEqualTo(year("climate", "heated-temperate"));
    }

    @Test
    void oneWayAndOneOnly() {
        assertThat(problems("spot", "in the sun"))
                .containsExactly(
                        "d.yaml:2:1: place needs one of 'climate', both 'dry month' and 'damp month', 'months',"
                                + " 'readings', 'log' or 'outdoors'");
        assertThat(problems("climate", "weekend cabin", "outdoors", block("climate", "zurich", "room", "unheated")))
                .containsExactly(
                        "d.yaml:2:1: place has 'climate' and 'outdoors', each of which tells the year by itself:"
                                + " keep one, best what was measured longest");
        assertThat(problems("dry month", block("temperature", "68 F", "humidity", "30 %")))
                .containsExactly(
                        "d.yaml:2:1: place needs either 'climate', or both 'dry month' and 'damp month' (means of"
                                + " a month, never a day's extreme)");
    }

    @Test
    void whatDoesNotGoTogetherIsRefused() {
        assertThat(problems("dry month", month("May", "68 F", "30 %"), "damp month", month("May", "68 F", "50 %")))
                .containsExactly("d.yaml:2:1: place has the same month as 'dry month' and as 'damp month'");
        assertThat(problems(
                        "dry month",
                        block("temperature", "68 F", "lowest humidity", "30 %"),
                        "damp month",
                        block("temperature", "68 F", "humidity", "50 %")))
                .containsExactly("d.yaml:2:1: place dry month needs either 'humidity', the mean of the month, or both"
                        + " 'lowest humidity' and 'highest humidity'");
        assertThat(problems(
                        "months",
                        list(block(
                                "month",
                                "May",
                                "temperature",
                                "68 F",
                                "lowest humidity",
                                "60 %",
                                "highest humidity",
                                "40 %"))))
                .singleElement()
                .asString()
                .endsWith("has a 'lowest humidity' above its 'highest humidity'");
        assertThat(problems("months", list(month("May", "68 F", "30 %"), month("May", "68 F", "50 %"))))
                .containsExactly(
                        "d.yaml:2:1: place has May twice in 'months': write each month once, the mean of all its"
                                + " years");
        assertThat(problems("south of the equator", "yes", "outdoors", block("climate", "zurich", "room", "unheated")))
                .containsExactly("d.yaml:2:1: place has 'south of the equator', which goes with 'climate' only: months"
                        + " that are given by their names stay as they are");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "heated | heated days | 3 | has 'heated days', which goes with a room 'heated now and then' only: take"
                        + " it out",
                "unheated | people | many | has 'people', which goes with a room that is heated only: take it out",
                "heated | highest humidity | 55 % | has 'highest humidity', which goes with a room 'heated and cooled'"
                        + " only: take it out",
            })
    void aKeyThatWouldCountForNothingIsRefused(String room, String key, String value, String message) {
        assertThat(problems("outdoors", block("climate", "zurich", "room", room, key, value)))
                .containsExactly("d.yaml:2:1: place outdoors " + message);
    }

    @Test
    void theWeatherIsToldInOneWayToo() {
        assertThat(problems("outdoors", block("room", "heated")))
                .containsExactly(
                        "d.yaml:2:1: place outdoors needs either 'climate' or 'months', not both and not neither");
        assertThat(problems(
                        "outdoors",
                        block(
                                "room",
                                "heated",
                                "months",
                                list(month("May", "68 F", "30 %"), month("May", "6 C", "50 %")))))
                .containsExactly("d.yaml:2:1: place outdoors has May twice in 'months': write each month once");
        assertThat(problems("outdoors", block("climate", "atlantis", "room", "heated")))
                .singleElement()
                .asString()
                .startsWith("d.yaml:2:9: place outdoors climate: 'atlantis' is not known")
                .endsWith("the places stand in data/outdoor-climates.csv");
    }

    @Test
    void readingsOfOneSeasonAreRefusedWithWhatToAdd() {
        assertThat(problems("readings", list(reading("2025-01-15", "68 F", "30 %"))))
                .containsExactly("d.yaml:2:1: place must reach into the dry and the damp half of the year, but these"
                        + " readings are all from January: add May and September; until then 'climate' will do");
        assertThat(problems("readings", list(reading("15.1.2025", "68 F", "30 %"))))
                .containsExactly("d.yaml:2:9: reading 1: date must be a date as year-month-day, such as"
                        + " 2025-01-15, or the name of a month, but was '15.1.2025'");
    }
}
