package fairgrain.bending;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * A strip glued along the front or back edge of a shelf, as long as the span.
 *
 * <p>E I_s = E_s b d³/12 + e² / (1/(E_s b d) + 1/(E t b_k)) − E b t³/12, G J_s = G_s J − G b t³/3
 *
 * <p><b>Source</b> {@code own}, edge strip with an effective flange.
 *
 * <p>What is taken off is already in the board, which counts the full depth. b_k is from {@link EffectiveFlange}.
 *
 * @param edge the edge of the shelf on which it sits [-]
 * @param width b, front to back [m]
 * @param height d, from top to bottom [m]
 * @param offset e, from the middle of the board's thickness to the middle of the strip's height; its sign does not matter [m]
 * @param elasticity E_s, along the strip [Pa]
 * @param shearModulus G_s, for its torsion [Pa]
 */
public record EdgeStrip(Edge edge, double width, double height, double offset, double elasticity, double shearModulus) {
    public static final Citation SOURCE = Citation.of("own", "edge strip with an effective flange", Basis.DERIVED);

    /** Which edge of a shelf. */
    public enum Edge {
        FRONT,
        BACK
    }

    public EdgeStrip {
        Require.between("width of the strip", width, 0.002, 0.2, "m");
        Require.between("height of the strip", height, 0.002, 0.5, "m");
        Require.between("offset of the strip", offset, -0.5, 0.5, "m");
        Require.between("modulus of elasticity of the strip", elasticity, 1e7, 1e12, "Pa");
        Require.between("shear modulus of the strip", shearModulus, 1e6, 1e12, "Pa");
    }

    /**
     * A strip level with the top of the board, or with its underside.
     *
     * @param edge the edge of the shelf on which it sits [-]
     * @param width b, front to back [m]
     * @param height d, from top to bottom [m]
     * @param boardThickness t [m]
     * @param elasticity E_s, along the strip [Pa]
     * @param shearModulus G_s, for its torsion [Pa]
     * @return the strip [-]
     */
    public static EdgeStrip flush(
            Edge edge, double width, double height, double boardThickness, double elasticity, double shearModulus) {
        return new EdgeStrip(edge, width, height, (height - boardThickness) / 2, elasticity, shearModulus);
    }

    /** Distance of its middle from the front edge [m]. */
    double place(ShelfBoard board) {
        return edge == Edge.FRONT ? width / 2 : board.depth() - width / 2;
    }

    /** Width of flange that works with it, in one half wave of k [m]. */
    double flange(ShelfBoard board, boolean bothEdges, double k) {
        return EffectiveFlange.width(
                board.depth() - (bothEdges ? 2 : 1) * width,
                bothEdges,
                k,
                board.elasticityAlong(),
                board.elasticityAcross(),
                board.poisson(),
                board.shearInPlane());
    }

    /** Force between strip and flange by the stretch that bending would put between their middles [N]. */
    double coupling(ShelfBoard board, double flange) {
        return 1 / (1 / (elasticity * width * height) + 1 / (board.elasticityAlong() * board.thickness() * flange));
    }

    /** What the strip adds to the bending stiffness [N·m²]. */
    double bendingStiffness(ShelfBoard board, double flange) {
        return elasticity * RectangularSection.secondMoment(width, height)
                + offset * offset * coupling(board, flange)
                - board.elasticityAlong() * RectangularSection.secondMoment(width, board.thickness());
    }

    /** What the strip adds to the torsion stiffness [N·m²]. */
    double torsionStiffness(ShelfBoard board) {
        double t = board.thickness();
        return shearModulus * RectangularSection.torsionConstant(width, height)
                - board.shearInPlane() * width * t * t * t / 3;
    }
}
