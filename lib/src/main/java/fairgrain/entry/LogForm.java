package fairgrain.entry;

import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.hygrometer.Column;
import fairgrain.hygrometer.LogLayout;
import fairgrain.hygrometer.LogReader;
import fairgrain.hygrometer.Separator;
import fairgrain.hygrometer.TemperatureScale;
import fairgrain.hygrometer.TimeForm;
import fairgrain.place.LoggedAir;
import fairgrain.place.MoistureYear;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

/** The log of a hygrometer that stood in the room. How it is written is asked for, never guessed. */
final class LogForm extends Form<MoistureYear> {
    private final Field<String> file =
            text("file", "a CSV file in the folder of this design, in UTF-8").example("hygrometer.csv");
    private final Field<TimeForm> time = field(
                    "time",
                    Kinds.text().to(TimeForm::of),
                    "how its times are written, in the words year, short year, month, day, hour, minute, second,"
                            + " am/pm, offset")
            .example("year-month-day hour:minute");
    private final Field<TemperatureScale> scale = field(
            "temperature in",
            Kinds.choice(List.of(TemperatureScale.values()), TemperatureScale::word, TemperatureScale::signs),
            "degrees Celsius or Fahrenheit");
    private final Field<Separator> separator = choice(
                    "separator", List.of(Separator.values()), Separator::word, "what stands between its cells")
            .or("comma", "as in most logs");
    private final Field<Column> timeColumn =
            column("time column", "time", "name in its heading, or number, of the time");
    private final Field<Optional<Column>> clockColumn = field(
                    "clock column",
                    Kinds.text().to(Column::of),
                    "the same, of the time of day, if that stands apart from the date")
            .optional();
    private final Field<Column> temperatureColumn =
            column("temperature column", "temperature", "the same, of the temperature");
    private final Field<Column> humidityColumn =
            column("humidity column", "humidity", "the same, of the relative humidity in percent");

    LogForm() {
        super("log", "The log of a hygrometer that stood in the room, best for a whole year or more.");
    }

    private Field<Column> column(String key, String name, String meaning) {
        return field(key, Kinds.text().to(Column::of), meaning).or(name, "the heading must have it");
    }

    @Override
    protected MoistureYear build(Entries e) {
        String name = e.get(file);
        LogLayout layout = new LogLayout(
                e.get(time),
                e.get(scale),
                e.get(separator),
                e.get(timeColumn),
                e.get(clockColumn).orElse(null),
                e.get(temperatureColumn),
                e.get(humidityColumn));
        try {
            return LoggedAir.of(LogReader.read(e.enclosed(name), name, layout), name);
        } catch (UncheckedIOException broken) {
            throw new IllegalArgumentException("the file '" + name + "' cannot be read to its end", broken);
        }
    }
}
