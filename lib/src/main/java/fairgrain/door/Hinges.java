package fairgrain.door;

import fairgrain.fastener.ScrewSize;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Require;

/**
 * The hinges of one door, alike.
 *
 * @param number of hinges
 * @param spacing between the outermost two, middle to middle
 * @param screws in each leaf
 * @param length of a screw under its head
 * @param leaf thickness of a leaf
 * @param brass whether the screws are brass; else steel
 */
public record Hinges(
        int number, Length spacing, int screws, ScrewSize screw, Length length, Length leaf, boolean brass) {
    public static final Limits SPACING = new Limits("distance between the hinges", 0.05, 2.5, "m");
    public static final Limits LENGTH = new Limits("length of a hinge screw", 0.006, 0.06, "m");
    public static final Limits LEAF = new Limits("thickness of a leaf", 0.0005, 0.005, "m");

    public Hinges {
        Require.between("number of hinges", number, 2, 10, "");
        Require.between("screws in a leaf", screws, 1, 12, "");
        SPACING.check(spacing);
        LENGTH.check(length);
        LEAF.check(leaf);
    }

    /** How deep a screw goes into the wood. */
    Length deep() {
        return length.minus(leaf);
    }

    Hinges spacing(Length other) {
        return new Hinges(number, other, screws, screw, length, leaf, brass);
    }

    Hinges length(Length other) {
        return new Hinges(number, spacing, screws, screw, other, leaf, brass);
    }

    Hinges screws(int other) {
        return new Hinges(number, spacing, other, screw, length, leaf, brass);
    }
}
