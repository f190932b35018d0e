package fairgrain.entry;

import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.moisture.MeterReading;
import fairgrain.place.Metered;
import fairgrain.quantity.Limits;
import fairgrain.quantity.MoistureContent;
import fairgrain.quantity.Temperature;
import java.util.List;
import java.util.Optional;

/** What a moisture meter showed, and what it was set for. */
final class MeterForm extends Form<Metered> {
    private static final Limits WOOD = new Limits("temperature of the wood", 243.15, 343.15, "K");
    private static final Limits CALIBRATION = new Limits("calibration temperature", 273.15, 323.15, "K");

    private final Field<MoistureContent> reading = moisture("reading", Metered.READING, "as shown; the mean of several")
            .example("9 %");
    private final Field<Integer> readings =
            count("readings", 1, 1000, "how many it is the mean of").or("1", "one reading, which is doubted most");
    private final Field<MeterReading.Kind> kind = choice(
                    "kind", List.of(MeterReading.Kind.values()), MeterForm::word, "how the meter measures")
            .or("pins", "it reads from 6 % on, a plate from 4 %");
    private final Field<Boolean> corrected = yesNo(
                    "set for the wood", "for its species (pins) or its specific gravity (plate)")
            .or("no", "not said, so two points more are doubted");
    private final Field<Optional<Temperature>> wood = temperature(
                    "wood temperature", WOOD, "if the meter does not allow for it")
            .example("50 F")
            .optional();
    private final Field<Temperature> calibration = temperature(
                    "calibrated at", CALIBRATION, "the temperature that the meter is made for")
            .or("68 F", "what most meters are made for");

    MeterForm() {
        super("meter", "What a moisture meter showed, and what it was set for.");
    }

    private static String word(MeterReading.Kind kind) {
        return switch (kind) {
            case PIN -> "pins";
            case SURFACE -> "plate";
        };
    }

    @Override
    protected Metered build(Entries e) {
        return new Metered(
                e.get(reading),
                e.get(readings),
                e.get(kind),
                e.get(corrected),
                e.get(wood).orElse(null),
                e.get(calibration));
    }
}
