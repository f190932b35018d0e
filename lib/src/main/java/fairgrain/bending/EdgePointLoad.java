package fairgrain.bending;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * The stress of a glass shelf under a load on its front edge at mid-length, as a multiple of what a plain beam of the same width would have.
 *
 * <p>σ = k (P L/4) / (B t²/6), k = max( 0.9 + 2.5 B/L, 0.65 + (B/L)(ln(L/s) − 0.15) ) for a square patch of s = 20 mm
 *
 * <p><b>Source</b> {@code own}, edge load on a glass shelf, upper fits to plate series.
 *
 * <p><b>Holds for</b> a material that is the same in all directions, two free edges, B/L from 0.15 to 1. Finite elements gave
 * 1.88 at B/L 0.45. The first fit alone is up to 20 % low for B/L above 0.5 on long shelves; the second was at or above the
 * series for all of L/s from 4 to 120. For wood use {@link SeriesShelf}.
 */
public final class EdgePointLoad {
    public static final Citation SOURCE =
            Citation.of("own", "edge load on a glass shelf, upper fits to plate series", Basis.DERIVED);

    private static final double USUAL_PATCH = 0.02;

    private EdgePointLoad() {}

    /**
     * Factor for a patch of 20 mm by 20 mm.
     *
     * @param depth B, from the front edge to the back edge [m]
     * @param span L [m]
     * @return k, on the stress of a plain beam [-]
     */
    public static double factor(double depth, double span) {
        double ratio = ratio(depth, span);
        return Math.max(0.9 + 2.5 * ratio, factor(depth, span, USUAL_PATCH));
    }

    /**
     * Factor for a patch of another size, by the second fit alone.
     *
     * @param depth B, from the front edge to the back edge [m]
     * @param span L [m]
     * @param patch s, side of the square patch, level with the edge [m]
     * @return k, on the stress of a plain beam [-]
     */
    public static double factor(double depth, double span, double patch) {
        double ratio = ratio(depth, span);
        double s = Require.between("side of the patch", patch, 0.005, 0.3, "m");
        Require.between("span by side of the patch", span / s, 4, 120, "(ratio)");
        return Math.max(1, 0.65 + ratio * (Math.log(span / s) - 0.15));
    }

    /**
     * Stress under a load on a patch of 20 mm by 20 mm.
     *
     * @param load P [N]
     * @param span L [m]
     * @param depth B [m]
     * @param thickness t [m]
     * @return σ, tension in the lower face at the edge [Pa]
     */
    public static double stress(double load, double span, double depth, double thickness) {
        double p = Require.between("load", load, 0, 1e5, "N");
        return factor(depth, span)
                * BendingStress.bending(p * span / 4, RectangularSection.sectionModulus(depth, thickness));
    }

    private static double ratio(double depth, double span) {
        double b = Require.between("depth of the shelf", depth, 0.02, 3, "m");
        double l = Require.between("span", span, 0.05, 10, "m");
        return Require.between("depth by span of the shelf", b / l, 0.15, 1, "(ratio)");
    }
}
