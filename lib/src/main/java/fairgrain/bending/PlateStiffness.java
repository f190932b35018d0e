package fairgrain.bending;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * What a thin plate sets against bending and twisting.
 *
 * <p>D = E t³ / (12 (1 − ν²)) if it is the same in all directions
 *
 * <p><b>Source</b> {@code timoshenko-plates}, plate stiffness.
 *
 * @param along D_x, in bending along the span [N·m]
 * @param across D_y, in bending across it [N·m]
 * @param coupling D_1, what one does to the other [N·m]
 * @param twist D_xy [N·m]
 */
public record PlateStiffness(double along, double across, double coupling, double twist) {
    public static final Citation SOURCE = Citation.of("timoshenko-plates", "plate stiffness", Basis.MEMORY);

    public PlateStiffness {
        Require.between("plate stiffness along", along, 1e-4, 1e9, "N m");
        Require.between("plate stiffness across", across, 1e-4, 1e9, "N m");
        Require.between("plate stiffness in twist", twist, 1e-5, 1e9, "N m");
        Require.between("coupling of the plate stiffnesses", coupling / Math.sqrt(along * across), 0, 0.99, "(ratio)");
    }

    /**
     * A plate of glass, metal or another material that is the same in all directions.
     *
     * @param thickness t [m]
     * @param elasticity E [Pa]
     * @param poisson ν [-]
     * @return the stiffness [-]
     */
    public static PlateStiffness isotropic(double thickness, double elasticity, double poisson) {
        double t = Require.between("thickness", thickness, 1e-4, 0.2, "m");
        double e = Require.between("modulus of elasticity", elasticity, 1e6, 1e12, "Pa");
        double nu = Require.between("Poisson ratio", poisson, 0, 0.49, "(ratio)");
        double d = e * t * t * t / (12 * (1 - nu * nu));
        return new PlateStiffness(d, d, nu * d, (1 - nu) / 2 * d);
    }

    /** That of a shelf board. */
    public static PlateStiffness of(ShelfBoard board) {
        return new PlateStiffness(
                board.stiffnessAlong(), board.stiffnessAcross(), board.stiffnessCoupling(), board.stiffnessTwist());
    }
}
