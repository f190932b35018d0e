package fairgrain.shelf;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;

/**
 * A strip along the front or back edge of a shelf, as long as the shelf.
 *
 * @param stock its wood, grain along the shelf
 * @param width front to back
 * @param height from top to bottom
 * @param glued all along; a strip that is only screwed or pinned slips, and counts as a second beam beside the board
 */
public record EdgePiece(ShelfStock stock, Length width, Length height, Place place, boolean glued) {
    public static final Limits WIDTH = new Limits("width of the strip", 0.003, 0.2, "m");
    public static final Limits HEIGHT = new Limits("height of the strip", 0.003, 0.3, "m");

    /** Where it sits. */
    public enum Place {
        /** On the edge itself, level with the top of the board or with its underside. */
        EDGE("on the edge"),
        /** Below the board, along its edge. */
        UNDER("under the board");

        private final String word;

        Place(String word) {
            this.word = word;
        }

        /** As it is written in a design. */
        public String word() {
            return word;
        }
    }

    public EdgePiece {
        WIDTH.check(width);
        HEIGHT.check(height);
        stock.knownCreep();
    }

    EdgePiece height(Length other) {
        return new EdgePiece(stock, width, other, place, glued);
    }
}
