package fairgrain.bending;

import fairgrain.quantity.Require;

/**
 * A length of beam with one section all along.
 *
 * @param length of the stretch [m]
 * @param bendingStiffness E I [N·m²]
 * @param shearStiffness G A′; positive infinity for a beam that does not give in shear [N]
 */
public record BeamStretch(double length, double bendingStiffness, double shearStiffness) {
    public BeamStretch {
        Require.between("length of the beam", length, 1e-4, 100, "m");
        Require.between("bending stiffness", bendingStiffness, 1e-6, 1e12, "N m^2");
        if (shearStiffness != Double.POSITIVE_INFINITY) {
            Require.between("shear stiffness", shearStiffness, 1e-3, 1e14, "N");
        }
    }

    /**
     * A stretch that bends but does not give in shear.
     *
     * @param length of the stretch [m]
     * @param bendingStiffness E I [N·m²]
     * @return the stretch [-]
     */
    public static BeamStretch withoutShear(double length, double bendingStiffness) {
        return new BeamStretch(length, bendingStiffness, Double.POSITIVE_INFINITY);
    }
}
