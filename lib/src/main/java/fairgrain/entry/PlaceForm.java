package fairgrain.entry;

import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.moisture.Spot;
import fairgrain.place.IndoorClimate;
import fairgrain.place.JottedReadings;
import fairgrain.place.MoistureYear;
import fairgrain.place.RoomAir;
import fairgrain.place.RoomMonths;
import fairgrain.place.SpotInRoom;
import fairgrain.quantity.RelativeHumidity;
import fairgrain.quantity.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The room that the finished piece lives in, told in one of several ways, and the spot in it. */
final class PlaceForm extends Form<MoistureYear> {
    private final List<Way> ways = new ArrayList<>();
    private final Field<Optional<IndoorClimate>> climate;
    private final Field<Optional<ExtremeMonthForm.AirOfMonth>> dry;
    private final Field<Optional<ExtremeMonthForm.AirOfMonth>> damp;
    private final Field<Boolean> south;
    private final Field<Spot> spot;

    /**
     * A way to tell the year of a room.
     *
     * @param keys all of which it needs
     */
    private record Way(List<Field<? extends Optional<?>>> keys, Function<Entries, MoistureYear> year) {
        boolean isBegun(Entries e) {
            return keys.stream().anyMatch(key -> e.get(key).isPresent());
        }

        boolean isWhole(Entries e) {
            return keys.stream().allMatch(key -> e.get(key).isPresent());
        }

        String words() {
            List<String> quoted =
                    keys.stream().map(key -> "'" + key.key() + "'").toList();
            return (quoted.size() > 1 ? "both " : "") + String.join(" and ", quoted);
        }
    }

    PlaceForm(Catalog catalog) {
        super(
                "place",
                "The room that the finished piece lives in, told in one way: a named climate, its driest and dampest"
                        + " month, its months, jotted readings, the log of a hygrometer, or the weather outside.");
        climate = named("climate", catalog.climateFinder(), "a room like it")
                .example("weekend cabin")
                .optional();
        dry = block("dry month", new ExtremeMonthForm(), "mean air of the driest month")
                .optional();
        damp = block("damp month", new ExtremeMonthForm(), "mean air of the dampest month")
                .optional();
        ways.add(new Way(List.of(climate), e -> RoomAir.of(e.get(climate).orElseThrow())));
        ways.add(new Way(
                List.of(dry, damp),
                e -> measured(e.get(dry).orElseThrow(), e.get(damp).orElseThrow())));
        way(
                field("months", Kinds.some(new RoomMonthForm()), "air of the room month by month; best all twelve")
                        .optional(),
                months -> RoomMonths.of(RoomMonthForm.byMonth(months)));
        way(
                field(
                                "readings",
                                Kinds.some(new JottedForm()),
                                "a handful of readings of the room, jotted down over the year")
                        .optional(),
                JottedReadings::of);
        way(
                block("log", new LogForm(), "the log of a hygrometer that stood in the room")
                        .optional(),
                year -> year);
        way(
                block("outdoors", new OutdoorsForm(catalog), "the weather outside, and how the room is kept")
                        .optional(),
                year -> year);
        south = yesNo(
                        "south of the equator",
                        "whether the months of a named climate lie half a year on; its ends stay the same")
                .orElse(false);
        spot = choice(
                        "spot",
                        List.of(Spot.values()),
                        PlaceForm::word,
                        "where in the room it is, which can move an end of the year; above a fireplace is above a"
                                + " heater")
                .orElse(Spot.ROOM);
    }

    private <V> void way(Field<Optional<V>> key, Function<? super V, MoistureYear> year) {
        ways.add(new Way(List.of(key), e -> year.apply(e.get(key).orElseThrow())));
    }

    private static String word(Spot spot) {
        return switch (spot) {
            case ROOM -> "anywhere";
            case OUTSIDE_WALL -> "outside wall";
            case ABOVE_HEATER -> "above a heater";
            case IN_SUN -> "in the sun";
            case STEAMY_ROOM -> "steamy room";
        };
    }

    @Override
    protected MoistureYear build(Entries e) {
        List<Way> begun = ways.stream().filter(way -> way.isBegun(e)).toList();
        if (begun.size() > 1) {
            List<String> words = begun.stream().map(Way::words).toList();
            throw new IllegalArgumentException("has " + String.join(" and ", words)
                    + ", each of which tells the year by itself: keep one, best what was measured longest");
        }
        if (begun.isEmpty()) {
            List<String> words = ways.stream().map(Way::words).toList();
            int last = words.size() - 1;
            throw new IllegalArgumentException(
                    "needs one of " + String.join(", ", words.subList(0, last)) + " or " + words.get(last));
        }
        Way way = begun.get(0);
        if (!way.isWhole(e)) {
            throw new IllegalArgumentException(
                    "needs either 'climate', or " + way.words() + " (means of a month, never a day's extreme)");
        }
        boolean named = e.get(climate).isPresent();
        if (e.get(south) && !named) {
            throw new IllegalArgumentException("has 'south of the equator', which goes with 'climate' only: months that"
                    + " are given by their names stay as they are");
        }
        MoistureYear room = way.year().apply(e);
        return SpotInRoom.year(e.get(south) ? room.halfAYearOn() : room, e.get(spot));
    }

    private static MoistureYear measured(ExtremeMonthForm.AirOfMonth dry, ExtremeMonthForm.AirOfMonth damp) {
        boolean named = dry.month().isPresent() && damp.month().isPresent();
        if (!named) {
            return RoomAir.measured(dry.air(), damp.air());
        }
        if (dry.month().equals(damp.month())) {
            throw new IllegalArgumentException("has the same month as 'dry month' and as 'damp month'");
        }
        return RoomAir.measured(
                dry.month().orElseThrow(), dry.air(), damp.month().orElseThrow(), damp.air());
    }

    /** Mean air of one month. */
    static final class AirForm extends Form<IndoorClimate.Air> {
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
