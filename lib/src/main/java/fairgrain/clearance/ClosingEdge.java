package fairgrain.clearance;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;

/**
 * The edge of a door away from its hinges.
 *
 * @param thickness of the door
 * @param width from the hinge pin to this edge
 * @param setBack how far its back arris is planed back from the front one; 0 for a square edge
 */
public record ClosingEdge(Length thickness, Length width, Length setBack) {
    public static final Limits SET_BACK = new Limits("set-back of the closing edge", 0, 0.02, "m");

    public ClosingEdge {
        SET_BACK.check(setBack);
        SwingArc.clearance(thickness.metres(), width.metres());
    }

    double swing() {
        return SwingArc.clearance(thickness.metres(), width.metres());
    }

    ClosingEdge setBack(Length other) {
        return new ClosingEdge(thickness, width, other);
    }
}
