package fairgrain.bending;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * How much of a board's width works as a flange of a strip on its edge. The board beyond lags behind, because it gives in shear in its
 * own plane.
 *
 * <p>b_k = [ (4/W)^2.7 + (k s)^2.7 ]^(−1/2.7), s = √(2 √(E_x/E_y) + E_x/G_xy − 2 ν_xy), k = n π / L
 *
 * <p><b>Source</b> {@code own}, effective flange, fitted to plane-stress solutions.
 *
 * <p><b>Holds for</b> one half wave π/k of a sine along the span; within 1.3 % of the plane-stress solution for wood and MDF.
 * For equal strips on both edges 2/W stands in place of 4/W. Sideways movement of the board is free.
 */
public final class EffectiveFlange {
    public static final Citation SOURCE =
            Citation.of("own", "effective flange, fitted to plane-stress solutions", Basis.DERIVED);

    private EffectiveFlange() {}

    /**
     * Width that works with the strip at full stress.
     *
     * @param boardWidth W, width of the board beside the strip or between two strips [m]
     * @param bothEdges whether equal strips are on both edges [-]
     * @param waveNumber k, n π by the span [1/m]
     * @param elasticityAlong E_x, along the strip [Pa]
     * @param elasticityAcross E_y, across it [Pa]
     * @param poisson ν_xy [-]
     * @param shearInPlane G_xy, in the plane of the board [Pa]
     * @return b_k [m]
     */
    public static double width(
            double boardWidth,
            boolean bothEdges,
            double waveNumber,
            double elasticityAlong,
            double elasticityAcross,
            double poisson,
            double shearInPlane) {
        double w = Require.between("width of the board beside the strip", boardWidth, 0.01, 3, "m");
        double k = Require.between("wave number", waveNumber, 0.1, 1e4, "1/m");
        double ex = Require.between("modulus of elasticity along the span", elasticityAlong, 1e7, 1e12, "Pa");
        double ey = Require.between("modulus of elasticity across the span", elasticityAcross, 1e6, 1e12, "Pa");
        double nu = Require.between("Poisson ratio", poisson, 0, 0.9, "(ratio)");
        double g = Require.between("shear modulus in the plane", shearInPlane, 1e6, 1e12, "Pa");
        double s = Math.sqrt(2 * Math.sqrt(ex / ey) + ex / g - 2 * nu);
        double sideways = bothEdges ? 2 / w : 4 / w;
        return Math.pow(Math.pow(sideways, 2.7) + Math.pow(k * s, 2.7), -1 / 2.7);
    }
}
