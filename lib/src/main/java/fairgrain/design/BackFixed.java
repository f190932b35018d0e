package fairgrain.design;

import fairgrain.fastener.ScrewSize;
import fairgrain.quantity.Length;

/**
 * Screws from behind through the back into the case.
 *
 * @param screws as many as lie within the height of the rail
 * @param heads round or pan heads, or with washers; else countersunk
 */
public record BackFixed(int screws, ScrewSize screw, Length length, boolean heads) {}
