package fairgrain.design;

import fairgrain.finding.Answer;
import fairgrain.finding.Check;
import fairgrain.finding.Draw;
import fairgrain.finding.Model;
import fairgrain.finding.Question;
import fairgrain.finding.Spread;
import fairgrain.quantity.Require;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Many boards, rooms and walls drawn from their spreads, and how often an answer would not hold in them. A key that stands in two
 * questions is drawn once for both: the same board, day or books. The cases come in numbered blocks. A block depends on nothing
 * but the seed and its number, so whoever runs blocks side by side gets the same tally, to the last digit, as whoever runs
 * them one behind the other.
 *
 * <p>What is drawn is what the spreads say, and no more: a screw that misses its stud is not among the cases. A question without
 * checks cannot be drawn; {@link #notDrawn()} names it, and nothing is said to hold for it.
 *
 * @param questions with everything that was decided held fixed
 * @param seed the same seed gives the same cases
 */
public record Simulation(List<Question<?>> questions, long seed) {
    private static final int MOST_DRAWS = 10_000_000;

    public Simulation {
        questions = List.copyOf(questions);
    }

    /** Everything that a review asks. */
    public static Simulation of(Review review, long seed) {
        return new Simulation(
                review.asked().stream().<Question<?>>map(Asked::question).toList(), seed);
    }

    /** The questions that have no checks to count. */
    public List<Question<?>> notDrawn() {
        return questions.stream()
                .filter(question -> question.answer().checks().isEmpty())
                .toList();
    }

    /** Everything that is drawn, each key once, in the order in which the questions name them. */
    public List<String> keys() {
        return List.copyOf(places().keySet());
    }

    /** One block of cases. */
    public Tally block(int number, int draws) {
        Require.between("number of a block", number, 0, Integer.MAX_VALUE, "(a count)");
        Require.between("draws of a block", draws, 1, MOST_DRAWS, "(a count)");
        Map<String, Integer> places = places();
        double[] drawn = new double[places.size()];
        List<Counting<?>> countings = new ArrayList<>();
        for (Question<?> question : questions) {
            Counting<?> counting = Counting.of(question, places, drawn);
            if (!counting.isEmpty()) {
                countings.add(counting);
            }
        }
        NormalDraws random = NormalDraws.ofBlock(seed, number);
        long failed = 0;
        long beyond = 0;
        for (int i = 0; i < draws; i++) {
            for (int k = 0; k < drawn.length; k++) {
                drawn[k] = random.nextNormal();
            }
            boolean holds = true;
            boolean within = true;
            for (Counting<?> counting : countings) {
                holds &= counting.count();
                within &= counting.within;
            }
            failed += holds ? 0 : 1;
            beyond += within ? 0 : 1;
        }
        return new Tally(
                draws,
                countings.stream().flatMap(one -> one.checks(draws).stream()).toList(),
                countings.stream().map(one -> one.whole(draws)).toList(),
                new Counted("the whole piece", "", draws, failed, beyond));
    }

    private Map<String, Integer> places() {
        Map<String, Integer> places = new LinkedHashMap<>();
        for (Question<?> question : questions) {
            for (Spread spread : question.spreads()) {
                places.putIfAbsent(spread.key(), places.size());
            }
        }
        return places;
    }

    /** One question while its cases are counted. */
    private static final class Counting<A extends Answer> {
        private final String part;
        private final List<Check> checks;
        private final Model<A> model;
        private final Draw draw;
        private final long[] failed;
        private long any;
        private long beyond;
        private boolean within = true;

        private Counting(Question<A> question, int[] place, double[] drawn) {
            part = question.part();
            model = question.model();
            checks = model.at(Draw.AS_PLANNED).checks();
            failed = new long[checks.size()];
            draw = spread -> drawn[place[spread]];
        }

        static <A extends Answer> Counting<A> of(Question<A> question, Map<String, Integer> places, double[] drawn) {
            int[] place = question.spreads().stream()
                    .mapToInt(spread -> places.getOrDefault(spread.key(), 0))
                    .toArray();
            return new Counting<>(question, place, drawn);
        }

        boolean isEmpty() {
            return checks.isEmpty();
        }

        /** Counts the case that is drawn now; says whether all checks hold in it. */
        boolean count() {
            boolean holds = true;
            try {
                List<Check> now = model.at(draw).checks();
                within = true;
                for (int i = 0; i < failed.length; i++) {
                    if (!now.get(i).holds()) {
                        failed[i]++;
                        holds = false;
                    }
                }
            } catch (IllegalArgumentException e) { // a guard: the draw lies beyond what a formula was made for
                within = false;
                holds = false;
                beyond++;
                for (int i = 0; i < failed.length; i++) {
                    failed[i]++;
                }
            }
            any += holds ? 0 : 1;
            return holds;
        }

        List<Counted> checks(long cases) {
            List<Counted> all = new ArrayList<>();
            for (int i = 0; i < failed.length; i++) {
                all.add(new Counted(part, checks.get(i).what(), cases, failed[i], beyond));
            }
            return all;
        }

        Counted whole(long cases) {
            return new Counted(part, "", cases, any, beyond);
        }
    }
}
