package fairgrain.part;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;

/** The groove that holds a panel. */
public record Groove(Length depth, Length width) {
    public static final Limits DEPTH = new Limits("groove depth", 0.002, 0.040, "m");
    public static final Limits WIDTH = new Limits("groove width", 0.002, 0.040, "m");

    public Groove {
        DEPTH.check(depth);
        WIDTH.check(width);
    }
}
