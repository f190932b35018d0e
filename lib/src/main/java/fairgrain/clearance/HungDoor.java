package fairgrain.clearance;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import org.jspecify.annotations.Nullable;

/**
 * A door, or a pair of them, and the opening it closes.
 *
 * @param frame its stiles and rails
 * @param width of the opening
 * @param height of the opening
 * @param hung inside the opening or over it
 * @param pair whether two doors meet in the middle
 * @param overlap of an overlay door over each edge of the opening; 0 for an inset one
 * @param reveal the gap wanted all year
 * @param overlapWanted of an overlay door, at the dry end; 0 for an inset one
 * @param leaf how thick one leaf of a hinge is; null if not known
 * @param setBack how far the back of the closing edge is planed back; 0 if square or not yet planed
 */
public record HungDoor(
        DoorFrame frame,
        Length width,
        Length height,
        Hung hung,
        boolean pair,
        Length overlap,
        Reveal reveal,
        Length overlapWanted,
        @Nullable Length leaf,
        Length setBack) {
    public static final Limits WIDTH = new Limits("width of the opening", 0.1, 3, "m");
    public static final Limits HEIGHT = new Limits("height of the opening", 0.1, 3, "m");
    public static final Limits OVERLAP = new Limits("overlap", 0, 0.05, "m");
    public static final Limits LEAF = new Limits("thickness of a hinge leaf", 0.0003, 0.006, "m");

    /** What an overlay door should still cover at the dry end: judgement. */
    public static final Length USUAL_OVERLAP_WANTED = Length.mm(3);

    /** How a door sits to its opening. */
    public enum Hung {
        INSET("inset"),
        OVERLAY("overlay");

        private final String word;

        Hung(String word) {
            this.word = word;
        }

        /** As it is written in a design. */
        public String word() {
            return word;
        }
    }

    public HungDoor {
        WIDTH.check(width);
        HEIGHT.check(height);
        OVERLAP.check(overlap);
        OVERLAP.check(overlapWanted);
        if (leaf != null) {
            LEAF.check(leaf);
        }
        if (hung == Hung.INSET && overlap.metres() > 0) {
            throw new IllegalArgumentException("an inset door has no overlap");
        }
        if (hung == Hung.OVERLAY && overlapWanted.compareTo(overlap) >= 0) {
            throw new IllegalArgumentException("the overlap must be more than what is wanted of it at the dry end");
        }
    }

    boolean inset() {
        return hung == Hung.INSET;
    }

    int leaves() {
        return pair ? 2 : 1;
    }

    /** Of an overlay door nothing but its overlap is at stake where no other door meets it. */
    boolean overlapsAtClosingEdge() {
        return !inset() && !pair;
    }
}
