package fairgrain.shelf;

import fairgrain.quantity.Length;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A shelf cut across.
 *
 * @param depth front to back, strips on the edges counted
 * @param thickness of the board, as measured
 * @param front strip along the front edge; null if there is none
 * @param back strip along the back edge; null if there is none
 * @param taper of the front edge; null if it is square
 */
public record Section(
        Length depth,
        Length thickness,
        @Nullable EdgePiece front,
        @Nullable EdgePiece back,
        @Nullable Taper taper) {
    private static final double WIDEST_STRIP = 0.4; // of the depth
    private static final double BETWEEN_STRIPS = 0.01; // m
    private static final double THICKEST = 0.25; // of the depth: a stockier board is no plate

    public Section {
        ShelfSag.DEPTH.check(depth);
        ShelfSag.THICKNESS.check(thickness);
        fits("front strip", front, depth);
        fits("back strip", back, depth);
        if (front != null && back != null) {
            double left = depth.minus(front.width()).minus(back.width()).metres();
            if (!(left >= BETWEEN_STRIPS)) {
                throw new IllegalArgumentException("the two strips must leave 10 mm or more between them");
            }
        }
        if (taper != null) {
            if (front != null) {
                throw new IllegalArgumentException("a front edge has a strip or a taper, not both");
            }
            if (taper.edge().compareTo(thickness) > 0) {
                throw new IllegalArgumentException("the tapered edge must be thinner than the board");
            }
            narrow("taper", taper.width(), depth);
        }
        if ((front != null || back != null || taper != null) && thickness.metres() > THICKEST * depth.metres()) {
            throw new IllegalArgumentException(
                    "a shelf with a strip or a taper must be at least four times as deep as it is thick");
        }
    }

    public static Section plain(Length depth, Length thickness) {
        return new Section(depth, thickness, null, null, null);
    }

    private static void fits(String what, @Nullable EdgePiece strip, Length depth) {
        if (strip != null) {
            narrow(what, strip.width(), depth);
        }
    }

    private static void narrow(String what, Length width, Length depth) {
        if (width.metres() > WIDEST_STRIP * depth.metres()) {
            throw new IllegalArgumentException("the " + what + " must be at most " + WIDEST_STRIP
                    + " of the depth of the shelf wide, but was "
                    + Math.round(100 * width.metres() / depth.metres()) / 100.0 + " of it");
        }
    }

    /** Whether it is one board all over. */
    public boolean isPlain() {
        return front == null && back == null && taper == null;
    }

    Optional<EdgePiece> frontStrip() {
        return Optional.ofNullable(front);
    }

    Optional<EdgePiece> backStrip() {
        return Optional.ofNullable(back);
    }

    Section thickness(Length other) {
        return new Section(depth, other, front, back, taper);
    }

    Section front(EdgePiece other) {
        return new Section(depth, thickness, other, back, taper);
    }

    /** Mass of a metre of it, made of such a board [kg/m]. */
    public double massPerLength(ShelfStock board) {
        double boardWidth = depth.metres();
        double strips = 0;
        for (EdgePiece strip : new @Nullable EdgePiece[] {front, back}) {
            if (strip != null) {
                strips += strip.stock().density()
                        * strip.width().metres()
                        * strip.height().metres();
                boardWidth -=
                        strip.place() == EdgePiece.Place.EDGE ? strip.width().metres() : 0;
            }
        }
        return strips + board.density() * boardWidth * thickness.metres();
    }
}
