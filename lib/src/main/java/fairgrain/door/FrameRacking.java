package fairgrain.door;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * A door frame on its hinges that its own weight, its panel and a load at its free side push out of square.
 *
 * <p>M = W_s l + (W_p + 2 W_r) l/2 + P (a − b_s/2); each of four corners takes M/4, each of six M/6; a panel glued in takes the
 * shear q = M/(l H) along its edges
 *
 * <p><b>Source</b> {@code own}, virtual work of a four-bar frame with equal corners.
 *
 * <p><b>Holds for</b> corners of equal stiffness, hinges on one stile. A floating panel and a pane of glass give no help.
 */
public final class FrameRacking {
    public static final Citation SOURCE =
            Citation.of("own", "virtual work of a four-bar frame with equal corners", Basis.DERIVED);

    /** Corners of a frame without a middle rail. */
    public static final int CORNERS = 4;

    private FrameRacking() {}

    /**
     * Moment that pushes the frame out of square.
     *
     * @param stile W_s, weight of the free stile [N]
     * @param filling W_p, weight of the panel or glass [N]
     * @param rail W_r, weight of one rail [N]
     * @param between l, from middle to middle of the stiles [m]
     * @param load P, downward on the frame [N]
     * @param arm a, of that load from the hinge line [m]
     * @param stileWidth b_s [m]
     * @return M [N·m]
     */
    public static double moment(
            double stile, double filling, double rail, double between, double load, double arm, double stileWidth) {
        double l = Require.between("distance between the stiles", between, 0.02, 3, "m");
        return weight("weight of the stile", stile) * l
                + (weight("weight of the filling", filling) + 2 * weight("weight of a rail", rail)) * l / 2
                + weight("load on the frame", load)
                        * Math.max(
                                0,
                                Require.between("arm of the load", arm, 0, 3, "m")
                                        - Require.between("width of the stile", stileWidth, 0, 0.5, "m") / 2);
    }

    /**
     * What one corner takes of it.
     *
     * @param moment M [N·m]
     * @param corners four, or six with a middle rail [-]
     * @return M_j [N·m]
     */
    public static double perCorner(double moment, int corners) {
        return Require.between("racking moment", moment, 0, 1e5, "N·m")
                / Require.between("number of corners", corners, CORNERS, 12, "");
    }

    /**
     * Shear along the edges of a panel that is glued in all round.
     *
     * @param moment M [N·m]
     * @param between l, from middle to middle of the stiles [m]
     * @param height H, of the panel [m]
     * @return q [N/m]
     */
    public static double panelShear(double moment, double between, double height) {
        return Require.between("racking moment", moment, 0, 1e5, "N·m")
                / (Require.between("distance between the stiles", between, 0.02, 3, "m")
                        * Require.between("height of the panel", height, 0.02, 3, "m"));
    }

    private static double weight(String name, double value) {
        return Require.between(name, value, 0, 1e4, "N");
    }
}
