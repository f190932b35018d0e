package fairgrain.bending;

/**
 * A largest or least value along a beam, and where it is.
 *
 * @param position from the left end of the beam [m]
 * @param value in the unit of the quantity asked for [its unit]
 */
public record Extreme(double position, double value) {}
