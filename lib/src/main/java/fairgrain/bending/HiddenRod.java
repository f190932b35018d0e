package fairgrain.bending;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * A steel rod that stands out of a wall and carries a floating shelf in a hole bored from behind.
 *
 * <p>M = V (e + g), σ = 32 M/(π d³), I = π d⁴/64
 *
 * <p>bearing in the shelf, elastic: σ_h = V/(d l) (1 + 6 |e − l/2|/l)
 *
 * <p>bearing in the shelf, strength: V = f_h d [ √(4 u² + l²) − 2 u ], u = |e − l/2|
 *
 * <p>front edge: δ = V (e + g)²/(6 E I) (2 (e + g) + 3 (B − e))
 *
 * <p><b>Source</b> {@code own}, statics of a rod in a wall and in a shelf.
 *
 * <p>V is the share of one rod, e the distance of the load's middle from the back edge of the shelf, g a gap or board between the shelf and what
 * holds the rod, l the depth of the rod in the shelf, B the depth of the shelf.
 *
 * <p><b>Holds for</b> a rod clamped where it leaves the wall's framing. The rod's own bending alone is in δ: what the
 * wall, the plate or the hole gives comes on top, and is often more. Left out: splitting of the shelf along the holes,
 * slipping off the rods. The share of each rod is from {@link GeneralBeam} along the shelf.
 */
public final class HiddenRod {
    public static final Citation SOURCE =
            Citation.of("own", "statics of a rod in a wall and in a shelf", Basis.DERIVED);

    private HiddenRod() {}

    /**
     * Bending moment of the rod where it leaves its holding.
     *
     * @param load V, share of one rod [N]
     * @param arm e, from the back edge of the shelf to the middle of the load [m]
     * @param gap g, between the shelf and what holds the rod [m]
     * @return M [N·m]
     */
    public static double moment(double load, double arm, double gap) {
        return load(load) * (arm(arm) + gap(gap));
    }

    /**
     * Bending stress of the rod.
     *
     * @param moment M [N·m]
     * @param diameter d [m]
     * @return σ [Pa]
     */
    public static double stress(double moment, double diameter) {
        double d = diameter(diameter);
        return 32 * Require.between("bending moment", moment, 0, 1e5, "N m") / (Math.PI * d * d * d);
    }

    /**
     * Largest pressure of the rod on the wood of the shelf, while it is still elastic.
     *
     * @param load V, share of one rod [N]
     * @param arm e, from the back edge of the shelf to the middle of the load [m]
     * @param diameter d [m]
     * @param depth l, of the rod in the shelf [m]
     * @return σ_h [Pa]
     */
    public static double bearing(double load, double arm, double diameter, double depth) {
        double l = depth(depth);
        return load(load) / (diameter(diameter) * l) * (1 + 6 * offMiddle(arm, l) / l);
    }

    /**
     * Load at which the wood of the shelf gives all along the rod.
     *
     * @param embedment f_h, strength of the wood across the grain under the rod [Pa]
     * @param arm e, from the back edge of the shelf to the middle of the load [m]
     * @param diameter d [m]
     * @param depth l, of the rod in the shelf [m]
     * @return V [N]
     */
    public static double bearingStrength(double embedment, double arm, double diameter, double depth) {
        double l = depth(depth);
        // the same as a pin in a hole with the load inside it; from either side of the middle
        return PinInHole.stiffPin(embedment, diameter(diameter), l, offMiddle(arm, l) - l / 2);
    }

    /**
     * How far the front edge of the shelf comes down from the bending of the rod alone, the load taken as one force at its middle.
     *
     * @param load V, share of one rod [N]
     * @param arm e, from the back edge of the shelf to the middle of the load [m]
     * @param gap g, between the shelf and what holds the rod [m]
     * @param shelfDepth B [m]
     * @param diameter d [m]
     * @param elasticity E, of the rod [Pa]
     * @return δ, downwards [m]
     */
    public static double frontDrop(
            double load, double arm, double gap, double shelfDepth, double diameter, double elasticity) {
        double a = arm(arm) + gap(gap);
        double rest = Require.between("depth of the shelf", shelfDepth, arm, 3, "m") - arm;
        double d = diameter(diameter);
        double ei = Require.between("modulus of elasticity of the rod", elasticity, 1e9, 1e12, "Pa")
                * Math.PI
                * d
                * d
                * d
                * d
                / 64;
        return load(load) * a * a / (6 * ei) * (2 * a + 3 * rest);
    }

    private static double offMiddle(double arm, double depth) {
        return Math.abs(arm(arm) - depth / 2);
    }

    private static double load(double load) {
        return Require.between("load of the rod", load, 0, 1e5, "N");
    }

    private static double arm(double arm) {
        return Require.between("arm of the load", arm, 0, 1, "m");
    }

    private static double gap(double gap) {
        return Require.between("gap behind the shelf", gap, 0, 0.1, "m");
    }

    private static double diameter(double diameter) {
        return Require.between("diameter of the rod", diameter, 0.002, 0.05, "m");
    }

    private static double depth(double depth) {
        return Require.between("depth of the rod in the shelf", depth, 0.01, 1, "m");
    }
}
