package fairgrain.joint;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Load on a block or cleat that is screwed to the face of a side and carries the end of a board.
 *
 * <p>pull on all screws T = 2 V t/h; V (1/z + 2 t/(h w)) = n
 *
 * <p><b>Source</b> {@code own}, a block that turns about its lower edge.
 *
 * <p><b>Holds for</b> screws half-way up the block, in a row. A board that sags rests on the outer edge of the block, t from the side;
 * the block then turns about its lower edge, and weight and pull add up in a straight line. Glue is not counted: the grain of a
 * cleat crosses that of the side.
 */
public final class LoadOnBlock {
    public static final Citation SOURCE = Citation.of("own", "a block that turns about its lower edge", Basis.DERIVED);

    private LoadOnBlock() {}

    /**
     * Pull on all screws together.
     *
     * @param load V, on the block [N]
     * @param thickness t, of the block [m]
     * @param height h, of the block [m]
     * @return T [N]
     */
    public static double pull(double load, double thickness, double height) {
        return 2
                * Sizes.force("load on the block", load)
                * Sizes.length("thickness of the block", thickness)
                / Sizes.length("height of the block", height);
    }

    /**
     * The most that it carries.
     *
     * @param number n, of screws [-]
     * @param sideways z, of one screw [N]
     * @param pulled w, of one screw [N]
     * @param thickness t, of the block [m]
     * @param height h, of the block [m]
     * @return V [N]
     */
    public static double most(int number, double sideways, double pulled, double thickness, double height) {
        double z = Require.between("sideways strength of a screw", sideways, 0.1, 1e5, "N");
        double w = Require.between("pull of a screw", pulled, 0.1, 1e5, "N");
        return number / (1 / z + pull(1, thickness, height) / w);
    }
}
