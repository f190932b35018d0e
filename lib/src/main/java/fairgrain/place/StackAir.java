package fairgrain.place;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Temperature;

/**
 * The air that a stack lies in.
 *
 * @param settled what wood settles at there and how far off that may be, as fractions
 */
public record StackAir(Estimate settled, Temperature temperature, String said, Evidence evidence) {
    public static final Citation SEASON =
            Citation.of("own", "a named climate at an unknown time of its year: its middle", Basis.DERIVED);

    /** A named climate. The season is not told, so the middle of its year stands, and half its swing is doubt. */
    public static StackAir of(IndoorClimate climate) {
        MoistureYear year = RoomAir.of(climate);
        double ofTheSeason = year.swing() / 2 / Math.sqrt(2); // deviation of a sine
        return new StackAir(
                new Estimate(
                        (year.dry().expected() + year.damp().expected()) / 2,
                        Math.hypot(
                                ofTheSeason,
                                Math.max(year.dry().sd(), year.damp().sd()))),
                new Temperature((climate.dry().temperature().kelvin()
                                + climate.damp().temperature().kelvin())
                        / 2),
                climate.name(),
                year.evidence().and(SEASON));
    }

    /** Measured while it lay there. */
    public static StackAir measured(IndoorClimate.Air air) {
        MoistureYear year = RoomAir.measured(air, air);
        return new StackAir(year.dry(), air.temperature(), "air as measured", year.evidence());
    }
}
