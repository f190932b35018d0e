package fairgrain.moisture;

import fairgrain.quantity.Require;

/**
 * How a slab follows air that rises and falls evenly.
 *
 * @param amplitude of the slab over that of the air [-]
 * @param lag of the slab's highest moisture behind the air's [s]
 */
public record Swing(double amplitude, double lag) {
    public Swing {
        // a hair above 1 is rounding
        Require.between("amplitude", amplitude, 0, 1 + 1e-12, "(share of the air's)");
        Require.notNegative("lag", lag, "s");
    }
}
