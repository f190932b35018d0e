package fairgrain.hygrometer;

import java.time.Month;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Means of one month of one year, over the time between its readings.
 *
 * @param share how much of it lies between readings, from 0 to 1
 * @param temperature [K]
 * @param humidity as a fraction [-]
 * @param moisture what wood settles at, mean of all readings, as a fraction [-]
 */
public record LoggedMonth(YearMonth month, double share, double temperature, double humidity, double moisture) {
    private static final double ENOUGH = 2.0 / 3;
    private static final double HOURS_PER_DAY = 24;

    /** Whether enough of the month is known to speak of its mean. */
    public boolean isCovered() {
        return share >= ENOUGH;
    }

    /** 1 for January to 12 for December. */
    public int number() {
        return month.getMonthValue();
    }

    /** {@code April 2023}. */
    public String name() {
        return name(number()) + " " + month.getYear();
    }

    /** {@code April}, for 4. */
    public static String name(int number) {
        String capitals = Month.of(number).name();
        return capitals.charAt(0) + capitals.substring(1).toLowerCase(Locale.ROOT);
    }

    /** The months of which anything is known, of days in order. */
    static List<LoggedMonth> of(List<LoggedDay> days) {
        Map<YearMonth, List<LoggedDay>> byMonth = new LinkedHashMap<>();
        days.forEach(day -> byMonth.computeIfAbsent(YearMonth.from(day.date()), m -> new ArrayList<>())
                .add(day));
        return byMonth.entrySet().stream()
                .map(entry -> mean(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static LoggedMonth mean(YearMonth month, List<LoggedDay> days) {
        double hours = 0;
        double temperature = 0;
        double humidity = 0;
        double moisture = 0;
        for (LoggedDay day : days) {
            hours += day.hours();
            temperature += day.hours() * day.temperature();
            humidity += day.hours() * day.humidity();
            moisture += day.hours() * day.moisture();
        }
        return new LoggedMonth(
                month,
                hours / (month.lengthOfMonth() * HOURS_PER_DAY),
                temperature / hours,
                humidity / hours,
                moisture / hours);
    }
}
