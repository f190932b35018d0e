package fairgrain.joint;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * Load across a glued dowel between two members.
 *
 * <p>V = 2/3 τ π D²/4, no more than f_h D L/2
 *
 * <p><b>Source</b> {@code own}, shear of a round bar and bearing along half its depth.
 *
 * <p><b>Holds for</b> a dowel that fits its holes. No published figure for furniture was reached; this is the lower of two plain
 * bounds, so the finding says that it is estimated.
 */
public final class DowelSideways {
    public static final Citation SOURCE =
            Citation.of("own", "shear of a round bar and bearing along half its depth", Basis.JUDGEMENT);

    private DowelSideways() {}

    /**
     * Load across one dowel.
     *
     * @param shear τ, of the dowel's wood along its grain [Pa]
     * @param bearing f_h, of the weaker member [Pa]
     * @param diameter D [m]
     * @param depth L, in the shallower member [m]
     * @return V [N]
     */
    public static double load(double shear, double bearing, double diameter, double depth) {
        double d = Sizes.length("diameter of the dowel", diameter);
        double cut = 2.0 / 3 * Sizes.stress("shear strength of the dowel", shear) * Math.PI * d * d / 4;
        double press = Sizes.stress("bearing strength", bearing) * d * Sizes.length("depth of the dowel", depth) / 2;
        return Math.min(cut, press);
    }
}
