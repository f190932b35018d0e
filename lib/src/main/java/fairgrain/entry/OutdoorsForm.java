package fairgrain.entry;

import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.moisture.HumidityCeiling;
import fairgrain.moisture.Occupancy;
import fairgrain.place.CarriedIn;
import fairgrain.place.IndoorClimate;
import fairgrain.place.Indoors;
import fairgrain.place.MoistureYear;
import fairgrain.place.Month;
import fairgrain.place.OutdoorClimate;
import fairgrain.quantity.Limits;
import fairgrain.quantity.RelativeHumidity;
import fairgrain.quantity.Temperature;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The weather outside by month, and how the room is kept. */
final class OutdoorsForm extends Form<MoistureYear> {
    private static final Limits CEILING = new Limits("highest humidity", 0.3, 0.9, "(a fraction; 60 % is 0.60)");
    private static final int USUAL_DAYS = 2;

    private final Field<Optional<OutdoorClimate>> climate;
    private final Field<Optional<List<OutdoorMonth>>> months;
    private final Field<Indoors.Kept> room = choice(
                    "room", List.of(Indoors.Kept.values()), Indoors.Kept::word, "how the room is kept")
            .example("heated");
    private final Field<Optional<Integer>> heatedDays;
    private final Field<Optional<Occupancy>> people;
    private final Field<Optional<RelativeHumidity>> ceiling;

    OutdoorsForm(Catalog catalog) {
        super(
                "outdoors",
                "The weather outside, carried into the room: for a room whose air was never measured and that no named"
                        + " climate fits.");
        climate = named("climate", catalog.outdoorFinder(), "a place with weather like it")
                .example("Zurich")
                .optional();
        months = field("months", Kinds.some(new OutdoorMonthForm()), "means of each month, from a weather service")
                .optional();
        heatedDays = count("heated days", 1, 6, "days of a week on which a room heated now and then is heated")
                .optional();
        people = choice(
                        "people",
                        List.of(Occupancy.values()),
                        OutdoorsForm::word,
                        "how much moisture they bring while it is heated: few in well-aired rooms, many where much is"
                                + " cooked and washed")
                .optional();
        ceiling = humidity("highest humidity", CEILING, "that cooling or drying lets it come to")
                .optional();
    }

    private record OutdoorMonth(Month month, IndoorClimate.Air air) {}

    private static String word(Occupancy people) {
        return switch (people) {
            case LOW -> "few";
            case NORMAL -> "ordinary";
            case HIGH -> "many";
        };
    }

    @Override
    protected MoistureYear build(Entries e) {
        if (e.get(climate).isPresent() == e.get(months).isPresent()) {
            throw new IllegalArgumentException("needs either 'climate' or 'months', not both and not neither");
        }
        Indoors.Kept kept = e.get(room);
        boolean heated = kept != Indoors.Kept.UNHEATED && kept != Indoors.Kept.PORCH;
        goesWith(e, heatedDays, kept == Indoors.Kept.NOW_AND_THEN, "'heated now and then'");
        goesWith(e, people, heated, "that is heated");
        goesWith(e, ceiling, kept == Indoors.Kept.COOLED, "'heated and cooled'");
        if (kept == Indoors.Kept.NOW_AND_THEN) {
            takeIfLeftOut(e, heatedDays, Integer.toString(USUAL_DAYS), "a weekend");
        }
        if (heated) {
            takeIfLeftOut(e, people, word(Occupancy.NORMAL), "as in the mean of measured houses");
        }
        RelativeHumidity usual = new RelativeHumidity(HumidityCeiling.DEFAULT);
        if (kept == Indoors.Kept.COOLED) {
            takeIfLeftOut(e, ceiling, e.rule().text(usual), "the safe side of what cooling holds");
        }
        Indoors indoors = new Indoors(
                kept,
                e.get(heatedDays).orElse(USUAL_DAYS),
                e.get(people).orElse(Occupancy.NORMAL),
                e.get(ceiling).orElse(usual));
        return e.get(climate)
                .map(outside -> CarriedIn.of(outside, indoors))
                .orElseGet(() -> CarriedIn.entered(byMonth(e.get(months).orElseThrow()), indoors));
    }

    private static void goesWith(Entries e, Field<? extends Optional<?>> field, boolean fits, String room) {
        if (e.get(field).isPresent() && !fits) {
            throw new IllegalArgumentException(
                    "has '" + field.key() + "', which goes with a room " + room + " only: take it out");
        }
    }

    private static void takeIfLeftOut(Entries e, Field<? extends Optional<?>> field, String value, String why) {
        if (e.get(field).isEmpty()) {
            e.take(field, value, why);
        }
    }

    private static Map<Month, IndoorClimate.Air> byMonth(List<OutdoorMonth> months) {
        EnumMap<Month, IndoorClimate.Air> byMonth = new EnumMap<>(Month.class);
        for (OutdoorMonth one : months) {
            if (byMonth.put(one.month(), one.air()) != null) {
                throw new IllegalArgumentException(
                        "has " + one.month().word() + " twice in 'months': write each month once");
            }
        }
        return byMonth;
    }

    /** Mean air outside in one month. */
    private static final class OutdoorMonthForm extends Form<OutdoorMonth> {
        private static final Limits WEATHER = new Limits("temperature", 243.15, 318.15, "K");
        private static final Limits DAMPNESS = new Limits("humidity", 0.05, 1, "(a fraction; 45 % is 0.45)");

        private final Field<Month> month =
                field("month", ExtremeMonthForm.month(), "which month").example("January");
        private final Field<Temperature> temperature =
                temperature("temperature", WEATHER, "mean of the month").example("30 F");
        private final Field<RelativeHumidity> humidity =
                humidity("humidity", DAMPNESS, "mean of the month").example("75 %");

        OutdoorMonthForm() {
            super("month outdoors", "Mean air outside in one month.");
        }

        @Override
        protected OutdoorMonth build(Entries e) {
            return new OutdoorMonth(e.get(month), new IndoorClimate.Air(e.get(temperature), e.get(humidity)));
        }
    }
}
