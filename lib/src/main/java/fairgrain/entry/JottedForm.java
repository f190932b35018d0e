package fairgrain.entry;

import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.place.IndoorClimate;
import fairgrain.place.JottedReadings;
import fairgrain.place.Month;
import fairgrain.quantity.RelativeHumidity;
import fairgrain.quantity.Temperature;

/** What a hygrometer in the room showed once, jotted down. */
final class JottedForm extends Form<JottedReadings.Jotted> {
    private final Field<Month> date = field(
                    "date", Kinds.text().to(Month::ofDate), "the day, as year-month-day, or only the name of the month")
            .example("2025-01-15");
    private final Field<Temperature> temperature =
            temperature("temperature", Temperature.LIMITS, "that it showed").example("68 F");
    private final Field<RelativeHumidity> humidity =
            humidity("humidity", RelativeHumidity.LIMITS, "that it showed").example("35 %");

    JottedForm() {
        super("reading", "What a hygrometer in the room showed once; each reading on a day of its own.");
    }

    @Override
    protected JottedReadings.Jotted build(Entries e) {
        return new JottedReadings.Jotted(e.get(date), new IndoorClimate.Air(e.get(temperature), e.get(humidity)));
    }
}
