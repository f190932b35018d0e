package fairgrain.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import fairgrain.hygrometer.LogLayout;
import fairgrain.hygrometer.Separator;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever comes in is read or refused in words: nothing else is thrown, nothing hangs, and no refusal can move a cursor. A few
 * inputs are tried each time. With {@code -Dfairgrain.fuzz=10000000} so many are, shared out by weight, and with {@code
 * -Dfairgrain.fuzz.first=N} others; what once broke a reader stands in {@code src/test/resources/fuzz} and is always tried.
 */
class BadInputTest {
    private static final long MANY = Long.getLong("fairgrain.fuzz", 0);
    private static final long FIRST = Long.getLong("fairgrain.fuzz.first", 0);
    private static final String ONLY = System.getProperty("fairgrain.fuzz.only", "");
    private static final long ENOUGH = 100;
    private static final double WHOLE = 1000;
    private static final Path KEPT = Path.of("src", "test", "resources", "fuzz");

    /**
     * What is tried.
     *
     * @param few how many inputs each time
     * @param weight how many of a thousand inputs are for this reader in a long run
     */
    record Target(String name, int few, double weight, BadInputs inputs, Trial.Reader reader) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static final List<Target> TARGETS = targets();

    private static List<Target> targets() {
        LogLayout plain =
                Readers.layout("year-month-day hour:minute", Separator.COMMA, "time", "temperature", "humidity");
        LogLayout columns = Readers.layout(
                "day.month.short year hour:minute:second am/pm", Separator.SEMICOLON, "2", "3", "T", "rF");
        LogLayout zones = Readers.layout("year-month-dayThour:minute:secondoffset", Separator.TAB, "1", "3", "4");
        Map<String, Target> all = new LinkedHashMap<>();
        add(all, "lengths", 20_000, 300, Seeds.lengths(), Readers::length);
        add(all, "quantities", 20_000, 250, Seeds.quantities(), Readers::quantity);
        add(all, "words", 2000, 40, Seeds.words(), Readers::words);
        add(all, "table-lines", 20_000, 200, Seeds.panels(), Readers::csvLine);
        add(all, "yaml", 2000, 60, Seeds.smallDesigns(), Readers::yaml);
        add(all, "logs", 3000, 60, Seeds.logs(), input -> Readers.log(plain, input));
        add(all, "logs-in-columns", 3000, 20, Seeds.logsInColumns(), input -> Readers.log(columns, input));
        add(all, "logs-of-zones", 3000, 20, Seeds.logsOfZones(), input -> Readers.log(zones, input));
        add(all, "long-logs", 10, 0.5, Seeds.longLogs(), input -> Readers.log(plain, input));
        for (String table : Seeds.TABLES) {
            add(all, table.replace(".csv", ""), 100, 2, Seeds.table(table), input -> Readers.table(table, input));
        }
        add(all, "panels", 100, 2, Seeds.panels(), input -> Readers.batch(Topic.PANEL, input));
        add(all, "shelves", 100, 2, Seeds.shelves(), input -> Readers.batch(Topic.SHELF, input));
        add(all, "joints", 100, 2, Seeds.joints(), input -> Readers.batch(Topic.JOINT, input));
        add(all, "designs", 60, 2, Seeds.designs(), Readers::design);
        add(all, "answers", 5, 0.2, Seeds.answers(), Readers::answers);
        add(all, "command-lines", 10, 0.1, Seeds.commandLines(), Readers::commandLine);
        return List.copyOf(all.values());
    }

    private static void add(
            Map<String, Target> all, String name, int few, double weight, List<byte[]> good, Trial.Reader reader) {
        all.put(name, new Target(name, few, weight, new BadInputs(good), reader));
    }

    static Stream<Target> tried() {
        return TARGETS.stream().filter(target -> ONLY.isEmpty() || target.name().matches(ONLY));
    }

    @ParameterizedTest
    @MethodSource("tried")
    void isReadOrRefusedInWords(Target target) throws Exception {
        long count = MANY == 0 ? target.few() : Math.round(MANY * target.weight() / WHOLE);
        Trial.Outcome outcome = Trial.run(target.name(), target.inputs()::of, target.reader(), FIRST, count);
        assertThat(outcome.inputs()).isEqualTo(count);
        if (count >= ENOUGH) {
            assertThat(outcome.read()).as("some are read, or nothing is tried").isPositive();
        }
        if (MANY > 0) {
            System.out.println(target + ": " + outcome);
        }
    }

    static Stream<Arguments> kept() throws IOException {
        try (Stream<Path> files = Files.walk(KEPT)) {
            return files
                    .filter(Files::isRegularFile)
                    .sorted()
                    .map(file -> arguments(KEPT.relativize(file).getName(0).toString(), file))
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("kept")
    void whatOnceBrokeAReaderDoesNoLonger(String name, Path file) throws Exception {
        Target target = TARGETS.stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
        byte[] input = Files.readAllBytes(file);
        assertThat(Trial.run(name, number -> input, target.reader(), 0, 1).inputs())
                .isEqualTo(1);
    }
}
