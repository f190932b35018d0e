package fairgrain.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names of rows, however a maker writes them. */
class ByNameTest {
    private static final ByName<String> SCREWS = new ByName<>(
            List.of("no-8-wood-screw", "1/4-in-lag-screw", "5/16-in-lag-screw"), s -> s, List::of, "a hint");

    @ParameterizedTest
    @CsvSource({
        "'#8 wood screw', no 8 wood screw",
        "'  1/4 in. Lag--Screw ', 1/4 in lag screw",
        "'and/or 1/ 2', and or 1 2",
        "'/4 #', 4 no",
        "'K\u00F6ln', k ln",
        "'\u00BD', ''",
    })
    void aNameIsComparedByItsLettersAndDigits(String typed, String compared) {
        assertThat(ByName.plain(typed)).isEqualTo(compared);
    }

    @Property
    void aPlainNameStaysAsItIs(@ForAll @Chars({'a', 'Z', '0', '9', '/', '#', ' ', '-', '.', 'é'}) String typed) {
        String plain = ByName.plain(typed);
        assertThat(ByName.plain(plain)).isEqualTo(plain);
        assertThat(plain).matches("([a-z0-9]+(/[0-9]+)* ?)*").doesNotEndWith(" ");
    }

    @Test
    void aRowIsFoundByItsKeyElseByWordsInIt() {
        assertThat(SCREWS.find("#8 Wood Screw")).containsExactly("no-8-wood-screw");
        assertThat(SCREWS.find("lag")).hasSize(2);
        assertThat(SCREWS.find("1/4 lag")).containsExactly("1/4-in-lag-screw");
        assertThat(SCREWS.find("nail")).isEmpty();
    }

    @Test
    void namesAreAllToldWhereTheyAreFew() {
        assertThat(SCREWS.few()).containsExactly("no 8 wood screw", "1/4 in lag screw", "5/16 in lag screw");
        List<String> many = IntStream.range(0, 100).mapToObj(i -> "screw-" + i).toList();
        assertThat(new ByName<>(many, s -> s, List::of, "a hint").few()).isEmpty();
    }
}
