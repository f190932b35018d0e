package fairgrain.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What is written from the forms: the reference page in the docs, and the schema. */
class DesignReferenceTest {
    private static final Path PAGE = Path.of("..", "docs", "design-file.md");
    private static final String BEGIN = "<!-- written from the forms: begin -->\n";
    private static final String END = "<!-- written from the forms: end -->\n";

    private static final Pattern STRING = Pattern.compile(
            "\"[^\"\\\\\\p{Cntrl}]*+(?:\\\\(?:[\"\\\\/bfnrt]|u[0-9a-fA-F]{4})[^\"\\\\\\p{Cntrl}]*+)*+\"");
    private static final Pattern REFERENCE = Pattern.compile("\"\\$ref\": \"#/\\$defs/([^\"]+)\"");
    private static final Pattern DEFINITION = Pattern.compile("(?m)^    \"([^\"]+)\": \\{$");

    private final DesignForm form = new DesignForm(Catalog.shipped());

    @Test
    void theReferencePageIsWhatTheFormsWrite() throws IOException {
        String page = Files.readString(PAGE);
        assertThat(page).containsOnlyOnce(BEGIN).containsOnlyOnce(END);
        assertThat(page.substring(page.indexOf(BEGIN) + BEGIN.length(), page.indexOf(END)))
                .as("put what the forms write between the marks of " + PAGE)
                .isEqualTo(form.reference());
    }

    @Test
    void theSchemaIsJson() {
        assertThat(isJson(form.jsonSchema())).isTrue();
    }

    @Test
    void whatIsNotJsonIsNotTakenForIt() {
        assertThat(isJson("{\"a\": [1, -2.5e3, true, {}], \"b\": \"c\\\"\"}")).isTrue();
        assertThat(isJson("{\"a\": 1,}")).isFalse();
        assertThat(isJson("{\"a\": 01}")).isFalse();
        assertThat(isJson("{\"a\" 1}")).isFalse();
        assertThat(isJson("{1: 1}")).isFalse();
        assertThat(isJson("[1 2]")).isFalse();
        assertThat(isJson("[1] [2]")).isFalse();
        assertThat(isJson("\"a")).isFalse();
    }

    @Test
    void everyBlockThatTheSchemaPointsToIsInIt() {
        String schema = form.jsonSchema();
        TreeSet<String> pointedTo = new TreeSet<>();
        REFERENCE.matcher(schema).results().map(m -> m.group(1)).forEach(pointedTo::add);
        TreeSet<String> defined = new TreeSet<>();
        DEFINITION
                .matcher(schema.substring(schema.indexOf("\"$defs\"")))
                .results()
                .map(m -> m.group(1))
                .forEach(defined::add);
        assertThat(pointedTo).contains("door", "shelf", "wall", "place");
        assertThat(defined).isEqualTo(pointedTo);
    }

    /** Folds the innermost values into one sign each, until nothing folds any more: JSON ends as a single value. */
    private static boolean isJson(String text) {
        String folded = STRING.matcher(text)
                .replaceAll("§")
                .replaceAll(
                        "(?<![\\w.])-?(?:0|[1-9]\\d*)(?:\\.\\d+)?(?:[eE][+-]?\\d+)?(?![\\w.])|true|false|null", "v");
        folded = folded.replaceAll("(?<=[v§])\\s+(?=[v§])", "!").replaceAll("\\s+", "");
        String before = "";
        while (!folded.equals(before)) {
            before = folded;
            folded = folded.replaceAll("\\{(?:§:[v§](?:,§:[v§])*+)?+}|\\[(?:[v§](?:,[v§])*+)?+]", "v");
        }
        return folded.equals("v") || folded.equals("§");
    }
}
