package fairgrain.hanging;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * What one person should lift, now and then, to a height in front of them.
 *
 * <p>RWL = 23 kg · (25/H) · (1 − 0.003 |V − 75|) · (0.82 + 4.5/D), H, V, D in cm
 *
 * <p><b>Source</b> {@code niosh-lifting}, revised lifting equation.
 *
 * <p><b>Holds for</b> a good grip, no twisting, a lift now and then. H is from the ankles to the hands (25 to 63), V the height of
 * the hands at the end (0 to 175), D how far they rise (25 to 175). The equation is for one person; two who lift together are not
 * in it and are taken as two shares.
 */
public final class LiftingLimit {
    public static final Citation SOURCE = Citation.of("niosh-lifting", "revised lifting equation", Basis.MEMORY);

    private static final double LOAD_CONSTANT_KG = 23;
    private static final double NEAREST_CM = 25;
    private static final double FARTHEST_CM = 63;
    private static final double KNUCKLES_CM = 75;
    private static final double HIGHEST_CM = 175;

    private LiftingLimit() {}

    /**
     * Recommended limit.
     *
     * @param reach H, from the ankles to the hands [m]
     * @param height V, of the hands above the floor [m]
     * @param rise D, of the hands [m]
     * @return mass for one person [kg]
     */
    public static double mass(double reach, double height, double rise) {
        double h = Math.max(NEAREST_CM, 100 * Require.between("reach", reach, 0, FARTHEST_CM / 100, "m"));
        double v = 100 * Require.between("height of the hands", height, 0, HIGHEST_CM / 100, "m");
        double d = Math.max(NEAREST_CM, 100 * Require.between("rise of the hands", rise, 0, HIGHEST_CM / 100, "m"));
        return LOAD_CONSTANT_KG * (NEAREST_CM / h) * (1 - 0.003 * Math.abs(v - KNUCKLES_CM)) * (0.82 + 4.5 / d);
    }
}
