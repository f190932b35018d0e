package fairgrain.place;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.hygrometer.HygrometerLog;
import fairgrain.hygrometer.LoggedMonth;
import fairgrain.hygrometer.Trouble;
import fairgrain.moisture.HailwoodHorrobin;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Turns the log of a room hygrometer into the two ends of its year: the driest and the dampest month that it covers, of any of its
 * years.
 *
 * <p>What a month's wood settles at is the mean over its readings, not that of its mean air: wood takes up more in a damp hour
 * than it gives back in a dry one.
 */
public final class LoggedAir {
    private static final Citation LOG = Citation.of("maker", "log of the room's hygrometer", Basis.ENTERED);

    private LoggedAir() {}

    /**
     * The year of a room.
     *
     * @param file what the log is called
     * @throws IllegalArgumentException if the log covers too little of a year; the message goes to the maker
     */
    public static MoistureYear of(HygrometerLog log, String file) {
        EnumMap<Month, List<LoggedMonth>> byMonth = new EnumMap<>(Month.class);
        for (LoggedMonth month : log.coveredMonths()) {
            byMonth.computeIfAbsent(Month.numbered(month.number()), m -> new ArrayList<>())
                    .add(month);
        }
        refuseTooFew(new SeenMonths(byMonth.keySet()), file);
        Map<Month, SettledMonth> settled = new EnumMap<>(Month.class);
        byMonth.forEach((month, years) -> settled.put(month, settled(years)));
        return SettledYear.of(settled, said(log, file), Evidence.of(LOG, RoomMonths.SPREAD));
    }

    /** The same month of all years: its driest, its mean and its dampest. */
    private static SettledMonth settled(List<LoggedMonth> years) {
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        double mean = 0;
        double slope = 0;
        for (LoggedMonth year : years) {
            low = Math.min(low, year.moisture());
            high = Math.max(high, year.moisture());
            mean += year.moisture() / years.size();
            double humidity = Math.min(year.humidity(), SettledMonth.STEEPEST_AT);
            slope = Math.max(slope, HailwoodHorrobin.slope(year.temperature(), humidity));
        }
        return new SettledMonth(low, mean, high, RoomMonths.HYGROMETER_SD * slope)
                .spreadWider(RoomMonths.ANOTHER_YEAR_SD);
    }

    private static void refuseTooFew(SeenMonths seen, String file) {
        if (!seen.isEnough()) {
            throw new IllegalArgumentException("the log " + file + " covers "
                    + (seen.count() == 0 ? "no month" : seen.names() + " only")
                    + ", by two thirds or more; to know both ends of the year it must reach into its dry and its damp"
                    + " half: go on logging until it has " + Month.and(seen.toAdd())
                    + " too, and until then give 'climate', or 'dry month' and 'damp month'");
        }
    }

    private static String said(HygrometerLog log, String file) {
        StringBuilder said = new StringBuilder("the hygrometer log " + file + ", " + log.span() + ", "
                + log.coveredDays().size() + " days");
        for (Trouble trouble : log.troubles()) {
            said.append("; ").append(trouble.words());
        }
        return said.toString();
    }
}
