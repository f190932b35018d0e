package fairgrain.hanging;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.List;
import java.util.Optional;

/**
 * The box that hangs, as far as the wall feels it.
 *
 * @param width along the wall
 * @param depth from the wall to its front edge, without doors; empty if nobody leans on it and nothing is tested
 * @param side thickness of its sides, between which the rail runs
 * @param leaves its doors
 */
public record Cabinet(Length width, Optional<Length> depth, Length side, List<Leaf> leaves) {
    public static final Limits WIDTH = new Limits("width of the cabinet", 0.1, 5, "m");
    public static final Limits DEPTH = new Limits("depth of the cabinet", 0.03, 1.5, "m");
    public static final Limits SIDE = new Limits("thickness of the sides", 0, 0.1, "m");

    public Cabinet {
        WIDTH.check(width);
        depth.ifPresent(DEPTH::check);
        SIDE.check(side);
        leaves = List.copyOf(leaves);
    }

    /** Of a width only, its rail as wide as itself, no doors. */
    public static Cabinet wide(Length width) {
        return new Cabinet(width, Optional.empty(), Length.ZERO, List.of());
    }

    /** Half its width: from its middle to its end [m]. */
    double half() {
        return width.metres() / 2;
    }

    /** The depth, which was asked for when the case was listed [m]. */
    double reach(LoadCase which) {
        return depth.orElseThrow(() -> new IllegalArgumentException(
                        "the depth of the cabinet must be known for the case " + which.word()))
                .metres();
    }
}
