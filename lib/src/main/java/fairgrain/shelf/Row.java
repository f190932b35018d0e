package fairgrain.shelf;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;

/**
 * A row that stands flush with an edge of a shelf, such as books.
 *
 * @param at the edge
 * @param depth from that edge to the back of the row
 */
public record Row(Edge at, Length depth) {
    public static final Limits DEPTH = new Limits("depth of the row", 0.02, 1, "m");

    /** The edge that a row stands flush with. */
    public enum Edge {
        FRONT("front edge"),
        BACK("back edge");

        private final String word;

        Edge(String word) {
            this.word = word;
        }

        /** As it is written in a design. */
        public String word() {
            return word;
        }
    }

    public Row {
        DEPTH.check(depth);
    }

    /** Refuses a row that is off the shelf. */
    void on(Section section) {
        if (depth.compareTo(section.depth()) > 0) {
            throw new IllegalArgumentException(
                    "the row must not be deeper than the shelf; leave its depth out, and it counts as spread");
        }
    }

    /** Its middle, from the front edge of a shelf [m]. */
    double middle(double shelf) {
        return at == Edge.FRONT ? depth.metres() / 2 : shelf - depth.metres() / 2;
    }
}
