package fairgrain.form;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** One wrong letter: left out, added, changed, or swapped with the next. */
record Slip(int how, int where, char letter) {
    static Arbitrary<Slip> any() {
        return Combinators.combine(
                        Arbitraries.integers().between(0, 3),
                        Arbitraries.integers().between(0, 40),
                        Arbitraries.chars().range('a', 'z'))
                .as(Slip::new);
    }

    String in(String word) {
        int at = where % word.length();
        String before = word.substring(0, at);
        String behind = word.substring(at + 1);
        return switch (how) {
            case 0 -> before + behind;
            case 1 -> before + letter + word.substring(at);
            case 2 -> before + letter + behind;
            default -> behind.isEmpty() ? before : before + behind.charAt(0) + word.charAt(at) + behind.substring(1);
        };
    }
}
