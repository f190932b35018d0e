package fairgrain.place;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.moisture.MinMaxReading;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;

/** Turns what a hygrometer in the room showed month by month into the two ends of its year. */
public final class RoomMonths {
    /** How far a month may lie from the same month of another year. */
    public static final Citation SPREAD = Citation.of(
            "own",
            "a measured month: 3 points of humidity for the hygrometer, half a point of moisture for another year",
            Basis.JUDGEMENT);

    static final Citation MEASURED = Citation.of("maker", "air of the room", Basis.ENTERED);

    /** Said wherever lowest and highest readings are used. */
    static final String DRAWN_IN =
            "lowest and highest readings drawn in to half their range, as boards of 3/4 in (19 mm)"
                    + " or more feel them";

    static final double HYGROMETER_SD = 0.03; // of humidity, as a fraction
    static final double ANOTHER_YEAR_SD = 0.005; // of moisture, as a fraction

    private RoomMonths() {}

    /**
     * The year of a room.
     *
     * @throws IllegalArgumentException if too few months are given; the message goes to the maker
     */
    public static MoistureYear of(Map<Month, FeltAir> months) {
        refuseTooFew(months.keySet(), "months");
        EnumMap<Month, SettledMonth> settled = new EnumMap<>(Month.class);
        months.forEach(
                (month, air) -> settled.put(month, air.settled(HYGROMETER_SD).spreadWider(ANOTHER_YEAR_SD)));
        Evidence evidence = Evidence.of(MEASURED, SPREAD);
        boolean drawnIn = months.values().stream().anyMatch(FeltAir::isDrawnIn);
        return SettledYear.of(
                settled,
                "measured month by month" + (drawnIn ? ", " + DRAWN_IN : ""),
                drawnIn ? evidence.and(MinMaxReading.SOURCE) : evidence);
    }

    /**
     * Refuses months that do not tell both ends of a year, and says which would help.
     *
     * @param what they are, in the plural
     */
    static void refuseTooFew(Set<Month> months, String what) {
        SeenMonths seen = new SeenMonths(months);
        if (seen.isEnough()) {
            return;
        }
        boolean two = seen.count() == 2;
        throw new IllegalArgumentException("must reach into the dry and the damp half of the year, but these " + what
                + " are all from " + seen.names() + ": add " + Month.and(seen.toAdd())
                + (two
                        ? "; if these two are its driest and its dampest month, give them as 'dry month' and 'damp"
                                + " month'"
                        : "")
                + "; until then 'climate' will do");
    }
}
