package fairgrain.shelf;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.Optional;

/**
 * Four pins under a loose shelf, alike.
 *
 * @param inHole how deep each goes into the side
 * @param standingOut how far each stands out of the side
 * @param in from the front edge of the shelf to the front pins, and from its back edge to the rear ones
 * @param fromEdge from the middle of a hole to the nearest long edge of the side
 * @param fromEnd from the middle of the lowest hole to the end of the side below it
 * @param metal what they are made of; empty if not known, or if it is no metal
 */
public record ShelfPinSet(
        Length diameter,
        Length inHole,
        Length standingOut,
        Length in,
        Length fromEdge,
        Length fromEnd,
        Optional<Metal> metal) {
    public static final Limits DIAMETER = new Limits("diameter of a pin", 0.002, 0.02, "m");
    public static final Limits IN_HOLE = new Limits("depth of a pin in its hole", 0.003, 0.06, "m");
    public static final Limits OUT = new Limits("how far a pin stands out", 0.002, 0.06, "m");
    public static final Limits IN = new Limits("place of the pins", 0.005, 0.4, "m");
    public static final Limits FROM_EDGE = new Limits("hole from the edge of the side", 0.003, 1, "m");
    public static final Limits FROM_END = new Limits("hole from the end of the side", 0.003, 3, "m");

    /** The shelf leans on the outer part of a pin as it sags: the arm is so much of what stands out. */
    static final double ARM = 2 / 3.0; // judgement

    public ShelfPinSet {
        DIAMETER.check(diameter);
        IN_HOLE.check(inHole);
        OUT.check(standingOut);
        IN.check(in);
        FROM_EDGE.check(fromEdge);
        FROM_END.check(fromEnd);
    }

    double arm() {
        return ARM * standingOut.metres();
    }

    ShelfPinSet diameter(Length other) {
        return new ShelfPinSet(other, inHole, standingOut, in, fromEdge, fromEnd, metal);
    }

    ShelfPinSet inHole(Length other) {
        return new ShelfPinSet(diameter, other, standingOut, in, fromEdge, fromEnd, metal);
    }

    ShelfPinSet in(Length other) {
        return new ShelfPinSet(diameter, inHole, standingOut, other, fromEdge, fromEnd, metal);
    }
}
