package fairgrain.joint;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * Load with which a screw pushes the wood between itself and the end of a board out along the grain.
 *
 * <p>V = τ t a
 *
 * <p><b>Source</b> {@code nds2018}, appendix E, tear-out of a row.
 *
 * <p><b>Holds for</b> a screw that is pressed along the grain toward an end at a distance a in a board t thick. Two planes shear; the
 * stress in them is taken to fall to nothing, so half of it counts. It says nothing of splitting: for that the code's commentary
 * asks ten diameters, and nothing published stands for less.
 */
public final class ScrewTearOut {
    public static final Citation SOURCE = Citation.of("nds2018", "appendix E, tear-out of a row", Basis.MEMORY);

    private ScrewTearOut() {}

    /**
     * Load of one screw.
     *
     * @param shear τ, strength along the grain [Pa]
     * @param thickness t, of the board [m]
     * @param toEnd a, from the screw to the end that it is pressed toward [m]
     * @return V [N]
     */
    public static double load(double shear, double thickness, double toEnd) {
        return Sizes.stress("shear strength", shear)
                * Sizes.length("thickness of the board", thickness)
                * Sizes.length("distance of the screw to the end", toEnd);
    }
}
