package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Least distances of screws from edges, ends and each other, so that the wood does not split and the sideways values
 * hold.
 *
 * <p>under 1/4 in, bored: edge 2.5 D, end 10 D toward a pulled end and 5 D otherwise, along the grain 10 D, across 3 D;
 * not bored: end 15 D and 10 D, along 15 D, across 5 D. From 1/4 in: edge 4 D if loaded and 1.5 D otherwise, end 7 D
 * and 4 D, spacing 4 D
 *
 * <p><b>Source</b> {@code nds2018}, Table 12.5.1 and commentary C12.1.5.7. The edges are second-hand or read as quoted,
 * the rest is from memory.
 *
 * <p><b>Holds for</b> side grain. For small screws the code itself only says "enough to prevent splitting". Without a
 * bored hole no edge distance is given, so a screw near an edge that is not bored for is not judged. Pull alone asks
 * for the same as an unloaded edge, an end that is not pulled, and the spacing. 7 D is that of softwood; hardwood is
 * taken alike. Structural screws carry their own distances.
 */
public final class EdgeAndSpacing {
    public static final Citation SOURCE = Citation.of("nds2018", "Table 12.5.1 and commentary C12.1.5.7", Basis.MEMORY);
    /** The error in finding the centre of a stud behind a board. */
    public static final Citation STUD_SOURCE = Citation.of("own", "6 mm error in finding a stud", Basis.JUDGEMENT);

    /** From this diameter the code's table of distances holds. [m] */
    public static final double LARGE = 0.00635;

    private static final double STUD_FINDING_ERROR_MM = 6;

    private EdgeAndSpacing() {}

    /**
     * Least edge distance of a bored screw under 1/4 in.
     *
     * @param diameter D, nominal [m]
     * @return from the edge to the screw's axis [m]
     */
    public static double smallEdgeBored(double diameter) {
        return 2.5 * small(diameter);
    }

    /**
     * Least end distance of a screw under 1/4 in.
     *
     * @param diameter D, nominal [m]
     * @param bored whether a pilot hole is bored [-]
     * @param towardEnd whether the load pulls toward that end [-]
     * @return from the end to the screw's axis [m]
     */
    public static double smallEnd(double diameter, boolean bored, boolean towardEnd) {
        double times = towardEnd ? (bored ? 10 : 15) : (bored ? 5 : 10);
        return times * small(diameter);
    }

    /**
     * Least spacing along the grain of screws under 1/4 in.
     *
     * @param diameter D, nominal [m]
     * @param bored whether pilot holes are bored [-]
     * @return between axes [m]
     */
    public static double smallAlongGrain(double diameter, boolean bored) {
        return (bored ? 10 : 15) * small(diameter);
    }

    /**
     * Least spacing across the grain of screws under 1/4 in.
     *
     * @param diameter D, nominal [m]
     * @param bored whether pilot holes are bored [-]
     * @return between axes [m]
     */
    public static double smallAcrossGrain(double diameter, boolean bored) {
        return (bored ? 3 : 5) * small(diameter);
    }

    /**
     * Least edge distance of a screw of 1/4 in or more.
     *
     * @param diameter D, nominal [m]
     * @param loaded whether the load presses toward that edge [-]
     * @return from the edge to the screw's axis [m]
     */
    public static double largeEdge(double diameter, boolean loaded) {
        return (loaded ? 4 : 1.5) * large(diameter);
    }

    /**
     * Least end distance of a screw of 1/4 in or more.
     *
     * @param diameter D, nominal [m]
     * @param towardEnd whether the load pulls toward that end [-]
     * @return from the end to the screw's axis [m]
     */
    public static double largeEnd(double diameter, boolean towardEnd) {
        return (towardEnd ? 7 : 4) * large(diameter);
    }

    /**
     * Least spacing of screws of 1/4 in or more.
     *
     * @param diameter D, nominal [m]
     * @return between axes [m]
     */
    public static double largeSpacing(double diameter) {
        return 4 * large(diameter);
    }

    /**
     * Edge distance to count on in a stud that was found through the wall: half its width less 6 mm.
     *
     * @param studWidth face of the stud toward the room [m]
     * @return from the nearer edge to the screw's axis [m]
     */
    public static double studEdge(double studWidth) {
        double width = Require.between("width of the stud", studWidth, 0.02, 0.3, "m");
        return width / 2 - STUD_FINDING_ERROR_MM / 1000;
    }

    private static double small(double diameter) {
        return Require.between("diameter of a screw under a quarter inch", diameter, 0.001, 0.00635, "m");
    }

    private static double large(double diameter) {
        return Require.between("diameter of a screw from a quarter inch", diameter, 0.006349, 0.05, "m");
    }
}
