package fairgrain.place;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.moisture.HailwoodHorrobin;
import fairgrain.moisture.MinMaxReading;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.RelativeHumidity;
import fairgrain.quantity.Temperature;
import java.util.Optional;

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
        SettledMonth dry = felt(climate.dry()).settled(NAMED_SD);
        SettledMonth damp = felt(climate.damp()).settled(NAMED_SD);
        return year(
                dry,
                damp,
                climate.name(),
                Evidence.of(climate.source()),
                Optional.of(YearByMonth.between(climate.driest(), dry.estimate(), climate.dampest(), damp.estimate())));
    }

    /** The year of a room whose driest and dampest month were measured. */
    public static MoistureYear measured(IndoorClimate.Air one, IndoorClimate.Air other) {
        return measured(felt(one), felt(other));
    }

    /** The same, where a hygrometer kept the lowest and highest humidity. */
    public static MoistureYear measured(FeltAir one, FeltAir other) {
        return measured(one, other, Optional.empty());
    }

    /** The same, where it is known which months these were. */
    public static MoistureYear measured(Month first, FeltAir one, Month second, FeltAir other) {
        SettledMonth a = one.settled(MEASURED_SD);
        SettledMonth b = other.settled(MEASURED_SD);
        return measured(one, other, Optional.of(YearByMonth.between(first, a.estimate(), second, b.estimate())));
    }

    private static MoistureYear measured(FeltAir one, FeltAir other, Optional<YearByMonth> byMonth) {
        boolean drawnIn = one.isDrawnIn() || other.isDrawnIn();
        Evidence evidence = Evidence.of(RoomMonths.MEASURED);
        return year(
                one.settled(MEASURED_SD),
                other.settled(MEASURED_SD),
                "measured temperature and humidity" + (drawnIn ? ", " + RoomMonths.DRAWN_IN : ""),
                drawnIn ? evidence.and(MinMaxReading.SOURCE) : evidence,
                byMonth);
    }

    /** Moisture content that wood settles at in such air, as a fraction. */
    public static double settled(Temperature temperature, RelativeHumidity humidity) {
        return HailwoodHorrobin.moisture(temperature.kelvin(), humidity.fraction());
    }

    private static FeltAir felt(IndoorClimate.Air air) {
        return FeltAir.mean(air.temperature(), air.humidity());
    }

    private static MoistureYear year(
            SettledMonth one, SettledMonth other, String said, Evidence evidence, Optional<YearByMonth> byMonth) {
        SettledMonth dry = one.low() <= other.low() ? one : other;
        SettledMonth damp = one.high() > other.high() ? one : other;
        Evidence all = evidence.and(HailwoodHorrobin.SOURCE, HailwoodHorrobin.WOOD_TO_WOOD_SOURCE, AIR_SPREAD);
        return new MoistureYear(
                new Estimate(dry.low(), dry.sd()),
                new Estimate(damp.high(), damp.sd()),
                WOOD_TO_WOOD_SD,
                said,
                all,
                byMonth);
    }
}
