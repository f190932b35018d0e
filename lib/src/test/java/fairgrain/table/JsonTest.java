package fairgrain.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The reader of the package description is itself in doubt until it is tried. */
class JsonTest {
    @Test
    void readsEveryKindOfValue() {
        assertThat(Json.parse(" {\"a\": [1, -2.50, true, false, {}, []], \"b\\n\\\"\": \"c\\\\\"}\n"))
                .isEqualTo(Map.of(
                        "a",
                        List.of(BigDecimal.ONE, new BigDecimal("-2.50"), true, false, Map.of(), List.of()),
                        "b\n\"",
                        "c\\"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "{\"a\": 1,} | line 1: expected '\"'",
                "[1,] | line 1: expected a value",
                "[1 2] | line 1: expected ','",
                "{\"a\": 1, \"a\": 2} | line 1: expected key 'a' once",
                "{\"a\" 1} | line 1: expected ':'",
                "[01] | line 1: expected ','",
                "[.5] | line 1: expected a value",
                "[null] | line 1: expected a value",
                "[truth] | line 1: expected true",
                "[\"a | line 1: expected more text",
                "[\"\\u0041\"] | line 1: expected one of the escapes \\\" \\\\ \\/ \\n \\t",
                "[] [] | line 1: expected nothing more",
                "[[[[[[[[[[[[[[[[[[[[[ | line 1: expected at most 20 levels"
            })
    void refusesWhatIsNotJson(String text, String message) {
        assertThatIllegalArgumentException().isThrownBy(() -> Json.parse(text)).withMessage(message);
    }

    @Test
    void saysTheLine() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Json.parse("[\n1,\n\n]"))
                .withMessage("line 4: expected a value");
    }
}
