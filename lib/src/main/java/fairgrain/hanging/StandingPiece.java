package fairgrain.hanging;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Require;

/**
 * A piece that stands on the floor and may tip forward.
 *
 * @param name as the maker calls it
 * @param mass empty, without what is pulled out [kg]
 * @param depth from back to front
 * @param height of its top, and no tie sits higher
 * @param feetBack its front feet behind its front
 * @param openMass of drawers with what is in them, or of doors, all that may stand open at once [kg]
 * @param openReach how far they reach out in front of it
 */
public record StandingPiece(
        String name, double mass, Length depth, Length height, Length feetBack, double openMass, Length openReach) {
    public static final Limits MASS = new Limits("mass of the piece", 1, 1000, "kg");
    public static final Limits OPEN_MASS = new Limits("mass of what stands open", 0, 500, "kg");
    public static final Limits DEPTH = new Limits("depth of the piece", 0.1, 2, "m");
    public static final Limits HEIGHT = new Limits("height of the piece", 0.3, 4, "m");
    public static final Limits FEET_BACK = new Limits("front feet behind the front", 0, 0.5, "m");
    public static final Limits OPEN_REACH = new Limits("reach of what stands open", 0, 1.5, "m");

    public StandingPiece {
        MASS.check(mass);
        DEPTH.check(depth);
        HEIGHT.check(height);
        FEET_BACK.check(feetBack);
        OPEN_MASS.check(openMass);
        OPEN_REACH.check(openReach);
        Require.between(
                "front feet behind the front", feetBack.metres(), 0, depth.metres() / 2, "m, less than half its depth");
    }
}
