package fairgrain.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every source that the code names can be looked up. */
class CitedSourcesTest {
    private static final Path CODE = Path.of("src", "main", "java");
    private static final Pattern IN_CODE = Pattern.compile("Citation\\s*\\.of\\(\\s*\"([^\"]*)\"");
    private static final Pattern IN_TEXT = Pattern.compile("<b>Source</b>[\\s*]*\\{@code ([^}]*)\\}");

    @Test
    void everySourceThatTheCodeNamesStandsInSources() {
        assertThat(cited()).containsKeys("gtr190", "own");
        assertThat(cited().keySet()).isSubsetOf(DataPackage.resource("sources").column("id"));
    }

    @Test
    void aSourceIsFoundInCodeAndInTextEvenWhereTheLineBreaks() {
        String code = """
             * <p><b>Source</b>
             * {@code one}, table 1.
            Citation.of(
                "two", "x", Basis.READ)
            """;
        assertThat(keys(code)).containsExactly("two", "one");
    }

    /** Each key, with a file that names it. */
    private static Map<String, Path> cited() {
        Map<String, Path> cited = new TreeMap<>();
        try (Stream<Path> files = Files.walk(CODE)) {
            files.filter(file -> file.toString().endsWith(".java"))
                    .forEach(file -> keys(read(file)).forEach(key -> cited.put(key, file)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return cited;
    }

    private static List<String> keys(String code) {
        return Stream.of(IN_CODE, IN_TEXT)
                .flatMap(pattern -> pattern.matcher(code).results())
                .map(found -> found.group(1))
                .toList();
    }

    private static String read(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
