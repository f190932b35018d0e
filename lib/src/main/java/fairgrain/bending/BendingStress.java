package fairgrain.bending;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Stress in a solid beam of one material.
 *
 * <p>σ = M / S, τ = 3 V / (2 A)
 *
 * <p><b>Source</b> {@code gtr190}, chapter 9, bending stress and shear stress.
 *
 * <p><b>Holds for</b> stress within the straight part of the stress-strain line; the shear stress for a rectangle. Left out:
 * stress at holes, notches and knots, the local stress under a load, and stress across the width.
 */
public final class BendingStress {
    public static final Citation SOURCE =
            Citation.of("gtr190", "chapter 9, bending stress and shear stress", Basis.MEMORY);

    private BendingStress() {}

    /**
     * Stress at the outer face.
     *
     * @param moment M, bending moment; its sign does not matter [N·m]
     * @param sectionModulus S [m³]
     * @return σ, tension on one face and as much compression on the other [Pa]
     */
    public static double bending(double moment, double sectionModulus) {
        double m = Require.between("bending moment", moment, -1e6, 1e6, "N m");
        double s = Require.between("section modulus", sectionModulus, 1e-11, 1, "m^3");
        return Math.abs(m) / s;
    }

    /**
     * Largest shear stress in a rectangle, at mid-height.
     *
     * @param shearForce V; its sign does not matter [N]
     * @param area A, area of the rectangle [m²]
     * @return τ [Pa]
     */
    public static double shear(double shearForce, double area) {
        double v = Require.between("shear force", shearForce, -1e6, 1e6, "N");
        double a = Require.between("area of the section", area, 1e-8, 10, "m^2");
        return 1.5 * Math.abs(v) / a;
    }

    /**
     * The moment at which the outer face reaches a stress.
     *
     * @param stress σ [Pa]
     * @param sectionModulus S [m³]
     * @return M [N·m]
     */
    public static double momentAt(double stress, double sectionModulus) {
        double f = Require.between("stress", stress, 0, 1e10, "Pa");
        double s = Require.between("section modulus", sectionModulus, 1e-11, 1, "m^3");
        return f * s;
    }
}
