package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Withdrawal of a screw from particleboard, MDF or plywood: mean of tests, and the divisor each board needs.
 *
 * <p>particleboard: P = K √D (L − D/3)^1.25 G², K = 2655 (face) or 2055 (edge) in lb and in; plywood: 0.75 (face) or
 * 0.5 (edge) of solid wood; allowable P / n, n = 1.3 · 1.5 / (0.67 k_mod)
 *
 * <p><b>Source</b> {@code gtr190}, chapter 8, screws in particleboard.
 *
 * <p><b>Holds for</b> dry rooms and holes bored as the maker of the board says; no pilot hole is worst. G is the
 * board's own. MDF is borrowed from particleboard with MDF's own divisor. The solid-wood divisor of 5.5 is not enough
 * in board: standing loads need 10 in particleboard and 15 in MDF. In damp rooms particleboard needs half as much
 * again, and MDF under a standing pull is not judged. A tightened thread relaxes: no credit for clamping or friction. A
 * standing pull in any board asks for a caution.
 */
public final class PanelScrew {
    public static final Citation SOURCE = Citation.of("gtr190", "chapter 8, screws in particleboard", Basis.MEMORY);
    public static final Citation PLYWOOD_SOURCE =
            Citation.of("own", "0.75 and 0.5 of solid wood in plywood", Basis.JUDGEMENT);
    public static final Citation DIVISOR_SOURCE =
            Citation.of("own", "divisors from the duration factors of en1995", Basis.JUDGEMENT);

    /** Standing pull in particleboard, dry room. [-] */
    public static final double PARTICLEBOARD_STANDING = 10;
    /** Standing pull in MDF, dry room. [-] */
    public static final double MDF_STANDING = 15;
    /** Long but not standing pull in particleboard, dry room. [-] */
    public static final double PARTICLEBOARD_LONG_TERM = 6.5;
    /** Long but not standing pull in MDF, dry room. [-] */
    public static final double MDF_LONG_TERM = 7.3;
    /** By how much more in particleboard in a damp room. [-] */
    public static final double PARTICLEBOARD_DAMP = 1.5;
    /** Plywood: that of solid wood, which is more than its duration factor of 0.60 would ask. [-] */
    public static final double PLYWOOD = 5.5;

    private static final double FACE = 2655; // lb, in
    private static final double EDGE = 2055; // lb, in
    private static final double PLYWOOD_FACE = 0.75;
    private static final double PLYWOOD_EDGE = 0.5;
    private static final double MATERIAL_FACTOR = 1.3;
    private static final double LOAD_FACTOR = 1.5;
    private static final double FIVE_PER_CENT = 0.67; // of the mean

    private PanelScrew() {}

    /**
     * Through the face of particleboard, or of MDF.
     *
     * @param specificGravity G, of the board [-]
     * @param diameter D, nominal [m]
     * @param depth L, of the screw in the board [m]
     * @return P, mean of tests [N]
     */
    public static double particleboardFace(double specificGravity, double diameter, double depth) {
        return particleboard(FACE, specificGravity, diameter, depth);
    }

    /**
     * Into the edge of particleboard, or of MDF.
     *
     * @param specificGravity G, of the board [-]
     * @param diameter D, nominal [m]
     * @param depth L, of the screw in the board [m]
     * @return P, mean of tests [N]
     */
    public static double particleboardEdge(double specificGravity, double diameter, double depth) {
        return particleboard(EDGE, specificGravity, diameter, depth);
    }

    /**
     * Through the face of plywood.
     *
     * @param specificGravity G, of the plywood [-]
     * @param diameter D, nominal [m]
     * @param thread L, in the plywood [m]
     * @return P, mean of tests [N]
     */
    public static double plywoodFace(double specificGravity, double diameter, double thread) {
        return PLYWOOD_FACE * UltimateWithdrawal.woodScrew(specificGravity, diameter, thread);
    }

    /**
     * Into the edge of plywood.
     *
     * @param specificGravity G, of the plywood [-]
     * @param diameter D, nominal [m]
     * @param thread L, in the plywood [m]
     * @return P, mean of tests [N]
     */
    public static double plywoodEdge(double specificGravity, double diameter, double thread) {
        return PLYWOOD_EDGE * UltimateWithdrawal.woodScrew(specificGravity, diameter, thread);
    }

    /**
     * The divisor that a duration factor leads to; the constants are this, rounded.
     *
     * @param duration k_mod [-]
     * @return n [-]
     */
    public static double divisor(double duration) {
        double kMod = Require.between("k_mod", duration, 0.1, 1.1, "(ratio)");
        return MATERIAL_FACTOR * LOAD_FACTOR / (FIVE_PER_CENT * kMod);
    }

    private static double particleboard(double k, double specificGravity, double diameter, double depth) {
        double g = Ranges.gravity(specificGravity);
        double d = Ranges.diameter("screw diameter", diameter);
        double l = Require.between("depth of the screw in the board", depth, d / 3, 0.2, "m, at least a third of D");
        double dIn = d / InchPound.METRES_PER_INCH;
        double lIn = l / InchPound.METRES_PER_INCH;
        return k * Math.sqrt(dIn) * Math.pow(lIn - dIn / 3, 1.25) * g * g * InchPound.NEWTONS_PER_POUND;
    }
}
