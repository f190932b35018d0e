package fairgrain.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
    private static final List<String> KEYS =
            List.of("name", "wood", "between stiles", "depth", "width", "screw", "gap");

    @ParameterizedTest
    @CsvSource({
        "'', '', 0",
        "a, '', 1",
        "sight, sight, 0",
        "sihgt, sight, 1",
        "sigt, sight, 1",
        "siight, sight, 1",
        "sigth, sight, 1",
        "saght, sight, 1",
        "width, depth, 3",
        "abcd, dcba, 3"
    })
    void countsLettersToMend(String from, String to, int distance) {
        assertThat(Nearest.distance(from, to)).isEqualTo(distance);
        assertThat(Nearest.distance(to, from)).isEqualTo(distance);
    }

    @Property
    void theNearestKeyOfAOneLetterSlipIsTheKey(@ForAll("keys") String key, @ForAll("slips") Slip slip) {
        assertThat(Nearest.of(slip.in(key), KEYS)).isEqualTo(key);
    }

    @Property
    void noWordIsFurtherThanTheLongerOfTheTwo(
            @ForAll @AlphaChars @StringLength(max = 20) String from,
            @ForAll @AlphaChars @StringLength(max = 20) String to) {
        assertThat(Nearest.distance(from, to)).isBetween(0, Math.max(from.length(), to.length()));
    }

    @Test
    void capitalsDoNotMatter() {
        assertThat(Nearest.of("DEPTH", KEYS)).isEqualTo("depth");
    }

    @Test
    void whatIsMostlyWrongIsNotNear() {
        assertThat(Nearest.of("colour", KEYS)).isNull();
        assertThat(Nearest.of("", KEYS)).isNull();
        assertThat(Nearest.of("x".repeat(100_000), KEYS)).isNull();
    }

    @Test
    void theNearestStandsFirstAndNoMoreAreGivenThanAskedFor() {
        assertThat(Nearest.several("wepth", KEYS, 3)).containsExactly("depth", "width");
        assertThat(Nearest.several("wepth", KEYS, 1)).containsExactly("depth");
    }

    @Provide
    Arbitrary<String> keys() {
        return Arbitraries.of(KEYS);
    }

    @Provide
    Arbitrary<Slip> slips() {
        return Slip.any();
    }
}
