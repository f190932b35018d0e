package fairgrain.movement;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * What it takes to hold a cupped board flat.
 *
 * <p>σ = E t κ / 2 at its faces, by a moment E t³ κ / 12 for each length along the grain; E across the grain, κ the curvature of the free
 * board.
 *
 * <p><b>Source</b> {@code own}, a plate bent flat: the bending of a strip, κ t/2 at the face.
 *
 * <p><b>Holds for</b> a cup that is small beside the width. Left out: what relaxes in time (the stress falls); the stiffening of a wide
 * plate, which raises it by less than a twentieth in wood across the grain.
 */
public final class HoldFlat {
    public static final Citation SOURCE = Citation.of("own", "a plate bent flat", Basis.DERIVED);

    private HoldFlat() {}

    /**
     * Stress at the face.
     *
     * @param elasticity E, across the grain [Pa]
     * @param thickness t [m]
     * @param curvature κ, of the free board [1/m]
     * @return σ [Pa]
     */
    public static double stress(double elasticity, double thickness, double curvature) {
        double e = Require.between("modulus of elasticity across the grain", elasticity, 1e7, 1e10, "Pa");
        double t = Require.between("thickness", thickness, 0.001, 0.2, "m");
        double k = Require.between("curvature", curvature, 0, 20, "1/m");
        return e * t * k / 2;
    }

    /**
     * Moment for each length along the grain.
     *
     * @param elasticity E, across the grain [Pa]
     * @param thickness t [m]
     * @param curvature κ, of the free board [1/m]
     * @return m [N]
     */
    public static double moment(double elasticity, double thickness, double curvature) {
        return stress(elasticity, thickness, curvature) * thickness * thickness / 6;
    }

    /**
     * Pull along its middle line that brings a bowed board down onto its two edges, for each length along the grain.
     *
     * @param elasticity E, across the grain [Pa]
     * @param thickness t [m]
     * @param cup δ, height of the bow in the middle [m]
     * @param width w, between the edges [m]
     * @return F = 4 E t³ δ / w³ [N/m]
     */
    public static double force(double elasticity, double thickness, double cup, double width) {
        double e = Require.between("modulus of elasticity across the grain", elasticity, 1e7, 1e10, "Pa");
        double t = Require.between("thickness", thickness, 0.001, 0.2, "m");
        double d = Require.between("cup", cup, 0, 0.1, "m");
        double w = Require.between("width", width, 0.005, 3, "m");
        return 4 * e * t * t * t * d / (w * w * w);
    }

    /**
     * Curvature of a board whose middle stands off by so much.
     *
     * @param cup δ, height of the bow in the middle [m]
     * @param width w, across the board [m]
     * @return κ = 8 δ / w² [1/m]
     */
    public static double curvature(double cup, double width) {
        double d = Require.between("cup", cup, 0, 0.1, "m");
        double w = Require.between("width", width, 0.005, 3, "m");
        return 8 * d / (w * w);
    }
}
