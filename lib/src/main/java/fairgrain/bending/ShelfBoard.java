package fairgrain.bending;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * A shelf board that is stiffer along its span than across its depth.
 *
 * <p>D_x = E_x t³ / (12 (1 − ν_xy ν_yx)), D_y likewise, D_1 = ν_yx D_x, D_xy = f_t G_xy t³ / 12
 *
 * <p>ν_yx = ν_xy E_y / E_x, f_t = 1 − 0.63 (t/B) √(G_xy/G_xz)
 *
 * <p><b>Source</b> {@code timoshenko-plates}, orthotropic plate stiffnesses.
 *
 * <p>f_t takes off what the two edges of a board lack in torsion.
 *
 * @param span L, distance between the supports at the two ends [m]
 * @param depth B, from the front edge to the back edge, edge strips included [m]
 * @param thickness t [m]
 * @param elasticityAlong E_x, along the span, free of shear [Pa]
 * @param elasticityAcross E_y, across the depth [Pa]
 * @param poisson ν_xy, contraction across by stretch along [-]
 * @param shearInPlane G_xy, in the plane of the board [Pa]
 * @param shearThrough G_xz, through the thickness along the span [Pa]
 */
public record ShelfBoard(
        double span,
        double depth,
        double thickness,
        double elasticityAlong,
        double elasticityAcross,
        double poisson,
        double shearInPlane,
        double shearThrough) {
    public static final Citation SOURCE =
            Citation.of("timoshenko-plates", "orthotropic plate stiffnesses", Basis.MEMORY);

    public ShelfBoard {
        Require.between("span", span, 0.05, 10, "m");
        Require.between("depth of the shelf", depth, 0.02, 3, "m");
        Require.between("thickness", thickness, 0.001, 0.2, "m");
        Require.between("modulus of elasticity along the span", elasticityAlong, 1e7, 1e12, "Pa");
        Require.between("modulus of elasticity across the span", elasticityAcross, 1e6, 1e12, "Pa");
        Require.between("Poisson ratio", poisson, 0, 0.9, "(ratio)");
        Require.between("shear modulus in the plane", shearInPlane, 1e6, 1e12, "Pa");
        Require.between("shear modulus through the thickness", shearThrough, 1e5, 1e12, "Pa");
        Require.between("thickness by depth", thickness / depth, 0, 0.5, "(ratio)");
        Require.between(
                "product of the two Poisson ratios",
                poisson * poisson * elasticityAcross / elasticityAlong,
                0,
                0.9,
                "(ratio)");
        Require.between(
                "torsion stiffness left at the edges",
                1 - 0.63 * thickness / depth * Math.sqrt(shearInPlane / shearThrough),
                0.1,
                1,
                "(ratio)");
    }

    /**
     * A board of glass or metal, the same in all directions.
     *
     * @param span L, distance between the supports at the two ends [m]
     * @param depth B, from the front edge to the back edge [m]
     * @param thickness t [m]
     * @param elasticity E, modulus of elasticity [Pa]
     * @param poisson ν, Poisson ratio [-]
     * @return the board [-]
     */
    public static ShelfBoard isotropic(double span, double depth, double thickness, double elasticity, double poisson) {
        double g = elasticity / (2 * (1 + poisson));
        return new ShelfBoard(span, depth, thickness, elasticity, elasticity, poisson, g, g);
    }

    /**
     * Stiffness in bending along the span, for a section that may bend across.
     *
     * @return D_x, per depth [N·m]
     */
    public double stiffnessAlong() {
        return elasticityAlong * cube() / (1 - poisson * poissonAcross());
    }

    /**
     * Stiffness in bending across the depth.
     *
     * @return D_y, per span [N·m]
     */
    public double stiffnessAcross() {
        return elasticityAcross * cube() / (1 - poisson * poissonAcross());
    }

    /**
     * What bending one way does to the other.
     *
     * @return D_1 [N·m]
     */
    public double stiffnessCoupling() {
        return poissonAcross() * stiffnessAlong();
    }

    /**
     * Stiffness in twist.
     *
     * @return D_xy [N·m]
     */
    public double stiffnessTwist() {
        double edges = 1 - 0.63 * thickness / depth * Math.sqrt(shearInPlane / shearThrough);
        return edges * shearInPlane * cube();
    }

    /**
     * Stiffness as a plain beam.
     *
     * @return E I [N·m²]
     */
    public double beamStiffness() {
        return elasticityAlong * depth * cube();
    }

    /**
     * Stiffness in shear as a plain beam.
     *
     * @return G A′ [N]
     */
    public double beamShearStiffness() {
        return shearThrough * RectangularSection.shearArea(depth, thickness);
    }

    private double cube() {
        return thickness * thickness * thickness / 12;
    }

    private double poissonAcross() {
        return poisson * elasticityAcross / elasticityAlong;
    }
}
