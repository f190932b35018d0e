package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * What a case on a wall asks of one row of screws: it hangs by V and turns about its lower edge.
 *
 * <p>M = Σ W e, T = M / (h − c); in an earthquake T = (M + F_p (z_cg − c)) / (h − c), V = √(V² + F_p²)
 *
 * <p><b>Source</b> {@code own}, moments about the lower contact with the wall. The earthquake terms are from memory.
 *
 * <p><b>Holds for</b> a case whose lower edge bears on the wall: an uneven wall, a tile edge or a missing shim takes
 * that away. e is from the wall to the load, h and c are above the lower edge. With one row at the top the bottom is
 * free to swing when pulled.
 */
public final class Overturning {
    public static final Citation SOURCE =
            Citation.of("own", "moments about the lower contact with the wall", Basis.DERIVED);
    public static final Citation EARTHQUAKE_SOURCE =
            Citation.of("own", "earthquake force at the centre of gravity", Basis.MEMORY);

    private Overturning() {}

    /**
     * Moment of several loads about the wall.
     *
     * @param loads W, downward [N]
     * @param arms e, from the wall to each load [m]
     * @return M [N·m]
     */
    public static double moment(double[] loads, double[] arms) {
        if (loads.length != arms.length) {
            throw new IllegalArgumentException("there must be one arm for each load, but there were " + loads.length
                    + " loads and " + arms.length + " arms");
        }
        double sum = 0;
        for (int i = 0; i < loads.length; i++) {
            sum += Ranges.force("load", loads[i]) * Require.between("arm", arms[i], 0, 5, "m");
        }
        return sum;
    }

    /**
     * Pull on the row.
     *
     * @param moment M [N·m]
     * @param rowHeight h, of the screws above the lower edge [m]
     * @param contactHeight c, of the bearing above the lower edge [m]
     * @return T [N]
     */
    public static double pull(double moment, double rowHeight, double contactHeight) {
        double c = Ranges.length("height of the bearing", contactHeight);
        double h = Require.between("height of the row", rowHeight, c + 0.01, 5, "m, above the bearing");
        return Require.between("moment", moment, 0, 1e5, "N·m") / (h - c);
    }

    /**
     * Pull on the row in an earthquake that throws the case outward.
     *
     * @param moment M, of the weights [N·m]
     * @param force F_p, at the centre of gravity [N]
     * @param forceHeight z_cg, of the centre of gravity above the lower edge [m]
     * @param rowHeight h, of the screws above the lower edge [m]
     * @param contactHeight c, of the bearing above the lower edge [m]
     * @return T [N]
     */
    public static double pullInEarthquake(
            double moment, double force, double forceHeight, double rowHeight, double contactHeight) {
        double z = Require.between("height of the centre of gravity", forceHeight, contactHeight, 5, "m");
        double m = Require.between("moment", moment, 0, 1e5, "N·m");
        return pull(m + Ranges.force("earthquake force", force) * (z - contactHeight), rowHeight, contactHeight);
    }

    /**
     * Shear on the row in an earthquake that pushes the case sideways.
     *
     * @param shear V, weight [N]
     * @param force F_p [N]
     * @return resultant [N]
     */
    public static double shearInEarthquake(double shear, double force) {
        return Math.hypot(Ranges.force("weight", shear), Ranges.force("earthquake force", force));
    }
}
