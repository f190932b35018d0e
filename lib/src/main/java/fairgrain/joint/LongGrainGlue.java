package fairgrain.joint;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Load along a glue line between two faces of long grain that run the same way: edge-glued boards, a lipping, a block glued along the
 * grain.
 *
 * <p>V = τ A
 *
 * <p><b>Source</b> {@code gtr190}, chapter 10, edge grain joints almost as strong as the wood.
 *
 * <p><b>Holds for</b> clean flat faces pressed together, the load along the grain, the same on all of the area; τ of the weaker wood.
 * Glue that is stronger than wood adds nothing. Left out: end grain, which counts nothing, and faces whose grain crosses: there the
 * wood rolls off at 0.18 to 0.28 of τ, and as it moves it tears the glue.
 */
public final class LongGrainGlue {
    public static final Citation SOURCE =
            Citation.of("gtr190", "chapter 10, edge grain joints almost as strong as the wood", Basis.READ);

    private LongGrainGlue() {}

    /**
     * Load that shears it off.
     *
     * @param shear τ, strength along the grain of the weaker wood [Pa]
     * @param area A, that is glued [m²]
     * @return V [N]
     */
    public static double shearsOff(double shear, double area) {
        return Sizes.stress("shear strength", shear) * Require.between("glued area", area, 1e-6, 1, "m^2");
    }
}
