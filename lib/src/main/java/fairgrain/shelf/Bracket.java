package fairgrain.shelf;

import fairgrain.quantity.Length;

/**
 * A support under one spot of the shelf, such as a bracket on the back.
 *
 * @param at from the left end support
 * @param fromFront from the front edge to the middle of where it bears
 */
public record Bracket(Length at, Length fromFront) {
    /** Side of the patch on which it bears [m]. */
    static final double BEARS = 0.02;
}
