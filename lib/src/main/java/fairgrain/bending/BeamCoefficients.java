package fairgrain.bending;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * The straight beam of one section under the loads that the handbook lists, shear included.
 *
 * <p>δ = k_b W L³ / (E I) + k_s W L / (G A′)
 *
 * <p><b>Source</b> {@code gtr190}, equation 9-2 and Table 9-1.
 *
 * <p><b>Holds for</b> small deflections and one section all along. Left out: creep, and bending across the width. The handbook's
 * E comes from tests that already hold about a tenth of shear deflection. So either leave the shear term out with the
 * tabulated E, or use both terms with 1.1 times the tabulated E; both terms with the tabulated E count shear twice.
 */
public enum BeamCoefficients {
    /** Uniform load, both ends simply supported, at mid-span. */
    UNIFORM_SIMPLE(5.0 / 384, 1.0 / 8),
    /** Uniform load, both ends clamped, at mid-span. */
    UNIFORM_CLAMPED(1.0 / 384, 1.0 / 8),
    /** Load at mid-span, both ends simply supported, at mid-span. */
    CENTRE_SIMPLE(1.0 / 48, 1.0 / 4),
    /** Load at mid-span, both ends clamped, at mid-span. */
    CENTRE_CLAMPED(1.0 / 192, 1.0 / 4),
    /** Half the load at each outer quarter point, both ends simply supported, at mid-span. */
    QUARTERS_SIMPLE_MIDDLE(11.0 / 768, 1.0 / 8),
    /** Half the load at each outer quarter point, both ends simply supported, at a load. */
    QUARTERS_SIMPLE_LOAD(1.0 / 96, 1.0 / 8),
    /** Uniform load on a cantilever, at the free end. */
    UNIFORM_CANTILEVER(1.0 / 8, 1.0 / 2),
    /** Load at the free end of a cantilever, at the free end. */
    END_CANTILEVER(1.0 / 3, 1);

    public static final Citation SOURCE = Citation.of("gtr190", "equation 9-2 and Table 9-1", Basis.READ);

    private final double bending;
    private final double shear;

    BeamCoefficients(double bending, double shear) {
        this.bending = bending;
        this.shear = shear;
    }

    /**
     * Coefficient of the bending term.
     *
     * @return k_b [-]
     */
    public double bending() {
        return bending;
    }

    /**
     * Coefficient of the shear term.
     *
     * @return k_s [-]
     */
    public double shear() {
        return shear;
    }

    /**
     * Deflection from bending alone, to be used with an E in which shear is already counted.
     *
     * @param load W, all of the load on the beam [N]
     * @param span L, distance between supports, or length of the cantilever [m]
     * @param elasticity E, modulus of elasticity along the beam [Pa]
     * @param secondMoment I, second moment of area of the section [m⁴]
     * @return δ, in the direction of the load [m]
     */
    public double deflection(double load, double span, double elasticity, double secondMoment) {
        double w = Require.between("load", load, 0, 1e6, "N");
        double l = Require.between("span", span, 0.01, 100, "m");
        double e = Require.between("modulus of elasticity", elasticity, 1e7, 1e12, "Pa");
        double i = Require.between("second moment of area", secondMoment, 1e-14, 1, "m^4");
        return bending * w * l * l * l / (e * i);
    }

    /**
     * Deflection from bending and shear.
     *
     * @param load W, all of the load on the beam [N]
     * @param span L, distance between supports, or length of the cantilever [m]
     * @param elasticity E, modulus of elasticity along the beam, free of shear [Pa]
     * @param secondMoment I, second moment of area of the section [m⁴]
     * @param shearModulus G, shear modulus of the plane in which the beam bends [Pa]
     * @param shearArea A′, shear area of the section [m²]
     * @return δ, in the direction of the load [m]
     */
    public double deflection(
            double load, double span, double elasticity, double secondMoment, double shearModulus, double shearArea) {
        double g = Require.between("shear modulus", shearModulus, 1e5, 1e12, "Pa");
        double a = Require.between("shear area", shearArea, 1e-8, 10, "m^2");
        return deflection(load, span, elasticity, secondMoment) + shear * load * span / (g * a);
    }
}
