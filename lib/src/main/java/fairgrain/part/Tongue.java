package fairgrain.part;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;

/** The thinned edge of a raised or rebated panel, from its edge to the shoulder. */
public record Tongue(Length thickness, Length length) {
    public static final Limits THICKNESS = new Limits("tongue thickness", 0.002, 0.040, "m");
    public static final Limits LENGTH = new Limits("tongue length", 0.002, 0.200, "m");

    public Tongue {
        THICKNESS.check(thickness);
        LENGTH.check(length);
    }
}
