package fairgrain.drawing;

import fairgrain.quantity.Require;

/**
 * A place on the paper.
 *
 * @param x from the left edge [mm]
 * @param y from the upper edge [mm]
 */
public record Point(double x, double y) {
    public Point {
        Require.finite("x of a point", x, "mm");
        Require.finite("y of a point", y, "mm");
    }

    public Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }
}
