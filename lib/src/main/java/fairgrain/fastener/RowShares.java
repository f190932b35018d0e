package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * How several rows of screws, one above the other, share the pull of a case that turns about its lower edge.
 *
 * <p>T_i = M y_i / Σ n_j y_j², a screw, over the rows with y_j &gt; y_top/2
 *
 * <p><b>Source</b> {@code own}, rigid case turning about its lower edge.
 *
 * <p><b>Holds for</b> a stiff case and screws alike. Low rows are not counted on to relieve the upper ones, since they
 * stretch little; they are still given the pull that the turning puts on them. Weight: equal shares if the holes fit;
 * in slack holes the top row may carry all of it.
 */
public final class RowShares {
    public static final Citation SOURCE = Citation.of("own", "rigid case turning about its lower edge", Basis.DERIVED);

    private RowShares() {}

    /**
     * Pull on each screw of each row.
     *
     * @param moment M, about the lower bearing [N·m]
     * @param heights y, of each row above the bearing [m]
     * @param screws n, in each row [-]
     * @return T, of one screw in each row [N]
     */
    public static double[] pulls(double moment, double[] heights, int[] screws) {
        double m = Require.between("moment", moment, 0, 1e5, "N·m");
        if (heights.length == 0 || heights.length != screws.length) {
            throw new IllegalArgumentException("there must be a number of screws for each row, but there were "
                    + heights.length + " rows and " + screws.length + " numbers");
        }
        double top = 0;
        for (double y : heights) {
            top = Math.max(top, Require.between("height of a row above the bearing", y, 0.01, 5, "m"));
        }
        double stiffness = 0;
        for (int i = 0; i < heights.length; i++) {
            double n = Require.between("screws in a row", screws[i], 1, 100, "(count)");
            if (heights[i] > top / 2) {
                stiffness += n * heights[i] * heights[i];
            }
        }
        double[] pulls = new double[heights.length];
        for (int i = 0; i < heights.length; i++) {
            pulls[i] = m * heights[i] / stiffness;
        }
        return pulls;
    }
}
