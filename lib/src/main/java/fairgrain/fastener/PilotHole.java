package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * Holes to bore for screws, by the density of the wood.
 *
 * <p>wood screw pulled: 0.90 D_r (G &gt; 0.6), 0.70 D_r (0.5 to 0.6), none asked for (G ≤ 0.5); wood screw loaded
 * sideways: D_r for the thread and D for the shank (G ≥ 0.6), 7/8 of each below; lag screw: shank D, thread 0.65 to
 * 0.85 D, 0.60 to 0.75 D, 0.40 to 0.70 D
 *
 * <p><b>Source</b> {@code nds2018}, clauses 12.1.4 and 12.1.5. Wood screws were read in a reference text, lag screws
 * are from memory.
 *
 * <p><b>Holds for</b> G on oven-dry mass and volume. In dense wood the hole for the sideways load is the larger one; a
 * screw that is both pulled and loaded sideways takes the smaller, which keeps its thread. Bore in every wood near an
 * edge or an end.
 */
public final class PilotHole {
    public static final Citation SOURCE = Citation.of("nds2018", "clauses 12.1.4 and 12.1.5", Basis.MEMORY);
    public static final Citation WOOD_SCREW_SOURCE =
            Citation.of("nds2018", "clause 12.1.5, wood screws", Basis.SECOND_HAND);

    private static final double DENSE = 0.6;
    private static final double MIDDLING = 0.5;

    /**
     * A range of hole diameters.
     *
     * @param least smallest [m]
     * @param most largest [m]
     */
    public record Hole(double least, double most) {}

    private PilotHole() {}

    /**
     * Thread hole of a wood screw that is pulled.
     *
     * @param specificGravity G, oven-dry mass on oven-dry volume [-]
     * @param rootDiameter D_r [m]
     * @return largest hole; 0 where none is asked for [m]
     */
    public static double pulledWoodScrew(double specificGravity, double rootDiameter) {
        double g = Ranges.gravity(specificGravity);
        double root = Ranges.diameter("root diameter", rootDiameter);
        if (g > DENSE) {
            return 0.90 * root;
        }
        return g > MIDDLING ? 0.70 * root : 0;
    }

    /**
     * Hole for the thread or the shank of a wood screw that is loaded sideways.
     *
     * @param specificGravity G, oven-dry mass on oven-dry volume [-]
     * @param diameter D_r for the thread hole, D for the shank hole [m]
     * @return the hole [m]
     */
    public static double sidewaysWoodScrew(double specificGravity, double diameter) {
        double d = Ranges.diameter("screw diameter", diameter);
        return Ranges.gravity(specificGravity) >= DENSE ? d : 7 * d / 8;
    }

    /**
     * Thread hole of a lag screw. The hole for its shank is as wide as the shank.
     *
     * @param specificGravity G, oven-dry mass on oven-dry volume [-]
     * @param diameter D, nominal [m]
     * @return from the smallest to the largest hole [m]
     */
    public static Hole lagScrewThread(double specificGravity, double diameter) {
        double g = Ranges.gravity(specificGravity);
        double d = Ranges.diameter("lag screw diameter", diameter);
        if (g > DENSE) {
            return new Hole(0.65 * d, 0.85 * d);
        }
        return g > MIDDLING ? new Hole(0.60 * d, 0.75 * d) : new Hole(0.40 * d, 0.70 * d);
    }
}
