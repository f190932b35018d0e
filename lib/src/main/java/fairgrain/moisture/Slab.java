package fairgrain.moisture;

import fairgrain.quantity.Require;

/**
 * A slab whose two faces may differ, as those of a cabinet side finished outside and bare inside.
 *
 * @param thickness from face to face [m]
 * @param diffusivity as it goes with the moisture content [m²/s]
 * @param front surface coefficient of the front face; 0 is sealed, infinite has no resistance [m/s]
 * @param back surface coefficient of the back face; 0 is sealed, infinite has no resistance [m/s]
 */
public record Slab(double thickness, Diffusivity diffusivity, double front, double back) {
    public Slab {
        Require.between("thickness", thickness, 1e-4, 1, "m");
        Require.between("surface coefficient of the front", front, 0, Double.POSITIVE_INFINITY, "m/s");
        Require.between("surface coefficient of the back", back, 0, Double.POSITIVE_INFINITY, "m/s");
    }
}
