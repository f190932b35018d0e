package fairgrain.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class JsonTextTest {
    @Test
    void writesObjectsInOrderWithTwoBlanksALevel() {
        Map<String, Object> value = JsonText.object(
                "b",
                1,
                "a",
                List.of("x", true),
                "none",
                List.of(),
                "empty",
                Map.of(),
                "c",
                List.of(JsonText.object("d", 2.5), JsonText.object("e", -3L)));
        assertThat(JsonText.of(value)).isEqualTo("""
            {
              "b": 1,
              "a": ["x", true],
              "none": [],
              "empty": {},
              "c": [
                {
                  "d": 2.5
                },
                {
                  "e": -3
                }
              ]
            }\
            """);
    }

    @Test
    void escapesWhatJsonCannotHold() {
        assertThat(JsonText.quoted("a\"b\\c\nd\re\tf\u0001g\u007fh\u2028"))
                .isEqualTo("\"a\\\"b\\\\c\\nd\\re\\tf\\u0001g\\u007fh\\u2028\"");
        assertThat(JsonText.quoted("é ½ \uD83E\uDEB5")).isEqualTo("\"é ½ \uD83E\uDEB5\"");
        assertThat(JsonText.quoted("\uD83E x \uDEB5")).isEqualTo("\"\\ud83e x \\udeb5\"");
    }

    @Property
    void whatIsWrittenIsReadBackTheSame(@ForAll String text, @ForAll boolean yes, @ForAll int number) {
        Object value = JsonText.object(text, List.of(text, yes, JsonText.object("n", (double) number)));
        assertThat(StrictJson.read(JsonText.of(value))).isEqualTo(value);
    }

    @Test
    void refusesWhatIsNoJson() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> JsonText.of(Double.NaN))
                .withMessage("JSON has no way to write NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> JsonText.of(List.of(Double.POSITIVE_INFINITY)))
                .withMessage("JSON has no way to write Infinity");
    }
}
