package fairgrain.bending;

import fairgrain.quantity.Require;

/**
 * A rectangle of one material in a section made of several.
 *
 * @param elasticity E, along the beam [Pa]
 * @param width b [m]
 * @param bottom height of its lower face above any level [m]
 * @param top height of its upper face above the same level [m]
 */
public record SectionPart(double elasticity, double width, double bottom, double top) {
    public SectionPart {
        Require.between("modulus of elasticity", elasticity, 1e6, 1e12, "Pa");
        Require.between("width of the part", width, 1e-4, 10, "m");
        Require.between("lower face of the part", bottom, -5, 5, "m");
        Require.between("upper face of the part", top, -5, 5, "m");
        Require.positive("height of the part", top - bottom, "m");
    }

    double height() {
        return top - bottom;
    }

    double middle() {
        return (bottom + top) / 2;
    }

    double stretchStiffness() {
        return elasticity * width * height();
    }
}
