package fairgrain.design;

import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.place.IndoorClimate;
import fairgrain.place.MoistureYear;
import fairgrain.place.RoomAir;
import fairgrain.quantity.RelativeHumidity;
import fairgrain.quantity.Temperature;
import java.util.Optional;

/** The room that the finished piece lives in. */
final class PlaceForm extends Form<MoistureYear> {
    private final Field<Optional<IndoorClimate>> climate;
    private final Field<Optional<IndoorClimate.Air>> dry;
    private final Field<Optional<IndoorClimate.Air>> damp;

    PlaceForm(Catalog catalog) {
        super("place", "The room that the finished piece lives in: a named climate, or its driest and dampest month.");
        climate = named("climate", catalog.climateFinder(), "a room like it")
                .example("weekend cabin")
                .optional();
        dry = block("dry month", new AirForm(), "mean air of the driest month").optional();
        damp = block("damp month", new AirForm(), "mean air of the dampest month")
                .optional();
    }

    @Override
    protected MoistureYear build(Entries e) {
        boolean measured = e.get(dry).isPresent() && e.get(damp).isPresent();
        boolean half = e.get(dry).isPresent() != e.get(damp).isPresent();
        if (half || measured == e.get(climate).isPresent()) {
            throw new IllegalArgumentException(
                    "needs either 'climate', or both 'dry month' and 'damp month' (means of a month, never a day's"
                            + " extreme)");
        }
        return e.get(climate)
                .map(RoomAir::of)
                .orElseGet(() ->
                        RoomAir.measured(e.get(dry).orElseThrow(), e.get(damp).orElseThrow()));
    }

    /** Mean air of one month. */
    private static final class AirForm extends Form<IndoorClimate.Air> {
        private final Field<Temperature> temperature = temperature(
                        "temperature", Temperature.LIMITS, "mean of the month")
                .example("68 F");
        private final Field<RelativeHumidity> humidity = humidity(
                        "humidity", RelativeHumidity.LIMITS, "mean of the month")
                .example("35 %");

        AirForm() {
            super("air", "Mean air of one month.");
        }

        @Override
        protected IndoorClimate.Air build(Entries e) {
            return new IndoorClimate.Air(e.get(temperature), e.get(humidity));
        }
    }
}
