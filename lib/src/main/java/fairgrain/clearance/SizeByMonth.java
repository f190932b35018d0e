package fairgrain.clearance;

import fairgrain.finding.Finding;
import fairgrain.part.Setting;
import fairgrain.place.Month;
import fairgrain.place.YearByMonth;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;

/**
 * A size month by month, as it is expected: bare wood that follows the room's air, no spread and no lag in it.
 *
 * @param sizes twelve, January first
 * @param drawn months of which nothing is known, drawn in between the driest and the dampest
 */
public record SizeByMonth(List<Length> sizes, Set<Month> drawn) {
    public SizeByMonth {
        sizes = List.copyOf(sizes);
        drawn = Set.copyOf(drawn);
    }

    /**
     * Of a size on the day; empty where the months of the room or the moisture on the day are not known.
     *
     * @param at the size [m] at a moisture content [fraction]
     */
    static Optional<SizeByMonth> of(Setting in, DoubleFunction<Length> at) {
        if (!in.day().known()) {
            return Optional.empty();
        }
        return in.year()
                .byMonth()
                .map(year -> new SizeByMonth(
                        year.months().stream()
                                .map(month -> at.apply(month.expected()))
                                .toList(),
                        year.drawn()));
    }

    /** Whoever prints it rests on how drawn months are drawn. */
    void cite(Finding.Draft draft) {
        if (!drawn.isEmpty()) {
            draft.evidence(YearByMonth.DRAWN);
        }
    }
}
