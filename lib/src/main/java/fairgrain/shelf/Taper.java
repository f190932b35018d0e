package fairgrain.shelf;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;

/**
 * A front edge planed thinner from below.
 *
 * @param width from the front edge to where the board is whole
 * @param edge thickness that is left at the front edge
 */
public record Taper(Length width, Length edge) {
    public static final Limits WIDTH = new Limits("width of the taper", 0.003, 0.2, "m");
    public static final Limits EDGE = new Limits("thickness of the front edge", 0.003, 0.1, "m");

    public Taper {
        WIDTH.check(width);
        EDGE.check(edge);
    }

    /** Thickness of a flat strip that bends as much as the wedge: the mean of the cubes. */
    double equal(double thickness) {
        double a = edge.metres();
        return Math.cbrt((thickness + a) * (thickness * thickness + a * a) / 4);
    }
}
