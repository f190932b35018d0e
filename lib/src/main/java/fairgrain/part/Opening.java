package fairgrain.part;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import org.jspecify.annotations.Nullable;

/**
 * What a frame leaves for its panel.
 *
 * @param across between the frame members, across the grain of the panel
 * @param along the same along the grain; null if not known
 * @param groove in the inner edges all round
 */
public record Opening(Length across, @Nullable Length along, Groove groove) {
    public static final Limits ACROSS = new Limits("width between the frame members", 0.02, 2, "m");
    public static final Limits ALONG = new Limits("height between the frame members", 0.02, 4, "m");

    public Opening {
        ACROSS.check(across);
        if (along != null) {
            ALONG.check(along);
        }
    }

    public Opening across(Length other) {
        return new Opening(other, along, groove);
    }

    public Opening groove(Groove other) {
        return new Opening(across, along, other);
    }
}
