package fairgrain.place;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.moisture.HailwoodHorrobin;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.RelativeHumidity;
import fairgrain.quantity.Temperature;

/** Turns the air of the driest and the dampest month into the moisture contents that wood settles at. */
public final class RoomAir {
    /** How far the air of a room may lie from what is said of it. */
    public static final Citation AIR_SPREAD = Citation.of(
            "own", "a month's humidity: 5 points for a named climate, 3 for a measured one", Basis.JUDGEMENT);

    private static final double NAMED_SD = 0.05; // of humidity, as a fraction
    private static final double MEASURED_SD = 0.03;
    private static final double WOOD_TO_WOOD_SD =
            HailwoodHorrobin.WOOD_TO_WOOD / 2; // the printed band as two deviations

    private RoomAir() {}

    /** The year of a named climate. */
    public static MoistureYear of(IndoorClimate climate) {
        return year(climate.dry(), climate.damp(), NAMED_SD, climate.name(), Evidence.of(climate.source()));
    }

    /** The year of a room whose driest and dampest month were measured. */
    public static MoistureYear measured(IndoorClimate.Air one, IndoorClimate.Air other) {
        return year(
                one,
                other,
                MEASURED_SD,
                "measured temperature and humidity",
                Evidence.of(Citation.of("maker", "air of the room", Basis.ENTERED)));
    }

    /** Moisture content that wood settles at in such air, as a fraction. */
    public static double settled(Temperature temperature, RelativeHumidity humidity) {
        return HailwoodHorrobin.moisture(temperature.kelvin(), humidity.fraction());
    }

    private static MoistureYear year(
            IndoorClimate.Air one, IndoorClimate.Air other, double sd, String said, Evidence evidence) {
        Estimate first = end(one, sd);
        Estimate second = end(other, sd);
        boolean inOrder = first.expected() <= second.expected();
        return new MoistureYear(
                inOrder ? first : second,
                inOrder ? second : first,
                WOOD_TO_WOOD_SD,
                said,
                evidence.and(HailwoodHorrobin.SOURCE, HailwoodHorrobin.WOOD_TO_WOOD_SOURCE, AIR_SPREAD));
    }

    private static Estimate end(IndoorClimate.Air air, double humiditySd) {
        double t = air.temperature().kelvin();
        double h = air.humidity().fraction();
        double slope = HailwoodHorrobin.slope(t, Math.min(h, 0.95));
        return new Estimate(HailwoodHorrobin.moisture(t, h), humiditySd * slope);
    }
}
