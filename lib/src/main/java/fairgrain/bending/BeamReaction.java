package fairgrain.bending;

/**
 * What a support does to the beam.
 *
 * @param support which one [-]
 * @param force upwards; a support that holds the beam down has a negative one [N]
 * @param moment against the clock, with the beam seen from the side and its left end at the left [N·m]
 * @param lifted whether the beam has lifted off [-]
 */
public record BeamReaction(BeamSupport support, double force, double moment, boolean lifted) {}
