package fairgrain.hygrometer;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * How a log is written. Nothing of it is guessed from the log.
 *
 * @param time column of the time, or of the date where the time of day has its own
 * @param clock column of the time of day; null where one column holds both
 */
public record LogLayout(
        TimeForm form,
        TemperatureScale scale,
        Separator separator,
        Column time,
        @Nullable Column clock,
        Column temperature,
        Column humidity) {

    /** Time, temperature and humidity in this order in the first three columns. */
    public static LogLayout plain(TimeForm form, TemperatureScale scale, Separator separator) {
        return new LogLayout(form, scale, separator, Column.of("1"), null, Column.of("2"), Column.of("3"));
    }

    /** All its columns. */
    List<Column> columns() {
        return clock == null
                ? List.of(time, temperature, humidity)
                : Stream.of(time, clock, temperature, humidity).toList();
    }
}
