package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Stresses in a bevelled strip between its screws: bending along it, bending across its grain, rolling shear at the
 * feather edge.
 *
 * <p>along: v L²/8 / (t d²/6) + k L²/8 / (d t²/6); across: σ₉₀ = 6 k l / t², k = H₁ / min(2 l + head, spacing), l from
 * bevel to screw row; with the moment V₁ x of the weight below the screws; shear V / (L_c t_root) against 0.18 τ∥; twist k a L/2
 * (3 + 1.8 t/d) / (d t²)
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
    /** Twist of a rectangle, and how far the weight spreads along a strip. */
    public static final Citation SPREAD_SOURCE =
            Citation.of("own", "twist of a rectangle; two depths as of a bar on an elastic bed", Basis.MEMORY);

    public static final Citation LIMIT_SOURCE = Citation.of(
            "own", "five per cent value over 2.1 across the grain; 0.18 of the shear strength", Basis.JUDGEMENT);

    private static final double ROLLING_SHEAR_SHARE = 0.18;
    private static final double FIVE_PER_CENT = 1.645; // standard deviations
    private static final double VARIATION = 0.25; // of the tension strength across the grain, from memory
    private static final double DIVISOR = 2.1;
    private static final double PLYWOOD_SPREAD = 1.4;
    private static final double TWIST = 1.8; // of a rectangle, within 4 per cent
    private static final double CONTACT_DEPTHS =
            2; // 2.3 to 2.7 by a bed of wood across its grain, E a tenth to a twentieth

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
     * The same where the weight turns the strip too: it acts at the bevel, off the face that the screws draw the strip to. The
     * worse of just above the screws and just below them, where both moments are in the strip and run out to its far edge:
     * max(6 H₁ l / (b₁ t²), 6 (H₁ l + V₁ x) / (b₂ t²)), b₁ = min(2 l + head, spacing), b₂ = min(2 max(l, s) + head, spacing).
     *
     * @param screwPull H₁, horizontal pull at one screw [N]
     * @param lever l, from the bevel to the screw row [m]
     * @param screwShear V₁, weight on one screw [N]
     * @param arm x, of the bevel from that face [m]
     * @param toFarEdge s, from the screw row to the edge on which the strip heels [m]
     * @param headDiameter of the screw or washer [m]
     * @param spacing of the screws [m]
     * @param thickness t [m]
     * @return σ₉₀ [Pa]
     */
    public static double crossGrainAtScrews(
            double screwPull,
            double lever,
            double screwShear,
            double arm,
            double toFarEdge,
            double headDiameter,
            double spacing,
            double thickness) {
        double above = crossGrainStress(screwPull, lever, headDiameter, spacing, thickness);
        double s = Ranges.distance("distance from the screws to the heel", toFarEdge);
        double t = Ranges.thickness("thickness of the strip", thickness);
        double moment = screwPull * lever + Ranges.force("weight at one screw", screwShear) * Ranges.length("arm", arm);
        double width = Math.min(2 * Math.max(lever, s) + headDiameter, spacing);
        return Math.max(above, 6 * moment / (width * t * t));
    }

    /**
     * Twist of the strip between two studs: its bevel is pulled above or below its middle. τ = k a L/2 · (3 + 1.8 t/d) / (d t²).
     *
     * @param pull k, per length of strip [N/m]
     * @param arm a, of the bevel from mid-depth [m]
     * @param span L, between studs [m]
     * @param depth d, upright, no less than the thickness [m]
     * @param thickness t, from the wall [m]
     * @return greatest shear stress along the grain [Pa]
     */
    public static double twistStress(double pull, double arm, double span, double depth, double thickness) {
        double k = Require.between("pull per length", pull, 0, 1e5, "N/m");
        double torque = k * Ranges.length("arm", arm) * Ranges.distance("span between studs", span) / 2;
        double t = Ranges.thickness("thickness of the strip", thickness);
        double d = Require.between("depth of the strip", depth, t, 1, "m, no less than its thickness");
        return torque * (3 + TWIST * t / d) / (d * t * t);
    }

    /**
     * Length of strip on which the weight of one stud, or of one screw, presses: two depths, as of a bar on an elastic bed.
     *
     * @param depth d, upright [m]
     * @param spacing of studs or screws [m]
     * @return length of contact [m]
     */
    public static double contactLength(double depth, double spacing) {
        return Math.min(
                CONTACT_DEPTHS * Ranges.thickness("depth of the strip", depth), Ranges.distance("spacing", spacing));
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
