package fairgrain.hanging;

import fairgrain.finding.Evidence;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A plywood panel in the wall, behind the lining, that was put there to screw into. Particleboard and MDF have no figure for a
 * screw loaded sideways, and are not taken.
 *
 * @param name what it is
 * @param specificGravity of the plywood: 0.50 where it is a structural or marine grade, else 0.42
 * @param thickness of the panel
 */
public record Backing(String name, double specificGravity, Length thickness, Evidence evidence) implements Stud {
    public static final Limits THICKNESS = new Limits("thickness of the backing", 0.009, 0.06, "m");

    /** Plywood of no declared grade, oven-dry mass on oven-dry volume. [-] */
    public static final double PLYWOOD_GRAVITY = 0.42;

    public Backing {
        new Limits("specific gravity of the backing", 0.3, 1.1, "(a ratio)").check(specificGravity);
        THICKNESS.check(thickness);
    }

    @Override
    public String id() {
        return "backing";
    }

    @Override
    public List<String> tradeNames() {
        return List.of();
    }

    @Override
    public OptionalDouble gravity() {
        return OptionalDouble.of(specificGravity);
    }
}
