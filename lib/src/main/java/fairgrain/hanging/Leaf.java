package fairgrain.hanging;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Require;

/**
 * Doors that are alike, side by side across the front.
 *
 * @param what as the maker calls them
 * @param count how many
 * @param width of one, hinge edge to free edge
 * @param thickness of one
 * @param expected mass of one [kg]
 * @param heavy what one may weigh at most [kg]
 */
public record Leaf(String what, int count, Length width, Length thickness, double expected, double heavy) {
    public static final Limits WIDTH = new Limits("width of a door", 0.05, 2, "m");

    public Leaf {
        Require.between("number of doors", count, 1, 20, "doors");
        WIDTH.check(width);
        Require.between("thickness of a door", thickness.metres(), 0.002, 0.15, "m");
        Require.between("mass of " + what, expected, 0, 500, "kg");
        Require.between("heavy mass of " + what, heavy, expected, 500, "kg");
    }
}
