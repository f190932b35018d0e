package fairgrain.clearance;

import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;

/**
 * The wood whose swelling closes a gap: pieces that lie one behind the other, such as the two stiles of a door.
 *
 * @param name as the maker calls them; the same name in two questions of a part means the same boards
 * @param board what they are made of
 * @param pieces how many add up
 * @param each size of one of them that day, across the grain
 * @param way along which of its two directions it is measured
 */
public record MovingWood(String name, Board board, int pieces, Length each, Way way) {
    public static final Limits EACH = new Limits("size across the grain", 0.002, 3, "m");
    public static final Limits PIECES = new Limits("pieces that add up", 1, 20, "(pieces)");

    /** Across the grain there are two directions. */
    public enum Way {
        WIDTH,
        THICKNESS
    }

    public MovingWood {
        EACH.check(each);
        PIECES.check(pieces);
    }

    /** Pieces whose widths add up. */
    public static MovingWood wide(String name, Board board, int pieces, Length each) {
        return new MovingWood(name, board, pieces, each, Way.WIDTH);
    }

    /** Pieces whose thicknesses add up. */
    public static MovingWood thick(String name, Board board, int pieces) {
        return new MovingWood(name, board, pieces, board.thickness(), Way.THICKNESS);
    }

    /**
     * How much all of it swells from one moisture content to another; below zero where it shrinks [m].
     *
     * @param from moisture content now [fraction]
     * @param to moisture content then [fraction]
     * @param ringDeviation how far its rings are off, in standard deviations [ratio]
     * @param factor how many times the average this wood shrinks [ratio]
     */
    double swelling(double from, double to, double ringDeviation, double factor) {
        double ratio = way == Way.WIDTH
                ? board.widthRatio(from, to, ringDeviation, factor)
                : board.thicknessRatio(from, to, ringDeviation, factor);
        return pieces * each.metres() * (ratio - 1);
    }

    MovingWood each(Length other) {
        return new MovingWood(name, board, pieces, other, way);
    }

    /** The same of quartersawn stock. */
    MovingWood quartersawn() {
        Board other = new Board(board.wood(), board.shrinkage(), RingAngle.QUARTERSAWN, board.thickness());
        return new MovingWood(name, other, pieces, each, way);
    }
}
