package fairgrain.place;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The months of a year of which something is known, and what the others may hide.
 *
 * <p>A year is taken to swing once up and down, as a wave that may peak at any time. Where the months that were seen lie badly to
 * it, the months that were not would have shown more at one end or the other. The worst of that, over all times of the peak and as
 * a share of the swing that was seen, is what may hide.
 */
final class SeenMonths {
    static final Citation UNSEEN = Citation.of(
            "own",
            "what months without readings can hide of a year that swings once, as a share of the swing seen",
            Basis.DERIVED);

    /** As much hidden at an end as was seen in all; seven months in a row come to just that. */
    private static final double MOST_HIDDEN = 1 + 1e-9;

    private static final int MONTHS = 12;
    private static final int DEGREES_PER_MONTH = 30;
    private static final int STEP = 5; // degrees; months and the middles between them lie on it
    private static final double NO_SWING = 1e-9;

    private final EnumSet<Month> seen;

    SeenMonths(Set<Month> seen) {
        this.seen = EnumSet.noneOf(Month.class);
        this.seen.addAll(seen);
    }

    /** What may hide beyond either end, as a share of the swing that was seen; infinite if that swing may be none at all. */
    double hidden() {
        double worst = 0;
        for (int peak = 0; peak < MONTHS * DEGREES_PER_MONTH; peak += STEP) {
            double all = highest(EnumSet.allOf(Month.class), peak);
            double most = highest(seen, peak);
            double least = -highest(seen, peak + MONTHS * DEGREES_PER_MONTH / 2);
            double beyond = Math.max(all - most, all + least); // the wave is as deep as it is high
            if (beyond > NO_SWING) {
                worst = Math.max(worst, most - least > NO_SWING ? beyond / (most - least) : Double.POSITIVE_INFINITY);
            }
        }
        return worst;
    }

    /** The highest of some months, of a wave from -1 to 1 that peaks at an angle. */
    private static double highest(Set<Month> months, int peak) {
        return months.stream()
                .mapToDouble(month -> Math.cos(Math.toRadians(month.number() * DEGREES_PER_MONTH - peak)))
                .max()
                .orElse(-1);
    }

    boolean isEnough() {
        return !seen.isEmpty() && hidden() <= MOST_HIDDEN;
    }

    boolean isWhole() {
        return seen.size() == MONTHS;
    }

    /** The fewest months that would have to be added; of several ways the one that leaves least hidden. */
    List<Month> toAdd() {
        for (int count = 0; count <= MONTHS; count++) {
            Best best = new Best();
            best.search(seen, 0, count, List.of());
            if (best.hidden <= MOST_HIDDEN) {
                return best.added;
            }
        }
        throw new IllegalStateException("twelve months hide nothing");
    }

    private static final class Best {
        private double hidden = Double.POSITIVE_INFINITY;
        private List<Month> added = List.of();

        private void search(Set<Month> months, int from, int count, List<Month> chosen) {
            if (count == 0) {
                double left = new SeenMonths(months).hidden();
                if (!months.isEmpty() && left < hidden - NO_SWING) {
                    hidden = left;
                    added = chosen;
                }
                return;
            }
            for (int i = from; i < MONTHS; i++) {
                Month month = Month.numbered(i + 1);
                if (!months.contains(month)) {
                    EnumSet<Month> more = EnumSet.of(month);
                    more.addAll(months);
                    List<Month> longer = new ArrayList<>(chosen);
                    longer.add(month);
                    search(more, i + 1, count - 1, longer);
                }
            }
        }
    }

    /** {@code January, May and July}. */
    String names() {
        return Month.and(List.copyOf(seen));
    }

    int count() {
        return seen.size();
    }
}
