package fairgrain.hygrometer;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;

/**
 * What a log says of a room: a mean for each day and each month, and everything that was wrong in it.
 *
 * @param rows of readings, good and bad; blank lines are not counted
 * @param headingLines lines passed over before the first reading
 * @param first time of the first good reading
 * @param last time of the last
 * @param days of which anything is known, in order
 * @param months of which anything is known, in order
 * @param troubles each fault that was met
 */
public record HygrometerLog(
        long rows,
        long headingLines,
        LocalDateTime first,
        LocalDateTime last,
        List<LoggedDay> days,
        List<LoggedMonth> months,
        Gaps gaps,
        List<Trouble> troubles) {

    public HygrometerLog {
        days = List.copyOf(days);
        months = List.copyOf(months);
        troubles = List.copyOf(troubles);
    }

    /** The days that are known well enough, for a simulation with one value a day; days between them may be missing. */
    public List<LoggedDay> coveredDays() {
        return days.stream().filter(LoggedDay::isCovered).toList();
    }

    /** The months that are known well enough. */
    public List<LoggedMonth> coveredMonths() {
        return months.stream().filter(LoggedMonth::isCovered).toList();
    }

    /** {@code 1 January 2022 to 31 December 2023}. */
    public String span() {
        return words(first.toLocalDate()) + " to " + words(last.toLocalDate());
    }

    private static String words(LocalDate date) {
        return date.getDayOfMonth() + " " + LoggedMonth.name(date.getMonthValue()) + " " + date.getYear();
    }
}
