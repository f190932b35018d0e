package fairgrain.joint;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * Bending across the grain of a narrow neck of a crest or a moulding.
 *
 * <p>σ₉₀ = 6 P a/(w t²)
 *
 * <p><b>Source</b> {@code own}, a short-grain neck as a cantilever.
 *
 * <p><b>Holds for</b> a push across the face at a height a above a neck w wide along the grain and t thick. The corner where it
 * springs from is taken as rounded; a sharp one is weaker.
 */
public final class ShortGrainNeck {
    public static final Citation SOURCE = Citation.of("own", "a short-grain neck as a cantilever", Basis.DERIVED);

    private ShortGrainNeck() {}

    /**
     * Stress across the grain.
     *
     * @param push P [N]
     * @param above a, of the push above the neck [m]
     * @param width w, of the neck along the grain [m]
     * @param thickness t [m]
     * @return σ₉₀ [Pa]
     */
    public static double stress(double push, double above, double width, double thickness) {
        double t = Sizes.length("thickness of the neck", thickness);
        return 6
                * Sizes.force("push on the crest", push)
                * Sizes.length("height above the neck", above)
                / (Sizes.length("width of the neck", width) * t * t);
    }
}
