package fairgrain.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import fairgrain.quantity.Dimension;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Temperature;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Schema, reference page and starter file. That the starter file can be read is tested where YAML is. */
class WrittenFromFormsTest {
    @SuppressWarnings("unchecked") // what the reader of JSON gives for an object
    private static Map<String, Object> object(Map<String, Object> from, String... keys) {
        Map<String, Object> at = from;
        for (String key : keys) {
            at = (Map<String, Object>) Objects.requireNonNull(at.get(key), key);
        }
        return at;
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> schema(Form<?> form) {
        return (Map<String, Object>) StrictJson.read(form.jsonSchema());
    }

    @Test
    void theSchemaDescribesEachBlockOnceAndAllowsNoOtherKeys() {
        Map<String, Object> schema = schema(new DesignForm());
        assertThat(schema)
                .containsEntry("$schema", "https://json-schema.org/draft/2020-12/schema")
                .containsEntry("title", "design")
                .containsEntry("type", "object")
                .containsEntry("additionalProperties", false)
                .containsEntry("required", List.of("name", "panels"));
        assertThat(object(schema, "$defs").keySet()).containsExactly("panel", "groove", "moisture");
        assertThat(object(schema, "$defs", "panel"))
                .containsEntry("additionalProperties", false)
                .containsEntry("required", List.of("name", "wood", "between stiles", "groove"));
        assertThat(object(schema, "properties", "panels", "items")).containsExactly(Map.entry("$ref", "#/$defs/panel"));
        assertThat(object(schema, "properties", "panels")).containsEntry("minItems", 1.0);
        assertThat(object(schema, "properties", "units"))
                .containsEntry("enum", List.of("inches", "millimetres"))
                .containsEntry("default", "inches")
                .containsEntry("description", "what a bare length means; inches or millimetres");
        assertThat(object(schema, "$defs", "panel", "properties", "boards"))
                .containsEntry("type", "integer")
                .containsEntry("minimum", 1.0)
                .containsEntry("maximum", 20.0)
                .containsEntry("default", 1.0);
    }

    @ParameterizedTest
    @CsvSource({
        "LENGTH, 11, true",
        "LENGTH, 2 1/4, true",
        "LENGTH, 2-1/4 in, true",
        "LENGTH, 2¼, true",
        "LENGTH, ½ in, true",
        "LENGTH, 57.5 mm, true",
        "LENGTH, 1 ft 2 1/2 in, true",
        "LENGTH, '1'' 2 1/2\"', true",
        "LENGTH, 1 foot 2, true",
        "LENGTH, -2, true",
        "LENGTH, '11,5', false",
        "LENGTH, wide, false",
        "LENGTH, '', false",
        "MASS, 25 lb, true",
        "MASS, 25lb, true",
        "MASS, 25, false",
        "MASS, '1,5 kg', false",
        "LINE_MASS, 20 lb/ft, true",
        "DENSITY, 640 kg/m3, true",
        "DENSITY, 640 kg/m³, true",
        "STRESS, 10 N/mm2, true",
        "MOISTURE, 9 %, true",
        "MOISTURE, 9%, true",
        "MOISTURE, 9, false",
        "TEMPERATURE, -4 °F, true",
        "RATIO, 1.5, true",
        "RATIO, 35 %, true",
        "TIME, 3 weeks, true"
    })
    void thePatternOfANumberAllowsWhatIsReadAndCatchesSlips(Dimension dimension, String text, boolean allowed) {
        Limits limits = new Limits(
                "x", dimension == Dimension.LENGTH ? -1000 : -1e9, dimension == Dimension.LENGTH ? 1000 : 1e9, "");
        Kind<?> kind = Kinds.amount(dimension, limits);
        Reading in = Given.inInches();
        assertThat(kind.read(Given.scalar(text), in) != null).isEqualTo(allowed);
        String pattern = (String) Objects.requireNonNull(kind.schema().get("pattern"));
        assertThat(Pattern.compile(pattern).matcher(text).find()).isEqualTo(allowed);
    }

    @Test
    void theReferenceHasATableForEachBlock() {
        assertThat(new PanelForm().reference()).isEqualTo("""
            ## panel

            A solid panel in the groove of a frame.

            | key | what it means | what may stand there | if left out |
            |---|---|---|---|
            | `name` | what you call it | text | refused |
            | `wood` | what it is made of | the name of the wood | refused |
            | `between stiles` | the clear width of the frame | a length from 13/16 to 78 in (from 20 to 2000 mm) | refused |
            | `groove` | the groove around it | a groove block | refused |
            | `boards` | how many it is glued up of | a whole number from 1 to 20 | 1 is taken: one wide board |
            | `width` | how wide it is cut | a length from 13/16 to 78 in (from 20 to 2000 mm) | there is none |
            | `moisture` | of the wood on the day of cutting | 'unknown' or a moisture content from 3 to 25 %, or a moisture block | unknown is taken: no meter was named |
            | `bevelled` | whether its edges are thinned | yes or no | no is taken: most are not |

            ## groove

            The groove that holds a panel.

            | key | what it means | what may stand there | if left out |
            |---|---|---|---|
            | `depth` | how deep the groove is cut | a length from 3/32 to 1 9/16 in (from 2 to 40 mm) | refused |
            | `width` | how wide it is cut | a length from 3/32 to 1 9/16 in (from 2 to 40 mm) | 1/4 in is taken: a common cutter |

            ## moisture

            A reading of a meter.

            | key | what it means | what may stand there | if left out |
            |---|---|---|---|
            | `meter reading` | what the meter shows | a moisture content from 3 to 25 % | refused |
            """);
    }

    @Test
    void theStarterFileShowsEveryKeyAndPutsAwayThoseThatMayBeLeftOut() {
        assertThat(new DesignForm().starter()).isEqualTo("""
            # A piece of furniture and its parts.
            # A line that begins with # and a blank explains the next one. Where a # stands right before a key, the key
            # may be left out; take the # away to use it.

            # what you call the piece: text
            name: Lakeside book cupboard
            # every panel in a groove: a list, each entry a panel block
            panels:
              # what you call it: text
              - name: left door panel
                # what it is made of: the name of the wood
                wood: lake ash
                # the clear width of the frame: a length from 13/16 to 78 in (from 20 to 2000 mm)
                between stiles: 11
                # the groove around it: a groove block
                groove:
                  # how deep the groove is cut: a length from 3/32 to 1 9/16 in (from 2 to 40 mm)
                  depth: 23/64 in
                  # how wide it is cut: a length from 3/32 to 1 9/16 in (from 2 to 40 mm)
                  # if left out, 1/4 in: a common cutter
                  #width: 1/4 in
                # how many it is glued up of: a whole number from 1 to 20
                # if left out, 1: one wide board
                #boards: 1
                # how wide it is cut: a length from 13/16 to 78 in (from 20 to 2000 mm)
                #width: 8 in
                # of the wood on the day of cutting: 'unknown' or a moisture content from 3 to 25 %, or a moisture block
                # if left out, unknown: no meter was named
                #moisture: unknown
                # whether its edges are thinned: yes or no
                # if left out, no: most are not
                #bevelled: no
            # what a bare length means: inches or millimetres
            # if left out, inches: nothing else was said
            #units: inches
            # screws in each cleat: a list, each entry a whole number from 1 to 9
            #holes:
              #- 1
            """);
    }

    @Test
    void everyExampleOfAKindIsReadByIt() {
        List<Kind<?>> kinds = List.of(
                Kinds.text(),
                Kinds.count(2, 5),
                Kinds.length(PanelForm.SIGHT),
                Kinds.length(PanelForm.DEPTH),
                Kinds.mass(new Limits("mass", 0, 50, "kg")),
                Kinds.force(new Limits("force", 10, Double.POSITIVE_INFINITY, "N")),
                Kinds.temperature(Temperature.LIMITS),
                Kinds.moisture(PanelForm.MOISTURE),
                Kinds.humidity(new Limits("humidity", 0.05, 0.95, "")),
                Kinds.amount(Dimension.TIME, new Limits("time", 86_400, 1_577_880_000, "s")),
                Kinds.amount(Dimension.LINE_MASS, new Limits("load", 1, 500, "kg/m")),
                Kinds.yesNo(),
                Kinds.choice(List.of("b", "a"), word -> word),
                Kinds.wordOr("unknown", "x", Kinds.text()),
                Kinds.either(Kinds.text(), Kinds.text()));
        for (Kind<?> kind : kinds) {
            assertThat(Given.problems(kind, Given.scalar(kind.example()))).isEmpty();
        }
    }

    @Test
    void twoBlocksOfOneNameAreAMistakeOfOurs() {
        Form<String> outer = new Form<>("panel", "Another panel.") {
            private final Field<List<PanelForm.Panel>> panels = list("panels", new PanelForm(), "panels");

            @Override
            protected String build(Entries entries) {
                return "" + entries.get(panels).size();
            }
        };
        assertThatIllegalStateException()
                .isThrownBy(outer::jsonSchema)
                .withMessage("two forms with different keys are called 'panel'");
    }
}
