package fairgrain.table;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** The folder {@code data/} as its description says it is. Reads files, judges nothing. */
final class DataPackage {
    static final Path FOLDER = Path.of("..", "data");
    static final String DESCRIPTION = "datapackage.json";

    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setCommentMarker('#').get();

    /** A column as described. */
    record Field(String name, String type, String description, Map<?, ?> rules) {
        boolean isNumber() {
            return !type.equals("string");
        }

        boolean must(String rule) {
            return Boolean.TRUE.equals(rules.get(rule));
        }

        Optional<BigDecimal> bound(String rule) {
            return Optional.ofNullable((BigDecimal) rules.get(rule));
        }

        List<?> words() {
            return rules.containsKey("enum") ? list(rules, "enum") : List.of();
        }
    }

    /** A table as described, and what its file holds. */
    record Resource(String name, String path, List<Field> fields, String text, List<List<String>> lines) {
        List<String> header() {
            return lines.get(0);
        }

        List<List<String>> rows() {
            return lines.subList(1, lines.size());
        }

        List<String> column(String column) {
            int at = header().indexOf(column);
            return rows().stream().map(row -> row.get(at)).toList();
        }

        /** The cell of a row, as a number. */
        double number(List<String> row, String column) {
            return Double.parseDouble(row.get(header().indexOf(column)));
        }

        boolean isFilled(List<String> row, String column) {
            return !row.get(header().indexOf(column)).isEmpty();
        }

        @Override
        public String toString() {
            return path;
        }
    }

    private DataPackage() {}

    static List<Resource> resources() {
        Map<?, ?> description = (Map<?, ?>) Json.parse(read(DESCRIPTION));
        return list(description, "resources").stream()
                .map(each -> resource((Map<?, ?>) each))
                .toList();
    }

    static Resource resource(String name) {
        return resources().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    static List<String> files() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Resource resource(Map<?, ?> described) {
        String path = string(described, "path");
        String text = read(path);
        List<Field> fields = list(map(described, "schema"), "fields").stream()
                .map(each -> field((Map<?, ?>) each))
                .toList();
        List<List<String>> lines = new ArrayList<>();
        try (var rows = FORMAT.parse(new StringReader(text))) {
            for (CSVRecord row : rows) {
                lines.add(row.toList());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Resource(string(described, "name"), path, fields, text, List.copyOf(lines));
    }

    private static Field field(Map<?, ?> described) {
        return new Field(
                string(described, "name"),
                string(described, "type"),
                string(described, "description"),
                described.containsKey("constraints") ? map(described, "constraints") : Map.of());
    }

    private static String string(Map<?, ?> from, String key) {
        return (String) member(from, key);
    }

    private static List<?> list(Map<?, ?> from, String key) {
        return (List<?>) member(from, key);
    }

    private static Map<?, ?> map(Map<?, ?> from, String key) {
        return (Map<?, ?>) member(from, key);
    }

    private static Object member(Map<?, ?> from, String key) {
        return Optional.ofNullable((Object) from.get(key))
                .orElseThrow(() -> new IllegalArgumentException("the description lacks " + key));
    }

    static String read(String file) {
        try {
            return Files.readString(FOLDER.resolve(file), StandardCharsets.UTF_8); // fails on what is not UTF-8
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
