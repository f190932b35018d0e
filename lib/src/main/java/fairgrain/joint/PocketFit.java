package fairgrain.joint;

import fairgrain.fastener.ScrewSize;
import fairgrain.quantity.Length;
import java.util.Optional;

/**
 * How a pocket screw lies in rail and stile, and what of its thread bites.
 *
 * @param length from under its head
 * @param plug from the floor of the pocket to the end of the rail, along the screw
 * @param thickness of rail and stile
 * @param stileWidth of the stile
 * @param groove depth of a groove that runs through the edge of the stile where the screw goes in; empty if it stops before
 */
public record PocketFit(
        ScrewSize screw, Length length, Length plug, Length thickness, Length stileWidth, Optional<Length> groove) {
    /** Wood that stays before the point. */
    public static final Length LEAVE = Length.mm(2); // judgement

    public PocketFit {
        EndJoint.LENGTH.check(length);
        Corner.PLUG.check(plug);
        if (plug.compareTo(length) >= 0) {
            throw new IllegalArgumentException(
                    "the screws do not leave the rail: they must be longer than the wood" + " under their heads");
        }
        String through = PocketHole.left(thickness.metres(), length.metres(), plug.metres(), screw.diameter())
                        < LEAVE.metres()
                ? "face"
                : PocketHole.depth(length.metres(), plug.metres()) + LEAVE.metres() > stileWidth.metres() ? "edge" : "";
        if (!through.isEmpty()) {
            throw new IllegalArgumentException(
                    "the points come through the " + through + " of the stile, or all but: use"
                            + " screws no longer than " + mm(longest(screw, plug, thickness, stileWidth)) + " mm");
        }
    }

    /** Longest screw of which 2 mm of wood keep the point in, face and edge. */
    private static Length longest(ScrewSize screw, Length plug, Length thickness, Length stileWidth) {
        double face = PocketHole.longest(thickness.metres(), plug.metres(), screw.diameter(), LEAVE.metres());
        double edge = plug.metres() + (stileWidth.metres() - LEAVE.metres()) / Math.cos(PocketScrewCorner.SLANT);
        return new Length(Math.min(face, edge));
    }

    private static double mm(Length length) {
        return Math.floor(length.metres() * 1e4 + 1e-6) / 10;
    }

    /** Thread in solid wood of the stile: none of it in a groove. */
    public Length thread() {
        double inStile = Math.min(length.minus(plug).metres(), screw.threadShare() * length.metres());
        return beyond(new Length(inStile), groove);
    }

    /** What is left of a thread that first crosses a groove. */
    public static Length beyond(Length thread, Optional<Length> groove) {
        double left = thread.metres() - groove.map(Length::metres).orElse(0.0) / Math.cos(PocketScrewCorner.SLANT);
        if (!Corner.THREAD.allow(left)) {
            throw new IllegalArgumentException(
                    "the groove of the panel runs through where the screws go in, and hardly any of their thread is"
                            + " left in the stile: stop the groove before ('groove stopped: yes'), or use tenons");
        }
        return new Length(left);
    }
}
