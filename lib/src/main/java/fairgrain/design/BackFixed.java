package fairgrain.design;

import fairgrain.fastener.ScrewSize;
import fairgrain.quantity.Length;
import java.util.Optional;

/**
 * Screws from behind through the back into the case.
 *
 * @param screws as many as lie within the height of the rail
 * @param heads round or pan heads, or with washers; else countersunk
 * @param apart from screw to screw all round; empty if they do not go all round, or if it is not said
 */
public record BackFixed(int screws, ScrewSize screw, Length length, boolean heads, Optional<Length> apart) {}
