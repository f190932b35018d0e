package fairgrain.place;

import fairgrain.finding.Evidence;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.MoistureContent;
import org.jspecify.annotations.Nullable;

/**
 * Moisture content of the stock on the day of cutting.
 *
 * @param estimate what is expected of the mean over the thickness and how far off it may be, as fractions; where nothing is known, the
 *     middle of the year
 * @param known false where nothing is known: then both ends of the year are tried and the worse governs
 * @param core what is expected in the middle of the thickness; null where it is not known
 * @param said how it was come by, for the sheet
 */
public record DayMoisture(
        Estimate estimate, boolean known, @Nullable MoistureContent core, String said, Evidence evidence) {

    /** Where the core is not known. */
    public DayMoisture(Estimate estimate, boolean known, String said, Evidence evidence) {
        this(estimate, known, null, said, evidence);
    }
}
