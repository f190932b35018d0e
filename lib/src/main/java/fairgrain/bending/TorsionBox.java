package fairgrain.bending;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * A closed box of two equal skins and ribs along the span, one rib on each edge.
 *
 * <p>E I = E_s (B t d²/2 + B t³/6) + n E_r b h³/12, h = H − 2 t, d = H − t
 *
 * <p>w = 5 q L⁴/(384 E I) + q L²/(8 G_r n b d)
 *
 * <p>G J = 4 A² / Σ (s / (G t)) around the walls, A = d (B − b)
 *
 * <p>skin between ribs: w_s = p s⁴/(384 D)
 *
 * <p><b>Source</b> {@code roark}, closed thin-walled sections.
 *
 * <p><b>Holds for</b> a box glued all along and closed at the ends; finite elements gave 1.3 % more sag. Left out: twist
 * from loads off the middle, which the closed box holds, and slip in nailed joints.
 *
 * @param width B, front to back [m]
 * @param height H, from top to bottom [m]
 * @param skin t, thickness of each skin [m]
 * @param ribs n, how many ribs, those on the edges counted [-]
 * @param ribWidth b [m]
 * @param skinElasticity E_s, along the span [Pa]
 * @param ribElasticity E_r, along the span [Pa]
 * @param skinShear G_s, in the plane of the skin [Pa]
 * @param ribShear G_r, in the plane of the rib [Pa]
 */
public record TorsionBox(
        double width,
        double height,
        double skin,
        int ribs,
        double ribWidth,
        double skinElasticity,
        double ribElasticity,
        double skinShear,
        double ribShear) {
    public static final Citation SOURCE = Citation.of("roark", "closed thin-walled sections", Basis.MEMORY);

    public TorsionBox {
        Require.between("width of the box", width, 0.02, 5, "m");
        Require.between("height of the box", height, 0.005, 1, "m");
        Require.between("thickness of a skin", skin, 0.0005, 0.05, "m");
        Require.between("number of ribs", ribs, 2, 100, "(ribs; one on each edge)");
        Require.between("width of a rib", ribWidth, 0.001, 0.2, "m");
        Require.between("modulus of elasticity of the skins", skinElasticity, 1e7, 1e12, "Pa");
        Require.between("modulus of elasticity of the ribs", ribElasticity, 1e7, 1e12, "Pa");
        Require.between("shear modulus of the skins", skinShear, 1e6, 1e12, "Pa");
        Require.between("shear modulus of the ribs", ribShear, 1e6, 1e12, "Pa");
        Require.positive("room between the skins", height - 2 * skin, "m");
        Require.positive("room between the ribs", width - ribs * ribWidth, "m");
    }

    /**
     * Bending stiffness.
     *
     * @return E I [N·m²]
     */
    public double bendingStiffness() {
        double h = height - 2 * skin;
        double d = height - skin;
        return skinElasticity * width * (skin * d * d / 2 + skin * skin * skin / 6)
                + ribs * ribElasticity * ribWidth * h * h * h / 12;
    }

    /**
     * Shear stiffness of the ribs.
     *
     * @return G A′ [N]
     */
    public double shearStiffness() {
        return ribShear * ribs * ribWidth * (height - skin);
    }

    /**
     * Torsion stiffness of the closed outline; inner ribs add almost nothing.
     *
     * @return G J [N·m²]
     */
    public double torsionStiffness() {
        double d = height - skin;
        double across = width - ribWidth;
        double around = 2 * across / (skinShear * skin) + 2 * d / (ribShear * ribWidth);
        return 4 * (d * across) * (d * across) / around;
    }

    /**
     * Sag at mid-span on two simple supports.
     *
     * @param loadPerLength q, own weight included [N/m]
     * @param span L [m]
     * @return w, downwards [m]
     */
    public double deflection(double loadPerLength, double span) {
        double q = Require.between("load per length", loadPerLength, 0, 1e6, "N/m");
        double l = Require.between("span", span, 0.01, 100, "m");
        return 5 * q * l * l * l * l / (384 * bendingStiffness()) + q * l * l / (8 * shearStiffness());
    }

    /**
     * Stress in the outer face of a skin.
     *
     * @param moment M [N·m]
     * @return σ, tension below and compression above where the box sags [Pa]
     */
    public double skinStress(double moment) {
        double m = Require.between("bending moment", moment, -1e6, 1e6, "N m");
        return Math.abs(m) * skinElasticity * height / 2 / bendingStiffness();
    }

    /**
     * How far the upper skin sags between two ribs, clamped on both.
     *
     * @param pressure p [Pa]
     * @param skinAcross modulus of elasticity of the skin across the span [Pa]
     * @return w_s, added to the sag of the box [m]
     */
    public double skinSag(double pressure, double skinAcross) {
        double p = Require.between("pressure", pressure, 0, 1e5, "Pa");
        double e = Require.between("modulus of elasticity across the span", skinAcross, 1e6, 1e12, "Pa");
        double s = (width - ribs * ribWidth) / (ribs - 1);
        return p * s * s * s * s / (384 * e * skin * skin * skin / 12);
    }
}
