package fairgrain.form;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Finds what may have been meant by a misspelt word. */
public final class Nearest {
    private static final int LONGEST = 60; // nobody misspells a word of this length by a few letters

    private record Candidate(String word, int distance) {}

    private Nearest() {}

    /** The nearest of the words; null if none is near, that is, if more than half of the letters are wrong. */
    static @Nullable String of(String typed, Collection<String> words) {
        List<String> near = several(typed, words, 1);
        return near.isEmpty() ? null : near.get(0);
    }

    /** At most so many near words, the nearest first. */
    public static List<String> several(String typed, Collection<String> words, int most) {
        if (typed.length() > LONGEST) {
            return List.of();
        }
        String plain = typed.toLowerCase(Locale.ROOT);
        List<Candidate> near = new ArrayList<>();
        for (String word : words) {
            int distance = distance(plain, word.toLowerCase(Locale.ROOT));
            if (2 * distance <= Math.max(typed.length(), word.length())) {
                near.add(new Candidate(word, distance));
            }
        }
        near.sort(Comparator.comparingInt(Candidate::distance)); // stable: of two equally near, the one declared first
        return near.stream().limit(most).map(Candidate::word).toList();
    }

    /** Letters to add, leave out, change or swap with their neighbour to get from one word to the other. */
    static int distance(String from, String to) {
        int[][] d = new int[from.length() + 1][to.length() + 1];
        for (int i = 0; i <= from.length(); i++) {
            for (int j = 0; j <= to.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1;
                int least = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
                boolean swapped = i > 1
                        && j > 1
                        && from.charAt(i - 1) == to.charAt(j - 2)
                        && from.charAt(i - 2) == to.charAt(j - 1);
                d[i][j] = swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
            }
        }
        return d[from.length()][to.length()];
    }
}
