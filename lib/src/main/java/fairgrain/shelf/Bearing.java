package fairgrain.shelf;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import org.jspecify.annotations.Nullable;

/**
 * What each end of the shelf lies on.
 *
 * @param along how far it lies on its cleat, housing or pin, along the span
 * @param pin diameter of a pin; null if it lies on its whole depth
 */
public record Bearing(Length along, @Nullable Length pin) {
    public static final Limits ALONG = new Limits("bearing of the ends", 0.002, 0.2, "m");

    public Bearing {
        ALONG.check(along);
        if (pin != null) {
            ShelfPinSet.DIAMETER.check(pin);
        }
    }
}
