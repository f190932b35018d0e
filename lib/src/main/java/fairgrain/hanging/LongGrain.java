package fairgrain.hanging;

import fairgrain.fastener.ClearWood;
import java.util.OptionalDouble;

/**
 * Mean strengths of a wood along its grain, as far as they are known.
 *
 * @param rupture modulus of rupture [Pa]
 * @param shear strength in shear [Pa]
 */
public record LongGrain(OptionalDouble rupture, OptionalDouble shear) {
    public static final LongGrain UNKNOWN = new LongGrain(OptionalDouble.empty(), OptionalDouble.empty());

    public static LongGrain of(double rupture, double shear) {
        return new LongGrain(OptionalDouble.of(rupture), OptionalDouble.of(shear));
    }

    boolean known() {
        return rupture.isPresent() && shear.isPresent();
    }

    /** What it may carry in bending for good [Pa]. */
    double bending() {
        return ClearWood.bending(rupture.orElseThrow());
    }

    /** What it may carry in shear for good [Pa]. */
    double shearing() {
        return ClearWood.shear(shear.orElseThrow());
    }
}
