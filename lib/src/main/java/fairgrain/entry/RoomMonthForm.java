package fairgrain.entry;

import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.place.FeltAir;
import fairgrain.place.Month;
import fairgrain.quantity.RelativeHumidity;
import fairgrain.quantity.Temperature;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One of several months whose air in the room was measured. */
final class RoomMonthForm extends Form<RoomMonthForm.RoomMonth> {
    private final Field<Month> month =
            field("month", ExtremeMonthForm.month(), "which month").example("January");
    private final Field<Temperature> temperature =
            temperature("temperature", Temperature.LIMITS, "mean of the month").example("68 F");
    private final Field<Optional<RelativeHumidity>> humidity;
    private final Field<Optional<RelativeHumidity>> lowest;
    private final Field<Optional<RelativeHumidity>> highest;

    record RoomMonth(Month month, FeltAir air) {}

    RoomMonthForm() {
        super("month in the room", "Air of the room in one month: its means, or its lowest and highest humidity.");
        humidity = humidity("humidity", RelativeHumidity.LIMITS, "mean of the month")
                .example("35 %")
                .optional();
        lowest = humidity("lowest humidity", RelativeHumidity.LIMITS, "of the month, where its mean is not known")
                .optional();
        highest = humidity("highest humidity", RelativeHumidity.LIMITS, "of the month, where its mean is not known")
                .optional();
    }

    @Override
    protected RoomMonth build(Entries e) {
        return new RoomMonth(
                e.get(month),
                ExtremeMonthForm.felt(e.get(temperature), e.get(humidity), e.get(lowest), e.get(highest)));
    }

    /** Each month once. */
    static Map<Month, FeltAir> byMonth(List<RoomMonth> months) {
        EnumMap<Month, FeltAir> byMonth = new EnumMap<>(Month.class);
        for (RoomMonth one : months) {
            if (byMonth.put(one.month(), one.air()) != null) {
                throw new IllegalArgumentException("has " + one.month().word()
                        + " twice in 'months': write each month once, the mean of all its" + " years");
            }
        }
        return byMonth;
    }
}
