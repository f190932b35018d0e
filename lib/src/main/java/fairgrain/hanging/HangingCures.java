package fairgrain.hanging;

import fairgrain.finding.Remedy;
import fairgrain.finding.Words;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What mends a cabinet that does not hold: more screws or a second row before longer ones. Asked again, each holds. */
final class HangingCures {
    private static final int MOST_PER_STUD = 6;
    private static final Length SECOND_ROW = Length.mm(45); // above the lower edge, in a rail at the bottom
    private static final int MOST = 3;

    private final Hanging hanging;
    private final Fixing fixing;
    private final List<Remedy> cures = new ArrayList<>();

    HangingCures(Hanging hanging) {
        this.hanging = hanging;
        this.fixing = hanging.fixing();
    }

    List<Remedy> all() {
        moreInEachStud(fixing, null);
        secondRow();
        if (hanging.gap().metres() > 0) {
            add(
                    hanging.layers(List.of()),
                    Words.of(
                            hanging.stud() instanceof Masonry
                                    ? "Cut the lining away under the rail, so that it lies on the wall."
                                    : "Let the rail in so that it lies straight on the studs."));
        }
        for (Length length : fixing.screw().shopLengths()) {
            if (length.compareTo(fixing.length()) > 0 && moreInEachStud(fixing.length(length), length)) {
                break;
            }
        }
        return List.copyOf(cures.subList(0, Math.min(MOST, cures.size())));
    }

    /** The least number that holds; of a longer screw the same number may do. */
    private boolean moreInEachStud(Fixing with, @Nullable Length longer) {
        int from = fixing.top().perStud() + (longer == null ? 1 : 0);
        for (int n = from; n <= MOST_PER_STUD; n++) {
            Words words = longer == null
                    ? Words.of(
                            hanging.stud() instanceof Masonry
                                    ? "Put {} anchors at each place, one above the other."
                                    : "Put {} screws in each stud.",
                            Amount.count(n))
                    : Words.of("Use screws {} long, {} in each stud.", longer, Amount.count(n));
            if (add(hanging.fixing(with.perStud(n)), words)) {
                return true;
            }
        }
        return false;
    }

    private void secondRow() {
        boolean low = fixing.rows().stream()
                .anyMatch(row -> row.height().minus(SECOND_ROW).metres() < 0.05);
        for (int n = 1; !low && n <= fixing.top().perStud(); n++) {
            Words words = Words.of(
                    "Add a second row through a rail at the bottom, {} above the lower edge, {} in each stud.",
                    hanging.in().rule().nearest(SECOND_ROW),
                    Amount.count(n));
            if (add(hanging.fixing(fixing.with(new Row(hanging.in().rule().nearest(SECOND_ROW), n))), words)) {
                return;
            }
        }
    }

    private boolean add(Hanging then, Words words) {
        if (!then.holds()) {
            return false;
        }
        Length point = then.hold().point();
        boolean deeper = point.compareTo(hanging.hold().point()) > 0 && HangingWords.maybeCables(point);
        cures.add(new Remedy(
                deeper
                        ? words.and(Words.of(
                                "The points of the screws then reach {} into the studs, deeper than cables are kept"
                                        + " from.",
                                point))
                        : words,
                then));
        return true;
    }
}
