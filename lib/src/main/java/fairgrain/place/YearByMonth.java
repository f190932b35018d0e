package fairgrain.place;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Estimate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The moisture content that wood of a room tends to, month by month.
 *
 * @param months twelve, January first, as fractions
 * @param drawn the months of which nothing is known and that were drawn in between the driest and the dampest: an estimate
 */
public record YearByMonth(List<Estimate> months, Set<Month> drawn) {
    /** How the months between two known ends are drawn in; whatever shows drawn months rests on it. No end of a year does. */
    public static final Citation DRAWN = Citation.of(
            "own",
            "months between the driest and the dampest, along half a wave up and half a wave down",
            Basis.JUDGEMENT);

    public YearByMonth {
        months = List.copyOf(months);
        drawn = Set.copyOf(drawn);
        if (months.size() != Month.values().length) {
            throw new IllegalArgumentException("a year has 12 months, but these were " + months.size());
        }
    }

    public Estimate in(Month month) {
        return months.get(month.number() - 1);
    }

    /** Of a room whose driest and dampest month are all that is known. */
    public static YearByMonth between(Month driest, Estimate dry, Month dampest, Estimate damp) {
        if (driest == dampest) {
            throw new IllegalArgumentException(
                    "the driest and the dampest month must differ, but both were " + driest.word());
        }
        return of(Map.of(driest, dry, dampest, damp));
    }

    /**
     * Of a room of which some months are known. The others lie on half a wave from the driest of these to the dampest and half a
     * wave back.
     *
     * @param known at least one
     */
    public static YearByMonth of(Map<Month, Estimate> known) {
        Month driest = known.keySet().iterator().next();
        Month dampest = driest;
        for (Month month : known.keySet()) {
            driest = at(known, month).expected() < at(known, driest).expected() ? month : driest;
            dampest = at(known, month).expected() > at(known, dampest).expected() ? month : dampest;
        }
        List<Estimate> months = new ArrayList<>();
        EnumSet<Month> drawn = EnumSet.noneOf(Month.class);
        for (Month month : Month.values()) {
            Estimate seen = known.get(month);
            if (seen == null) {
                drawn.add(month);
                double share = share(driest, dampest, month);
                months.add(mixed(at(known, driest), at(known, dampest), share));
            } else {
                months.add(seen);
            }
        }
        return new YearByMonth(months, drawn);
    }

    private static Estimate at(Map<Month, Estimate> known, Month month) {
        Estimate estimate = known.get(month);
        if (estimate == null) {
            throw new IllegalArgumentException("nothing is known of " + month.word());
        }
        return estimate;
    }

    /** From 0 in the driest month to 1 in the dampest, level at both. */
    private static double share(Month driest, Month dampest, Month month) {
        int rise = driest.until(dampest);
        int since = driest.until(month);
        if (rise == 0) {
            return 0;
        }
        double phase = since <= rise
                ? Math.PI * since / rise
                : Math.PI + Math.PI * (since - rise) / (Month.values().length - rise);
        return (1 - Math.cos(phase)) / 2;
    }

    private static Estimate mixed(Estimate dry, Estimate damp, double share) {
        return new Estimate(
                dry.expected() + share * (damp.expected() - dry.expected()), dry.sd() + share * (damp.sd() - dry.sd()));
    }

    /** The same year, its ends moved: each month keeps its place between them. */
    YearByMonth stretched(Estimate dry, Estimate damp, Estimate newDry, Estimate newDamp) {
        double swing = damp.expected() - dry.expected();
        return new YearByMonth(
                months.stream()
                        .map(month -> {
                            double share = swing > 0 ? (month.expected() - dry.expected()) / swing : 0.5;
                            double sd = Math.max(
                                    month.sd(), mixed(newDry, newDamp, share).sd());
                            return new Estimate(mixed(newDry, newDamp, share).expected(), sd);
                        })
                        .toList(),
                drawn);
    }

    /** The same year on the other half of the globe. */
    YearByMonth halfAYearOn() {
        List<Estimate> moved = new ArrayList<>();
        EnumSet<Month> movedDrawn = EnumSet.noneOf(Month.class);
        for (Month month : Month.values()) {
            Month before = month.plus(6);
            moved.add(in(before));
            if (drawn.contains(before)) {
                movedDrawn.add(month);
            }
        }
        return new YearByMonth(moved, movedDrawn);
    }
}
