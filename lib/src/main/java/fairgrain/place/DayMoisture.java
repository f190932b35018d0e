package fairgrain.place;

import fairgrain.finding.Evidence;
import fairgrain.quantity.Estimate;

/**
 * Moisture content of the stock on the day of cutting.
 *
 * @param estimate what is expected and how far off it may be, as fractions; where nothing is known, the middle of the year
 * @param known false where nothing is known: then both ends of the year are tried and the worse governs
 * @param said how it was come by, for the sheet
 */
public record DayMoisture(Estimate estimate, boolean known, String said, Evidence evidence) {}
