package fairgrain.shelf;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;

/**
 * Where a glass shelf lies.
 *
 * @param span from the middle of one support to the middle of the other
 * @param depth front to back
 * @param pinsIn from the front edge to the front pins, and from the back edge to the rear ones; without meaning where there are no pins
 * @param bearing how far the glass lies on each support, along the span
 */
public record GlassRest(GlassSupport support, Length span, Length depth, Length pinsIn, Length bearing) {
    public static final Limits SPAN = new Limits("span of the glass", 0.1, 2, "m");
    public static final Limits DEPTH = new Limits("depth of the glass", 0.05, 1, "m");
    public static final Limits PINS_IN = new Limits("place of the pins", 0.005, 0.4, "m");
    public static final Limits BEARING = new Limits("bearing of the glass", 0.001, 0.1, "m");

    public GlassRest {
        SPAN.check(span);
        DEPTH.check(depth);
        BEARING.check(bearing);
        PINS_IN.check(pinsIn);
        if (support == GlassSupport.PINS && pinsIn.metres() > depth.metres() / 2 - PINS_IN.least()) {
            throw new IllegalArgumentException("the front pins must be in front of the rear ones: less than half the"
                    + " depth from the front edge");
        }
    }

    boolean isOnPins() {
        return support == GlassSupport.PINS;
    }

    /** The glass itself, which reaches half its bearing past the middle of each support. */
    double length() {
        return span.metres() + bearing.metres();
    }

    GlassRest span(Length other) {
        return new GlassRest(support, other, depth, pinsIn, bearing);
    }
}
