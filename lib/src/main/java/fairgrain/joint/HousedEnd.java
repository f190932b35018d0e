package fairgrain.joint;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * Load of a board whose end stands in a housing across the side of a case, without glue.
 *
 * <p>pressing V = c b d, the lower wall of the housing torn off V = τ a b
 *
 * <p><b>Source</b> {@code own}, bearing on the wall of a housing and shear below it.
 *
 * <p><b>Holds for</b> a board of solid wood in a side whose grain stands upright: c is the stress at the proportional limit across
 * the grain of the board, τ the shear strength of the side along its grain. Glue in a housing is on end grain of the board and
 * counts nothing.
 */
public final class HousedEnd {
    public static final Citation SOURCE =
            Citation.of("own", "bearing on the wall of a housing and shear below it", Basis.DERIVED);

    private HousedEnd() {}

    /**
     * Load that dents the board.
     *
     * @param across c, proportional limit across the grain of the board [Pa]
     * @param depth d, of the housing [m]
     * @param length b, front to back [m]
     * @return V [N]
     */
    public static double presses(double across, double depth, double length) {
        return Sizes.stress("stress across the grain", across)
                * Sizes.length("depth of the housing", depth)
                * Sizes.length("length of the housing", length);
    }

    /**
     * Load that shears the side off below the housing.
     *
     * @param shear τ, of the side along its grain [Pa]
     * @param below a, from the lower wall to the end of the side [m]
     * @param length b, front to back [m]
     * @return V [N]
     */
    public static double tears(double shear, double below, double length) {
        return Sizes.stress("shear strength of the side", shear)
                * Sizes.length("wood below the housing", below)
                * Sizes.length("length of the housing", length);
    }
}
