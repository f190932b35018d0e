package fairgrain.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What was typed is repeated so that it can neither move a cursor nor fill a screen. */
class ShownTest {
    @ParameterizedTest
    @ValueSource(chars = {'\u0000', '\u001b', '\t', '\n', '\u007f', '\u009b', '\u2028', '\u202e', '\u2067'})
    void signsThatAreNotSeenAreBlanks(char unseen) {
        assertThat(Shown.quoted("5" + unseen + "mm")).isEqualTo("'5 mm'");
    }

    @Test
    void lettersOfAnyLanguageStay() {
        assertThat(Shown.line("Nußbaum, 胡桃, جوز, 🌳")).isEqualTo("Nußbaum, 胡桃, جوز, 🌳");
    }

    @Test
    void longTextIsCutShort() {
        assertThat(Shown.quoted("x".repeat(60))).isEqualTo("'" + "x".repeat(60) + "'");
        assertThat(Shown.quoted("x".repeat(100_000))).isEqualTo("'" + "x".repeat(60) + "...'");
    }

    @Test
    void aRefusedSizeShowsNoControlCharacter() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShopNumber.length("\u001b[2J11", UnitSystem.INCHES))
                .withMessage("must look like 2 1/4, 2-1/4, 2.25 in, 1 ft 2 1/2 in or 57 mm, but was ' [2J11'");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShopNumber.length("11 \u202emm", UnitSystem.INCHES))
                .withMessage(
                        "has no unit ' mm'; write 2 1/4, 2-1/4, 2.25 in, 1 ft 2 1/2 in or 57 mm, but was '11  mm'");
    }

    @ParameterizedTest
    @ValueSource(ints = {101, 1_000_000})
    void aTextTooLongForANumberIsRefusedAtOnce(int length) {
        String long1 = "1".repeat(length);
        String shown = "but was '" + "1".repeat(60) + "...'";
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShopNumber.length(long1, UnitSystem.INCHES))
                .withMessageEndingWith(shown);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShopNumber.si(long1, Dimension.MASS))
                .withMessageEndingWith(shown);
    }

    /** The marks that turn writing around are U+202A to U+202E and U+2066 to U+2069, by the Unicode standard. */
    @ParameterizedTest
    @ValueSource(ints = {0x1f, 0x7f, 0x9f, 0x2028, 0x2029, 0x202a, 0x202e, 0x2066, 0x2069})
    void theFirstAndTheLastOfTheUnseenSignsAreUnseen(int sign) {
        assertThat(Shown.isUnseen(sign)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(ints = {0x20, 0x7e, 0xa0, 0x2027, 0x202f, 0x2065, 0x206a})
    void theSignsBesideThemAreKept(int sign) {
        assertThat(Shown.isUnseen(sign)).isFalse();
    }
}
