package fairgrain.shelf;

import fairgrain.finding.Evidence;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Window;
import org.jspecify.annotations.Nullable;

/**
 * What a shelf is made of, as far as bending goes.
 *
 * @param name as the maker calls it
 * @param elasticity modulus of elasticity along the span, mean, shear of the test bar included [Pa]
 * @param elasticityCv its coefficient of variation
 * @param strength bending stress allowed under a load that stays; null if not known [Pa]
 * @param density mass over volume in the room [kg/m³]
 * @param creep growth of the sag; null if not known for such a place
 * @param thicknesses for which the figures hold
 */
public record ShelfStock(
        String name,
        double elasticity,
        double elasticityCv,
        @Nullable Double strength,
        double density,
        @Nullable Creep creep,
        Window thicknesses,
        Evidence evidence) {
    public static final Limits ELASTICITY = new Limits("modulus of elasticity", 1e8, 1e11, "Pa");
    public static final Limits DENSITY = new Limits("density", 50, 3000, "kg/m3");

    /** Figures that hold for any thickness, such as those of a wood. */
    public static final Window ANY_THICKNESS = new Window(Length.ZERO, Length.metres(1));

    public ShelfStock {
        ELASTICITY.check(elasticity);
        DENSITY.check(density);
        new Limits("coefficient of variation", 0, 0.6, "(a ratio)").check(elasticityCv);
    }
}
