package fairgrain.place;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.moisture.HailwoodHorrobin;
import fairgrain.moisture.HumidAir;
import fairgrain.moisture.HumidityCeiling;
import fairgrain.moisture.IndoorLine;
import fairgrain.moisture.MoistureExcess;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.DoubleBinaryOperator;

/**
 * Carries the outdoor air of each month into a room, and says what wood settles at there.
 *
 * <p>A heated room has the vapour of outdoors and what its people add; an unheated one has the vapour of outdoors and is a little
 * warmer. One that is heated now and then has some days of each: a board follows a week so little that it settles at their mean.
 */
public final class CarriedIn {
    /** How much warmer an unheated room is than outdoors. */
    public static final Citation UNHEATED = Citation.of(
            "own",
            "an unheated room: 2 °C above outdoors at its dry end, 1 °C at its damp end; 1 °C as its spread",
            Basis.JUDGEMENT);

    public static final Citation NOW_AND_THEN =
            Citation.of("own", "heated to 20 °C on some days of a week; mean over the days", Basis.JUDGEMENT);

    /** How far the reckoned air may lie from that of a real room in a real year. */
    public static final Citation SPREAD =
            Citation.of("own", "a month reckoned from outdoors: 5 points of humidity", Basis.JUDGEMENT);

    static final Citation ENTERED = Citation.of("maker", "air outdoors", Basis.ENTERED);

    private static final double HUMIDITY_SD = 0.05;
    private static final double WARMER_WHEN_DRY = 2; // K, unheated room over outdoors
    private static final double WARMER_WHEN_DAMP = 1; // K
    private static final double WARMER_SD = 1; // K
    private static final double CABIN = 293.15; // K, 20 °C, while it is heated
    private static final double LEAST_HUMIDITY = 0.05;

    private CarriedIn() {}

    /** The year of a room at a place of the tables. */
    public static MoistureYear of(OutdoorClimate climate, Indoors indoors) {
        return of(climate.months(), "outdoors as in " + climate.place(), Evidence.of(climate.source()), indoors);
    }

    /**
     * The year of a room whose outdoor months were entered.
     *
     * @throws IllegalArgumentException if too few months are given; the message goes to the maker
     */
    public static MoistureYear entered(Map<Month, IndoorClimate.Air> outdoors, Indoors indoors) {
        RoomMonths.refuseTooFew(outdoors.keySet(), "months");
        return of(outdoors, "outdoors as entered", Evidence.of(ENTERED), indoors);
    }

    private static MoistureYear of(
            Map<Month, IndoorClimate.Air> outdoors, String said, Evidence evidence, Indoors indoors) {
        EnumMap<Month, SettledMonth> settled = new EnumMap<>(Month.class);
        outdoors.forEach((month, air) -> settled.put(month, settled(air, indoors)));
        boolean frost = indoors.heatedShare() < 1
                && outdoors.values().stream()
                        .anyMatch(air ->
                                HailwoodHorrobin.extrapolates(air.temperature().kelvin()));
        return SettledYear.of(
                settled,
                said + ", carried into " + indoors.kept().said() + detail(indoors)
                        + (frost ? "; in frost, what wood settles at lies beyond the printed table" : ""),
                evidence.and(used(indoors)));
    }

    private static String detail(Indoors indoors) {
        return switch (indoors.kept()) {
            case NOW_AND_THEN -> " (" + indoors.heatedDays() + " days of 7)";
            case COOLED -> " (" + Math.round(indoors.ceiling().toPercent()) + " % humidity at most)";
            case HEATED, UNHEATED, PORCH -> "";
        };
    }

    private static Evidence used(Indoors indoors) {
        Evidence heated = Evidence.of(
                IndoorLine.SOURCE,
                MoistureExcess.SOURCE,
                MoistureExcess.MEASURED_HOUSES,
                MoistureExcess.MEAN_OF_HOUSES);
        Evidence unheated = Evidence.of(HumidAir.SOURCE, UNHEATED);
        return switch (indoors.kept()) {
            case HEATED -> heated.and(SPREAD);
            case COOLED -> heated.and(HumidityCeiling.SOURCE, SPREAD);
            case NOW_AND_THEN -> heated.and(unheated).and(NOW_AND_THEN, SPREAD);
            case UNHEATED -> unheated.and(SPREAD);
            case PORCH -> Evidence.of(SPREAD);
        };
    }

    /** What wood settles at in one month. */
    static SettledMonth settled(IndoorClimate.Air outdoors, Indoors indoors) {
        boolean porch = indoors.kept() == Indoors.Kept.PORCH;
        double most = porch ? 0 : WARMER_WHEN_DRY;
        double least = porch ? 0 : WARMER_WHEN_DAMP;
        double one = settled(outdoors, indoors, most);
        double other = settled(outdoors, indoors, least);
        double fromWarmth = porch ? 0 : (1 - indoors.heatedShare()) * byWarmth(outdoors, (most + least) / 2);
        return new SettledMonth(
                Math.min(one, other),
                settled(outdoors, indoors, (most + least) / 2),
                Math.max(one, other),
                Math.hypot(HUMIDITY_SD * slope(outdoors, indoors, (most + least) / 2), fromWarmth));
    }

    /** The mean over heated and unheated days, the latter so much warmer than outdoors. */
    private static double settled(IndoorClimate.Air outdoors, Indoors indoors, double warmer) {
        return mean(HailwoodHorrobin::moisture, outdoors, indoors, warmer);
    }

    private static double slope(IndoorClimate.Air outdoors, Indoors indoors, double warmer) {
        return mean(
                (t, h) -> HailwoodHorrobin.slope(t, Math.min(h, SettledMonth.STEEPEST_AT)), outdoors, indoors, warmer);
    }

    private static double mean(DoubleBinaryOperator ofAir, IndoorClimate.Air outdoors, Indoors indoors, double warmer) {
        double share = indoors.heatedShare();
        double te = outdoors.temperature().kelvin();
        double he = outdoors.humidity().fraction();
        double cold = te + warmer;
        double warm = indoors.kept() == Indoors.Kept.NOW_AND_THEN ? Math.max(CABIN, cold) : heated(te, indoors);
        return share * ofAir.applyAsDouble(warm, heatedHumidity(te, he, warm, indoors))
                + (1 - share) * ofAir.applyAsDouble(cold, HumidAir.broughtIn(te, he, cold));
    }

    /** By the line of the standard; without cooling it is indoors at least as warm as outdoors. */
    private static double heated(double outdoors, Indoors indoors) {
        double line = IndoorLine.temperature(outdoors);
        return indoors.kept() == Indoors.Kept.COOLED ? line : Math.max(line, outdoors);
    }

    private static double heatedHumidity(double te, double he, double ti, Indoors indoors) {
        double ordinary = MoistureExcess.relativeHumidity(te, he, ti, MoistureExcess.ordinary(te));
        double h =
                Math.max(LEAST_HUMIDITY, Math.min(1, ordinary + indoors.people().humidityStep()));
        return indoors.kept() == Indoors.Kept.COOLED
                ? HumidityCeiling.cooled(h, indoors.ceiling().fraction())
                : h;
    }

    /** What a standard deviation of its warmth is worth in an unheated room. */
    private static double byWarmth(IndoorClimate.Air outdoors, double warmer) {
        Indoors unheated = Indoors.of(Indoors.Kept.UNHEATED);
        return Math.abs(settled(outdoors, unheated, warmer - WARMER_SD)
                        - settled(outdoors, unheated, warmer + WARMER_SD))
                / 2;
    }
}
