package fairgrain.bending;

import fairgrain.quantity.Require;

/**
 * A load spread evenly over a rectangle of a shelf or plate; a side of no length makes it a line. x runs along the span from one end,
 * y across it from the front edge.
 *
 * @param x middle of the rectangle along the span [m]
 * @param length side along the span [m]
 * @param y middle of the rectangle across the depth [m]
 * @param width side across the depth [m]
 * @param force all of the load, downwards [N]
 */
public record PlateLoad(double x, double length, double y, double width, double force) {
    public PlateLoad {
        Require.between("middle of the load along the span", x, 0, 10, "m");
        Require.between("length of the load", length, 0, 10, "m");
        Require.between("middle of the load across the depth", y, 0, 3, "m");
        Require.between("width of the load", width, 0, 3, "m");
        Require.between("load", force, -1e6, 1e6, "N");
    }

    /**
     * The same pressure all over.
     *
     * @param span from one end to the other [m]
     * @param depth from the front edge to the back [m]
     * @param pressure p, own weight included [Pa]
     * @return the load [-]
     */
    public static PlateLoad uniform(double span, double depth, double pressure) {
        double p = Require.between("pressure", pressure, 0, 1e5, "Pa");
        return new PlateLoad(span / 2, span, depth / 2, depth, p * span * depth);
    }

    /**
     * A load on one line along the whole span, such as books standing flush with the front.
     *
     * @param span from one end to the other [m]
     * @param y distance of the line from the front edge [m]
     * @param perLength q [N/m]
     * @return the load [-]
     */
    public static PlateLoad line(double span, double y, double perLength) {
        double q = Require.between("load per length", perLength, 0, 1e6, "N/m");
        return new PlateLoad(span / 2, span, y, 0, q * span);
    }

    /**
     * A load on a square patch.
     *
     * @param x middle of the patch along the span [m]
     * @param y middle of the patch across the depth [m]
     * @param side of the square; 0.02 is usual [m]
     * @param force P [N]
     * @return the load [-]
     */
    public static PlateLoad patch(double x, double y, double side, double force) {
        return new PlateLoad(x, side, y, side, force);
    }

    /** Refuses a load that is not on the shelf or plate. */
    void within(double span, double depth) {
        double slack = GeneralBeam.SNAP;
        if (x - length / 2 < -slack
                || x + length / 2 > span + slack
                || y - width / 2 < -slack
                || y + width / 2 > depth + slack) {
            throw new IllegalArgumentException("a load reaching from " + (x - length / 2) + " to " + (x + length / 2)
                    + " m along and from " + (y - width / 2) + " to " + (y + width / 2)
                    + " m across is off a plate of " + span + " m by " + depth + " m");
        }
    }

    /** Bending moment at x of a beam on two pins under this load [N·m]. */
    double beamMoment(double span, double at) {
        double a = x - length / 2;
        double reach = at - a;
        double passed =
                length > 0 ? force / length * (square(reach) - square(reach - length)) / 2 : force * Math.max(0, reach);
        return force * (span - x) / span * at - passed;
    }

    private static double square(double v) {
        return v > 0 ? v * v : 0;
    }
}
