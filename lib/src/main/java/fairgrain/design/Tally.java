package fairgrain.design;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What came of many drawn boards, rooms and walls. Tallies of different blocks are put together in any order: they hold whole
 * counts only, so the sum is the same to the last digit.
 *
 * @param cases how many were drawn
 * @param checks every check of every question, in their order
 * @param questions every question that has checks, with all its checks together
 * @param piece the whole piece: in how many cases anything at all did not hold
 */
public record Tally(long cases, List<Counted> checks, List<Counted> questions, Counted piece) {
    public Tally {
        checks = List.copyOf(checks);
        questions = List.copyOf(questions);
    }

    /** Both together. */
    public Tally and(Tally other) {
        return new Tally(
                cases + other.cases,
                both(checks, other.checks),
                both(questions, other.questions),
                piece.and(other.piece));
    }

    private static List<Counted> both(List<Counted> one, List<Counted> other) {
        if (one.size() != other.size()) {
            throw new IllegalArgumentException("only tallies of the same questions are put together");
        }
        List<Counted> both = new ArrayList<>();
        for (int i = 0; i < one.size(); i++) {
            both.add(one.get(i).and(other.get(i)));
        }
        return both;
    }

    /** All of them together; at least one is needed. */
    public static Tally sum(Stream<Tally> tallies) {
        return tallies.reduce(Tally::and)
                .orElseThrow(() -> new IllegalArgumentException("there is no tally to put together"));
    }
}
