package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Stresses in a bevelled strip between its screws: bending along it, bending across its grain, rolling shear at the
 * feather edge.
 *
 * <p>along: v L²/8 / (t d²/6) + k L²/8 / (d t²/6); across: σ₉₀ = 6 k l / t², k = H₁ / min(2 l + head, spacing), l from
 * bevel to screw row; shear V / (L_c t_root) against 0.18 τ∥
 *
 * <p><b>Source</b> {@code own}, bending of the strip along and across its grain.
 *
 * <p><b>Holds for</b> a strip with its grain along it. v and k are weight and pull per length of strip. Thickness t and
 * depth d are what the bevel leaves. A short lever does not remove the bending across the grain (a plate model gave 1.8
 * MPa at 425 N a screw, 19 mm lever and 19 mm strip): print a caution. Plywood: {@link #crossBendingOfPlywood} against
 * its bending strength across. The limits hold mean strengths of clear wood and no more.
 */
public final class BevelledStrip {
    public static final Citation SOURCE =
            Citation.of("own", "bending of the strip along and across its grain", Basis.DERIVED);
    public static final Citation LIMIT_SOURCE = Citation.of(
            "own", "five per cent value over 2.1 across the grain; 0.18 of the shear strength", Basis.JUDGEMENT);

    private static final double ROLLING_SHEAR_SHARE = 0.18;
    private static final double FIVE_PER_CENT = 1.645; // standard deviations
    private static final double VARIATION = 0.25; // of the tension strength across the grain, from memory
    private static final double DIVISOR = 2.1;
    private static final double PLYWOOD_SPREAD = 1.4;

    private BevelledStrip() {}

    /**
     * Bending along the strip between two studs, both ways at once.
     *
     * @param weight v, per length of strip [N/m]
     * @param pull k, per length of strip [N/m]
     * @param span L, between studs [m]
     * @param depth d, upright [m]
     * @param thickness t, from the wall [m]
     * @return greatest stress [Pa]
     */
    public static double spanStress(double weight, double pull, double span, double depth, double thickness) {
        double l = Ranges.distance("span between studs", span);
        return bending(weight * l * l / 8, pull * l * l / 8, weight, pull, depth, thickness);
    }

    /**
     * Bending along the strip where it stands out past the last stud.
     *
     * @param weight v, per length of strip [N/m]
     * @param pull k, per length of strip [N/m]
     * @param overhang a, past the stud [m]
     * @param depth d, upright [m]
     * @param thickness t, from the wall [m]
     * @return greatest stress [Pa]
     */
    public static double overhangStress(double weight, double pull, double overhang, double depth, double thickness) {
        double a = Ranges.distance("overhang", overhang);
        return bending(weight * a * a / 2, pull * a * a / 2, weight, pull, depth, thickness);
    }

    /**
     * Bending across the grain between bevel and screw row.
     *
     * @param screwPull H₁, horizontal pull at one screw [N]
     * @param lever l, from the bevel to the screw row [m]
     * @param headDiameter of the screw or washer [m]
     * @param spacing of the screws [m]
     * @param thickness t [m]
     * @return σ₉₀ [Pa]
     */
    public static double crossGrainStress(
            double screwPull, double lever, double headDiameter, double spacing, double thickness) {
        double l = Ranges.distance("lever from bevel to screws", lever);
        double spread = 2 * l + Ranges.diameter("head diameter", headDiameter);
        return acrossBending(screwPull, l, Math.min(spread, Ranges.distance("spacing", spacing)), thickness);
    }

    /**
     * The same in plywood, where the spread is 1.4 l.
     *
     * @param screwPull H₁, horizontal pull at one screw [N]
     * @param lever l, from the bevel to the screw row [m]
     * @param spacing of the screws [m]
     * @param thickness t [m]
     * @return bending stress across the face grain [Pa]
     */
    public static double crossBendingOfPlywood(double screwPull, double lever, double spacing, double thickness) {
        double l = Ranges.distance("lever from bevel to screws", lever);
        return acrossBending(
                screwPull, l, Math.min(PLYWOOD_SPREAD * l, Ranges.distance("spacing", spacing)), thickness);
    }

    /**
     * What the wood may carry across its grain for good: t⊥ (1 − 1.645 · 0.25) / 2.1.
     *
     * @param tensionAcross t⊥, mean tension strength across the grain [Pa]
     * @return limit of σ₉₀ [Pa]
     */
    public static double crossGrainLimit(double tensionAcross) {
        double mean = Require.between("tension strength across the grain", tensionAcross, 1e5, 3e7, "Pa");
        return mean * (1 - FIVE_PER_CENT * VARIATION) / DIVISOR;
    }

    /**
     * Shear at the root of the feather edge.
     *
     * @param shear V, over this length of strip [N]
     * @param contactLength L_c [m]
     * @param rootThickness t_root [m]
     * @return τ [Pa]
     */
    public static double featherShear(double shear, double contactLength, double rootThickness) {
        return Ranges.force("weight", shear)
                / (Ranges.distance("length of contact", contactLength)
                        * Ranges.thickness("thickness at the root", rootThickness));
    }

    /**
     * Rolling shear strength: the shear acts across the grain, so only 0.18 of τ∥ counts.
     *
     * @param shearAlong τ∥, mean shear strength along the grain [Pa]
     * @return mean rolling shear strength [Pa]
     */
    public static double rollingShearStrength(double shearAlong) {
        return ROLLING_SHEAR_SHARE * Require.between("shear strength along the grain", shearAlong, 5e5, 5e7, "Pa");
    }

    private static double bending(
            double upright, double level, double weight, double pull, double depth, double thickness) {
        Require.between("weight per length", weight, 0, 1e5, "N/m");
        Require.between("pull per length", pull, 0, 1e5, "N/m");
        double d = Ranges.thickness("depth of the strip", depth);
        double t = Ranges.thickness("thickness of the strip", thickness);
        return upright / (t * d * d / 6) + level / (d * t * t / 6);
    }

    private static double acrossBending(double screwPull, double lever, double width, double thickness) {
        double t = Ranges.thickness("thickness of the strip", thickness);
        double k = Ranges.force("pull at one screw", screwPull) / width;
        return 6 * k * lever / (t * t);
    }
}
