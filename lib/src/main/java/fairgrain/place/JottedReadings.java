package fairgrain.place;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;

/**
 * Turns a handful of readings, jotted down on different days, into the two ends of the year of a room.
 *
 * <p>One reading is far from the mean of its month. What wood settles at is averaged over the readings of a month, whose mean they
 * tell the better the more there are.
 */
public final class JottedReadings {
    /** How far one reading may lie from the mean of its month. */
    public static final Citation SPREAD = Citation.of(
            "own",
            "one reading of a month: 6 points of humidity from its mean, over the root of their number",
            Basis.JUDGEMENT);

    private static final double ONE_READING_SD = 0.06; // of humidity, as a fraction

    private JottedReadings() {}

    /** What a hygrometer showed once. */
    public record Jotted(Month month, IndoorClimate.Air air) {}

    /**
     * The year of a room.
     *
     * @throws IllegalArgumentException if the readings are of too few months; the message goes to the maker
     */
    public static MoistureYear of(List<Jotted> readings) {
        EnumMap<Month, List<IndoorClimate.Air>> byMonth = new EnumMap<>(Month.class);
        for (Jotted reading : readings) {
            byMonth.computeIfAbsent(reading.month(), month -> new ArrayList<>()).add(reading.air());
        }
        RoomMonths.refuseTooFew(byMonth.keySet(), "readings");
        EnumMap<Month, SettledMonth> settled = new EnumMap<>(Month.class);
        byMonth.forEach((month, airs) -> settled.put(month, mean(airs)));
        return SettledYear.of(
                settled,
                readings.size() + " readings jotted down in the room",
                Evidence.of(RoomMonths.MEASURED, RoomMonths.SPREAD, SPREAD));
    }

    private static SettledMonth mean(List<IndoorClimate.Air> airs) {
        double sd = Math.hypot(RoomMonths.HYGROMETER_SD, ONE_READING_SD / Math.sqrt(airs.size()));
        double moisture = 0;
        double spread = 0;
        for (IndoorClimate.Air air : airs) {
            SettledMonth one = FeltAir.mean(air.temperature(), air.humidity()).settled(sd);
            moisture += one.middle() / airs.size();
            spread += one.sd() / airs.size();
        }
        return SettledMonth.mean(moisture, spread).spreadWider(RoomMonths.ANOTHER_YEAR_SD);
    }
}
