package fairgrain.part;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;

/**
 * A soft spacer in the groove at each side of a panel, which keeps it in the middle.
 *
 * @param thickness as it is, with nothing pressing on it
 * @param squeezed what is left of it when it is pressed as flat as it goes
 */
public record Spacer(Length thickness, Length squeezed) {
    public static final Limits THICKNESS = new Limits("spacer thickness", 0.001, 0.020, "m");
    public static final Limits SQUEEZED = new Limits("squeezed spacer", 0, 0.020, "m");

    public Spacer {
        THICKNESS.check(thickness);
        SQUEEZED.check(squeezed);
        if (squeezed.compareTo(thickness) >= 0) {
            throw new IllegalArgumentException("a squeezed spacer must be thinner than a free one");
        }
    }
}
