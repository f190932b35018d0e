package fairgrain.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A way from a row to a formula: for each switch on it, the words that lead on. No switch: every row goes this way.
 *
 * @param switches the words of each arm, the outermost first
 */
record Way(List<Set<String>> switches) {
    static final Way ALWAYS = new Way(List.of());

    Way into(Set<String> words) {
        List<Set<String>> deeper = new ArrayList<>(switches);
        deeper.add(words);
        return new Way(List.copyOf(deeper));
    }

    /** A row goes this way if for each switch one of its cells is one of the words, or begins with one. */
    boolean isOpenTo(List<String> cells) {
        return switches.stream().allMatch(words -> words.stream().anyMatch(word -> leads(word, cells)));
    }

    private static boolean leads(String word, List<String> cells) {
        return cells.contains(word) || cells.stream().anyMatch(cell -> cell.startsWith(word + " "));
    }
}
