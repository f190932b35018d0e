package fairgrain.program;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import fairgrain.form.JsonText;
import fairgrain.form.Node;
import fairgrain.form.Reading;
import fairgrain.quantity.ShopRule;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The published schemas: of the design file, and of the review as JSON. */
class SchemaTest {
    private static final Path DOCS = Path.of("..", "docs");
    private static final Path DESIGNS = Path.of("designs");
    private static final Pattern WHOLE = Pattern.compile("-?(0|[1-9][0-9]{0,8})");
    private static final Pattern DECIMAL = Pattern.compile("-?[0-9]{1,9}\\.[0-9]{1,9}");

    private static Schema schema(String file) throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(DOCS.resolve(file)), InputFormat.JSON);
    }

    static Stream<Path> designs() throws IOException {
        try (Stream<Path> files = Files.list(DESIGNS)) {
            List<Path> yaml = files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
            assertThat(yaml).hasSizeGreaterThanOrEqualTo(7);
            return yaml.stream();
        }
    }

    /** A design as an editor sees it: what YAML takes for a number is one. */
    private static String json(String yaml) {
        Reading in = new Reading(ShopRule.INCHES);
        Node root = YamlNodes.read("design", yaml.getBytes(StandardCharsets.UTF_8), in);
        assertThat(in.problems()).isEmpty();
        return JsonText.of(value(Objects.requireNonNull(root)));
    }

    private static Object value(Node node) {
        if (node instanceof Node.Mapping block) {
            Map<String, Object> object = new LinkedHashMap<>();
            block.entries().forEach(entry -> object.put(entry.key().text(), value(entry.value())));
            return object;
        }
        if (node instanceof Node.Sequence list) {
            return list.items().stream().map(SchemaTest::value).toList();
        }
        Node.Scalar scalar = (Node.Scalar) node;
        if (!scalar.quoted() && WHOLE.matcher(scalar.text()).matches()) {
            return Integer.valueOf(scalar.text());
        }
        return !scalar.quoted() && DECIMAL.matcher(scalar.text()).matches()
                ? (Object) Double.valueOf(scalar.text())
                : scalar.text();
    }

    private static List<String> problems(String schema, String json) throws IOException {
        return schema(schema).validate(json, InputFormat.JSON).stream()
                .map(Error::toString)
                .toList();
    }

    @Test
    void thePublishedSchemaIsWhatTheFormsWrite() throws IOException {
        assertThat(Files.readString(DOCS.resolve("design.schema.json")))
                .as("write it anew: sh examples/fairgrain schema > docs/design.schema.json")
                .isEqualTo(Ran.of("", "schema").out());
    }

    @Test
    void bothAreGoodSchemasThemselves() throws IOException {
        Schema ofSchemas = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        for (String file : List.of("design.schema.json", "review.schema.json")) {
            assertThat(ofSchemas.validate(Files.readString(DOCS.resolve(file)), InputFormat.JSON))
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("designs")
    void everySampleDesignIsGoodByTheSchema(Path design) throws IOException {
        assertThat(problems("design.schema.json", json(Files.readString(design))))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("designs")
    void theReviewOfEverySampleIsGoodByTheSchema(Path design) throws IOException {
        String review =
                Ran.of("", "review", "--form", "json", design.toString()).out();
        assertThat(problems("review.schema.json", review)).isEmpty();
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "units: inches|units: cubits|units",
                "stiles: {wood|styles: {wood|styles",
                "groove: {depth: 7/16, width: 1/4}|groove: {depth: 7/16}|width",
                "thickness: 7/8, length: 30}|thickness: seven, length: 30}|thickness",
                "count: 2|count: 2.5|count",
                "studs at: [8, 24]|studs at: 8|studs",
                "cutting: {moisture: 9 %}|cutting: wet|cutting"
            })
    void aSlipIsSeenByTheSchemaToo(String good, String bad, String word) throws IOException {
        String sample = Files.readString(DESIGNS.resolve("lakeside-book-cupboard.yaml"));
        assertThat(sample).contains(good);
        assertThat(problems("design.schema.json", json(sample.replace(good, bad))))
                .isNotEmpty()
                .anyMatch(problem -> problem.contains(word));
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "\"version\": 1|\"version\": 2",
                "\"verdict\": \"holds\"|\"verdict\": \"perhaps\"",
                "\"dimension\": \"length\"|\"dimension\": \"inches\"",
                "\"taken\"|\"assumed\""
            })
    void aReviewThatIsOtherwiseIsNotGood(String good, String bad) throws IOException {
        String review = Ran.of(
                        "",
                        "review",
                        "--form",
                        "json",
                        DESIGNS.resolve("lakeside-book-cupboard.yaml").toString())
                .out();
        assertThat(review).contains(good);
        assertThat(problems("review.schema.json", review.replaceFirst(Pattern.quote(good), bad)))
                .isNotEmpty();
    }
}
