package fairgrain.entry;

import static org.assertj.core.api.Assertions.assertThat;

import fairgrain.form.Enclosures;
import fairgrain.form.Node;
import fairgrain.form.Problem;
import fairgrain.form.Reading;
import fairgrain.form.Taken;
import fairgrain.place.MoistureYear;
import fairgrain.quantity.ShopRule;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The log of a hygrometer as a design names it. */
class LogFormTest {
    private static final Map<String, String> PLAIN =
            Map.of("file", "room.csv", "time", "year-month-dayThour:minute", "temperature in", "C");

    /** A year of two damp and two dry quarters. */
    private static String year(String heading, String separator) {
        StringBuilder csv = new StringBuilder(heading);
        LocalDateTime start = LocalDate.of(2023, 1, 1).atStartOfDay();
        for (LocalDateTime time = start; !time.isAfter(start.plusYears(1)); time = time.plusHours(6)) {
            String humidity = time.getMonthValue() <= 6 ? "35" : "65";
            csv.append(time)
                    .append(separator)
                    .append("20")
                    .append(separator)
                    .append(humidity)
                    .append('\n');
        }
        return csv.toString();
    }

    private static Node block(Map<String, String> keys) {
        List<Node.Entry> entries = new ArrayList<>();
        keys.forEach((key, value) -> entries.add(
                new Node.Entry(new Node.Scalar("room.yaml:3:5", key), new Node.Scalar("room.yaml:3:20", value))));
        return new Node.Mapping("room.yaml:3:3", entries);
    }

    private static MoistureYear read(Map<String, String> keys, Reading in) {
        return Objects.requireNonNull(
                new LogForm().read(block(keys), in), () -> in.problems().toString());
    }

    private static Reading beside(String csv) {
        return new Reading(ShopRule.INCHES, name -> {
            assertThat(name).isEqualTo("room.csv");
            return new StringReader(csv);
        });
    }

    private static List<String> problems(Map<String, String> keys, Enclosures enclosures) {
        Reading in = new Reading(ShopRule.INCHES, enclosures);
        assertThat(new LogForm().read(block(keys), in)).isNull();
        return in.problems().stream().map(Problem::text).toList();
    }

    @Test
    void aLogWithTheUsualHeadingNeedsThreeKeys() {
        String csv = year("time,temperature,humidity\n", ",");
        Reading in = beside(csv);
        MoistureYear year = read(PLAIN, in);
        assertThat(year.dry().expected()).isBetween(0.06, 0.075);
        assertThat(year.damp().expected()).isBetween(0.11, 0.13);
        assertThat(in.taken().stream().map(Taken::text))
                .containsExactly(
                        "separator taken as comma: as in most logs",
                        "time column taken as time: the heading must have it",
                        "temperature column taken as temperature: the heading must have it",
                        "humidity column taken as humidity: the heading must have it");
    }

    @Test
    void everyKeyIsReadAsItIsSaid() {
        Map<String, String> keys = Map.of(
                "file", "room.csv",
                "time", "year-month-day hour:minute",
                "temperature in", "°C",
                "separator", "semicolon",
                "time column", "1",
                "clock column", "2",
                "temperature column", "3",
                "humidity column", "4");
        String csv = year("", ";").replace("T", ";");
        MoistureYear apart = read(keys, beside(csv));
        String together = year("time,temperature,humidity\n", ",");
        assertThat(apart.dry()).isEqualTo(read(PLAIN, beside(together)).dry());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "time | dd.MM.yyyy | time must be the form of a time in the words year, short year, month, day, hour,"
                        + " minute, second, am/pm, offset and what stands between them, such as 'day.month.year"
                        + " hour:minute', but was 'dd.MM.yyyy': 'dd.MM.yyyy' begins with no such word",
                "temperature in | K | temperature in must be celsius or fahrenheit, but was 'K'",
                "separator | blank | separator must be comma, semicolon or tab, but was 'blank'",
                "humidity column | 0 | humidity column: a column must be a name, or a number from 1 to 200, but was"
                        + " '0'",
            })
    void whatCannotBeIsRefusedAtItsKey(String key, String value, String message) {
        Map<String, String> keys = new TreeMap<>(PLAIN);
        keys.put(key, value);
        assertThat(problems(keys, name -> new StringReader(""))).containsExactly("room.yaml:3:20: " + message);
    }

    @Test
    void aLogThatCannotBeUsedIsRefusedWithItsOwnLine() {
        assertThat(problems(PLAIN, name -> new StringReader("time,humidity\n2023-01-01T00:00,50\n")))
                .containsExactly(
                        "room.yaml:3:3: log: room.csv:2: no line up to here has the columns 'time', 'temperature',"
                                + " 'humidity'; line 1 has 'time', 'humidity'");
        assertThat(problems(
                        PLAIN,
                        name -> new StringReader(
                                "time,temperature,humidity\n2023-01-01T00:00,20,50\n2023-01-01T01:00,20,50")))
                .singleElement()
                .asString()
                .startsWith("room.yaml:3:3: log: the log room.csv covers no month, by two thirds or more; ");
    }

    @Test
    void aFileThatIsNotThereOrBreaksOffIsTheMakersToMend() {
        assertThat(problems(PLAIN, Enclosures.NONE))
                .containsExactly(
                        "room.yaml:3:3: log: the file 'room.csv' cannot be read: no files come with this input");
        assertThat(problems(PLAIN, name -> new Broken()))
                .containsExactly("room.yaml:3:3: log: the file 'room.csv' cannot be read to its end");
    }

    private static final class Broken extends Reader {
        @Override
        public int read(char[] buffer, int offset, int length) throws IOException {
            throw new IOException("gone");
        }

        @Override
        public void close() {
            // nothing is open
        }
    }
}
