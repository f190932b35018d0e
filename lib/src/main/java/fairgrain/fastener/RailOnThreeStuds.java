package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Share of the middle stud under a limber rail on three studs, evenly loaded: an upper bound beside the stiff case.
 *
 * <p>R_end = w (3L/8 + a + 0.75 a²/L), R_middle = w (2L + 2a) − 2 R_end; without overhang 10/16 of the load
 *
 * <p><b>Source</b> {@code own}, three-moment equation for two equal spans.
 *
 * <p><b>Holds for</b> two equal spans L with the same overhang a at both ends, supports that do not give, an even load.
 * Screws slip, and with the slip of usual screws the middle stud gets 40 to 55 %: keep 10/16 as the bound.
 */
public final class RailOnThreeStuds {
    public static final Citation SOURCE =
            Citation.of("own", "three-moment equation for two equal spans", Basis.DERIVED);

    private RailOnThreeStuds() {}

    /**
     * Part of the whole load on each end stud.
     *
     * @param span L, between studs [m]
     * @param overhang a, past each end stud [m]
     * @return part [-]
     */
    public static double endShare(double span, double overhang) {
        double l = Require.between("span between studs", span, 0.05, 5, "m");
        double a = Require.between("overhang", overhang, 0, l, "m, no more than the span");
        return (3 * l / 8 + a + 0.75 * a * a / l) / (2 * l + 2 * a);
    }

    /**
     * Part of the whole load on the middle stud.
     *
     * @param span L, between studs [m]
     * @param overhang a, past each end stud [m]
     * @return part [-]
     */
    public static double middleShare(double span, double overhang) {
        return 1 - 2 * endShare(span, overhang);
    }
}
