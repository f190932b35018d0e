package fairgrain.entry;

import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kind;
import fairgrain.form.Kinds;
import fairgrain.place.FeltAir;
import fairgrain.place.Month;
import fairgrain.quantity.RelativeHumidity;
import fairgrain.quantity.Temperature;
import java.util.List;
import java.util.Optional;

/** Air of a room in one month: its means, or what a hygrometer kept as the lowest and highest. */
final class ExtremeMonthForm extends Form<ExtremeMonthForm.AirOfMonth> {
    private final Field<Optional<Month>> month;
    private final Field<Temperature> temperature =
            temperature("temperature", Temperature.LIMITS, "mean of the month").example("68 F");
    private final Field<Optional<RelativeHumidity>> humidity;
    private final Field<Optional<RelativeHumidity>> lowest;
    private final Field<Optional<RelativeHumidity>> highest;

    /** Which month, where that is known, and its air. */
    record AirOfMonth(Optional<Month> month, FeltAir air) {}

    /** Of the driest or the dampest month. */
    ExtremeMonthForm() {
        super(
                "extreme month",
                "Mean air of one month; or its lowest and highest humidity, as a hygrometer keeps them.");
        month = field("month", month(), "which month it is, so that the year can be shown month by month")
                .optional();
        humidity = humidity("humidity", RelativeHumidity.LIMITS, "mean of the month")
                .example("35 %")
                .optional();
        lowest = humidity("lowest humidity", RelativeHumidity.LIMITS, "of the month, where its mean is not known")
                .optional();
        highest = humidity("highest humidity", RelativeHumidity.LIMITS, "of the month, where its mean is not known")
                .optional();
    }

    /** A month by its name, whole or short, or its number. */
    static Kind<Month> month() {
        return Kinds.choice(List.of(Month.values()), Month::word, Month::also);
    }

    @Override
    protected AirOfMonth build(Entries e) {
        return new AirOfMonth(e.get(month), felt(e.get(temperature), e.get(humidity), e.get(lowest), e.get(highest)));
    }

    /** The air of a month from its mean humidity, or from its lowest and highest. */
    static FeltAir felt(
            Temperature temperature,
            Optional<RelativeHumidity> humidity,
            Optional<RelativeHumidity> lowest,
            Optional<RelativeHumidity> highest) {
        boolean both = lowest.isPresent() && highest.isPresent();
        boolean half = lowest.isPresent() != highest.isPresent();
        if (half || both == humidity.isPresent()) {
            throw new IllegalArgumentException(
                    "needs either 'humidity', the mean of the month, or both 'lowest humidity'"
                            + " and 'highest humidity'");
        }
        if (!both) {
            return FeltAir.mean(temperature, humidity.orElseThrow());
        }
        if (lowest.get().fraction() > highest.get().fraction()) {
            throw new IllegalArgumentException("has a 'lowest humidity' above its 'highest humidity'");
        }
        return FeltAir.minMax(temperature, lowest.get(), highest.get());
    }
}
