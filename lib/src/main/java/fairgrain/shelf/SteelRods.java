package fairgrain.shelf;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The rods that carry a floating shelf, alike.
 *
 * @param diameter at their thinnest
 * @param inShelf how deep they go into the shelf
 * @param inWall how deep they go into wood that stands in the wall
 * @param gap what lies between the back of the shelf and that wood
 * @param metal what they are made of; empty if not known
 * @param wallGravity specific gravity, oven-dry, of the wood in the wall; empty if they sit in anything else
 */
public record SteelRods(
        int count,
        Length diameter,
        Length inShelf,
        Length inWall,
        Length gap,
        Optional<Metal> metal,
        OptionalDouble wallGravity) {
    public static final Limits COUNT = new Limits("number of rods", 2, 12, "rods");
    public static final Limits DIAMETER = new Limits("diameter of a rod", 0.004, 0.03, "m");
    public static final Limits IN_SHELF = new Limits("depth of a rod in the shelf", 0.03, 0.5, "m");
    public static final Limits IN_WALL = new Limits("depth of a rod in the wall", 0.02, 0.3, "m");
    public static final Limits GAP = new Limits("gap behind the shelf", 0, 0.06, "m");

    public SteelRods {
        COUNT.check(count);
        DIAMETER.check(diameter);
        IN_SHELF.check(inShelf);
        IN_WALL.check(inWall);
        GAP.check(gap);
    }

    SteelRods diameter(Length other) {
        return new SteelRods(count, other, inShelf, inWall, gap, metal, wallGravity);
    }

    SteelRods count(int other) {
        return new SteelRods(other, diameter, inShelf, inWall, gap, metal, wallGravity);
    }
}
