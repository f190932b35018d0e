package fairgrain.shelf;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
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
 * @param ratios how stiff it is other than along the span
 * @param strengths what else it may bear
 */
public record ShelfStock(
        String name,
        double elasticity,
        double elasticityCv,
        @Nullable Double strength,
        double density,
        @Nullable Creep creep,
        Window thicknesses,
        StiffnessRatios ratios,
        ShelfStrengths strengths,
        Evidence evidence) {
    public static final Limits ELASTICITY = new Limits("modulus of elasticity", 1e8, 1e11, "Pa");
    public static final Limits DENSITY = new Limits("density", 50, 3000, "kg/m3");

    static final Citation GLUED_UP =
            Citation.of("own", "scatter of m boards glued up: that of one by the square root of m", Basis.DERIVED);

    /** Figures that hold for any thickness, such as those of a wood. */
    public static final Window ANY_THICKNESS = new Window(Length.ZERO, Length.metres(1));

    public ShelfStock {
        ELASTICITY.check(elasticity);
        DENSITY.check(density);
        new Limits("coefficient of variation", 0, 0.6, "(a ratio)").check(elasticityCv);
    }

    /** Solid wood of which no more is known. */
    public ShelfStock(
            String name,
            double elasticity,
            double elasticityCv,
            @Nullable Double strength,
            double density,
            @Nullable Creep creep,
            Window thicknesses,
            Evidence evidence) {
        this(
                name,
                elasticity,
                elasticityCv,
                strength,
                density,
                creep,
                thicknesses,
                StiffnessRatios.WOOD,
                ShelfStrengths.NONE,
                evidence);
    }

    /** Glued up from so many boards side by side: together they scatter less than one. Strength stays that of a single board. */
    public ShelfStock gluedFrom(int boards) {
        return new ShelfStock(
                name,
                elasticity,
                elasticityCv / Math.sqrt(boards),
                strength,
                density,
                creep,
                thicknesses,
                ratios,
                strengths,
                boards == 1 ? evidence : evidence.and(GLUED_UP));
    }

    /** Solid wood as soft and weak as it is at the damp end of the year; the tables hold for 12 %. */
    public ShelfStock damp(double moisture) {
        return new ShelfStock(
                name,
                elasticity * DampWood.share(DampWood.ELASTICITY, moisture),
                elasticityCv,
                share(strength, DampWood.RUPTURE, moisture),
                density,
                creep,
                thicknesses,
                ratios,
                new ShelfStrengths(
                        share(strengths.shear(), DampWood.SHEAR, moisture),
                        share(strengths.bearing(), DampWood.BEARING, moisture),
                        strengths.minutes()),
                evidence.and(DampWood.SOURCE, DampWood.RATIOS));
    }

    private static @Nullable Double share(@Nullable Double dry, double dryByGreen, double moisture) {
        return dry == null ? null : dry * DampWood.share(dryByGreen, moisture);
    }

    /** The creep, where it is known. */
    Creep knownCreep() {
        if (creep == null) {
            throw new IllegalArgumentException("no creep is known for " + name + " in such a place");
        }
        return creep;
    }
}
