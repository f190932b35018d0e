package fairgrain.hygrometer;

import java.io.StringReader;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Small logs for tests. */
final class Logs {
    static final TimeForm FORM = TimeForm.of("year-month-day hour:minute");
    static final LogLayout PLAIN = LogLayout.plain(FORM, TemperatureScale.CELSIUS, Separator.COMMA);
    static final LocalDateTime START = LocalDateTime.of(2023, 1, 1, 0, 0);

    private static final DateTimeFormatter WRITTEN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    private Logs() {}

    static HygrometerLog read(String csv) {
        return read(csv, PLAIN);
    }

    static HygrometerLog read(String csv, LogLayout layout) {
        return LogReader.read(new StringReader(csv), "log.csv", layout);
    }

    static LogLayout layout(String form, TemperatureScale scale, Separator separator) {
        return LogLayout.plain(TimeForm.of(form), scale, separator);
    }

    static String time(LocalDateTime time) {
        return WRITTEN.format(time);
    }

    /** Rows of the same air, so many minutes apart, from a start. */
    static List<String> steady(LocalDateTime start, int rows, int minutes, String air) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            lines.add(time(start.plusMinutes((long) i * minutes)) + "," + air);
        }
        return lines;
    }

    static String text(List<String> lines) {
        return String.join("\n", lines) + "\n";
    }
}
