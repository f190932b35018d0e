package fairgrain.material;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/** Names that may have been meant by a misspelt one, or by one with words around it such as "quartersawn white oak". */
final class NearNames {
    private static final int LONGEST = 60; // nobody misspells a name of this length by a few letters
    private static final int LETTERS_A_SLIP = 4; // one wrong letter in each four
    private static final int SHORTEST_WITHIN = 4; // "ash" stands in many other words

    private NearNames() {}

    /** At most so many of the names, the likeliest first. */
    static List<String> of(String typed, List<String> names, int most) {
        record Candidate(String name, int rank, int length) {}
        String letters = WoodNames.letters(typed);
        if (letters.isEmpty() || letters.length() > LONGEST) {
            return List.of();
        }
        TreeMap<String, String> once = new TreeMap<>(); // in order, each spelling once
        names.forEach(name -> once.putIfAbsent(WoodNames.letters(name), name));
        List<Candidate> near = new ArrayList<>();
        once.forEach((name, written) -> {
            int slips = slips(letters, name);
            if (slips <= Math.max(1, Math.max(letters.length(), name.length()) / LETTERS_A_SLIP)) {
                near.add(new Candidate(written, slips, -name.length()));
            } else if (name.length() >= SHORTEST_WITHIN && letters.contains(name)) {
                near.add(new Candidate(written, LONGEST, -name.length()));
            }
        });
        return near.stream()
                .sorted(Comparator.comparingInt(Candidate::rank).thenComparingInt(Candidate::length))
                .limit(most)
                .map(Candidate::name)
                .toList();
    }

    /** Letters to add, leave out, change, or swap with their neighbour, to get from one to the other. */
    private static int slips(String from, String to) {
        int[][] slips = new int[from.length() + 1][to.length() + 1];
        for (int i = 0; i <= from.length(); i++) {
            for (int j = 0; j <= to.length(); j++) {
                if (i == 0 || j == 0) {
                    slips[i][j] = i + j;
                    continue;
                }
                int least = Math.min(slips[i - 1][j], slips[i][j - 1]) + 1;
                least = Math.min(least, slips[i - 1][j - 1] + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1));
                if (i > 1
                        && j > 1
                        && from.charAt(i - 1) == to.charAt(j - 2)
                        && from.charAt(i - 2) == to.charAt(j - 1)) {
                    least = Math.min(least, slips[i - 2][j - 2] + 1);
                }
                slips[i][j] = least;
            }
        }
        return slips[from.length()][to.length()];
    }
}
