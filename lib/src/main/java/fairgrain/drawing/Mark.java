package fairgrain.drawing;

import fairgrain.quantity.Require;
import java.util.List;

/** One thing on the paper. */
public sealed interface Mark {
    /** A line through points. */
    record Stroke(List<Point> points, Pen pen) implements Mark {
        public Stroke {
            points = List.copyOf(points);
            if (points.size() < 2) {
                throw new IllegalArgumentException("a line needs two points or more");
            }
        }
    }

    /** A closed outline, lightly shaded. */
    record Area(List<Point> outline, Shade shade) implements Mark {
        public Area {
            outline = List.copyOf(outline);
            if (outline.size() < 3) {
                throw new IllegalArgumentException("an area needs three points or more");
            }
        }
    }

    /** How an area is filled; the outline is drawn with {@link Pen#EDGE}. */
    enum Shade {
        PAPER(0xffffff),
        WOOD(0xefe9df),
        OTHER_WOOD(0xd9cfbf),
        GLASS(0xe8f0f2);

        private final int colour;

        Shade(int colour) {
            this.colour = colour;
        }

        /** Red, green and blue, a byte each. */
        public int colour() {
            return colour;
        }
    }

    /**
     * A few words.
     *
     * @param at where the line of writing stands: its beginning, middle or end
     * @param height of the letters, from the foot of one line to the next [mm]
     */
    record Words(String text, Point at, Anchor anchor, double height) implements Mark {
        public Words {
            Require.between("height of letters", height, 1, 20, "mm");
        }
    }

    /** Which part of the words stands at their place. */
    enum Anchor {
        BEGINNING,
        MIDDLE,
        END
    }
}
