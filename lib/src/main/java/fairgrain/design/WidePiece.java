package fairgrain.design;

import fairgrain.material.Wood;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.quantity.Length;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A panel or a board of a design, for what is asked of all of them together. */
public record WidePiece(String name, Board board, Length width, boolean framed) {
    /** All of them, in the order of the design. */
    static List<WidePiece> of(Design design) {
        return Stream.concat(
                        design.parts().stream().flatMap(WidePiece::of),
                        design.box().stream().flatMap(WidePiece::sides))
                .toList();
    }

    /** The sides of a solid case; nothing of one that is made of sheets. */
    private static Stream<WidePiece> sides(Box box) {
        Wood wood = box.material().isSheet() ? null : box.material().solid();
        return wood == null || wood.shrinkage() == null
                ? Stream.empty()
                : Stream.of(new WidePiece(
                        "case sides", Board.of(wood, RingAngle.UNKNOWN, box.thickness()), box.depth(), false));
    }

    private static Stream<WidePiece> of(Part part) {
        if (part instanceof Door door) {
            return door.panel().stream().map(WidePiece::of);
        }
        if (part instanceof FramedPanel panel) {
            return Stream.of(of(panel));
        }
        if (part instanceof Drawer drawer) {
            return Stream.concat(
                    drawer.front().stream()
                            .map(front -> new WidePiece(drawer.name() + ", front", front, drawer.height(), false)),
                    drawer.side().stream()
                            .map(side -> new WidePiece(drawer.name() + ", sides", side, drawer.height(), false)));
        }
        return part instanceof SolidBoard board
                ? Stream.of(new WidePiece(board.name(), board.board(), board.width(), false))
                : Stream.empty();
    }

    private static WidePiece of(FramedPanel panel) {
        return new WidePiece(
                panel.name(), panel.panel().board(), panel.opening().across(), true);
    }

    /** One of each wood, cut and thickness, free or framed: the widest, under the names of all. */
    static List<WidePiece> alike(Design design) {
        Map<List<Object>, WidePiece> widest = new LinkedHashMap<>();
        for (WidePiece piece : of(design)) {
            widest.merge(
                    List.of(piece.board.wood(), piece.board.rings(), piece.board.thickness(), piece.framed),
                    piece,
                    WidePiece::with);
        }
        return List.copyOf(widest.values());
    }

    private WidePiece with(WidePiece other) {
        return new WidePiece(
                name + "; " + other.name, board, width.compareTo(other.width) >= 0 ? width : other.width, framed);
    }
}
