package fairgrain.joint;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * The most that a tenon much shorter than high may carry on average.
 *
 * <p>M = 1.29 M_e with h_eff = min(h, 3 l)
 *
 * <p><b>Source</b> {@code own}, height counted of a stub tenon. It was set to one test of frame corners in a magazine, of which only
 * memory is left.
 *
 * <p><b>Holds for</b> nothing with certainty: an upper bound. The lower one is {@link TenonGlueFaces#mean}, which counts no more
 * height than the tests of longer tenons cover; between the two nobody has measured. Stub tenons in panel grooves are for frames
 * that something else keeps square.
 */
public final class StubTenonFaces {
    public static final Citation SOURCE = Citation.of("own", "height counted of a stub tenon", Basis.MEMORY);

    private static final double COUNTED = 3;

    private StubTenonFaces() {}

    /**
     * Upper bound of the mean.
     *
     * @param shear τ, strength along the grain of the weaker wood [Pa]
     * @param height h, along the width of the rail [m]
     * @param length l, in the groove [m]
     * @return M [N·m]
     */
    public static double atMost(double shear, double height, double length) {
        return TenonGlueFaces.MEAN * TenonGlueFaces.firstYield(shear, Math.min(height, COUNTED * length), length);
    }
}
