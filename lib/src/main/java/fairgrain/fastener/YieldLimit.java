package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * Load at which a screw in one shear plane yields sideways, in each of six modes, with the members touching or with a
 * gap between them.
 *
 * <p>Touching, e = F_m/F_s and r = L_m/L_s: Im P = D L_m F_m; Is P = D L_s F_s; II P = k₁ D L_s F_s; IIIm P = k₂ D L_m
 * F_m / (1 + 2e); IIIs P = k₃ D L_s F_m / (2 + e); IV P = D² √(2 F_m F_yb / (3 (1 + e))). With a gap g: A P² + B P + C
 * = 0 for each mode but the first two
 *
 * <p><b>Source</b> {@code nds2018}, Table 12.3.1A and equations 12.3-1 to 12.3-6. From memory; borne out by every
 * reproduced table cell. With a gap: {@code own}, plastic statics of a dowel across a gap; the general dowel equations
 * of {@code awc-tr12} treat the same case, but their text was not read.
 *
 * <p><b>Holds for</b> one screw in side grain, one shear plane, a board between the members that gives no bearing
 * (plaster board is a gap as thick as itself). Left out, on the safe side: friction, the rope effect of a tight head,
 * the board's own resistance. Left out and to be checked beside it: penetration ({@link Penetration}), splitting
 * ({@link EdgeAndSpacing}), pull on the same screw ({@link CombinedLoad}).
 */
public final class YieldLimit {
    public static final Citation SOURCE =
            Citation.of("nds2018", "Table 12.3.1A and equations 12.3-1 to 12.3-6", Basis.MEMORY);
    public static final Citation GAP_SOURCE =
            Citation.of("own", "plastic statics of a dowel across a gap", Basis.DERIVED);

    private YieldLimit() {}

    /**
     * Yield loads with the members touching, by the printed closed form.
     *
     * @param screw the connection [-]
     * @return P, in each mode [N]
     */
    public static ModeLoads touching(DowelConnection screw) {
        double lm = screw.mainLength();
        double ls = screw.sideLength();
        double fm = screw.mainBearing();
        double fs = screw.sideBearing();
        double d = screw.diameter();
        double fyb = screw.bendingYield();
        double e = fm / fs;
        double r = lm / ls;
        double k1 = (Math.sqrt(e + 2 * e * e * (1 + r + r * r) + r * r * e * e * e) - e * (1 + r)) / (1 + e);
        double k2 = -1 + Math.sqrt(2 * (1 + e) + 2 * fyb * (1 + 2 * e) * d * d / (3 * fm * lm * lm));
        double k3 = -1 + Math.sqrt(2 * (1 + e) / e + 2 * fyb * (2 + e) * d * d / (3 * fm * ls * ls));
        return new ModeLoads(
                d * lm * fm,
                d * ls * fs,
                k1 * d * ls * fs,
                k2 * d * lm * fm / (1 + 2 * e),
                k3 * d * ls * fm / (2 + e),
                d * d * Math.sqrt(2 * fm * fyb / (3 * (1 + e))));
    }

    /**
     * Yield loads across a gap; with no gap they equal {@link #touching}.
     *
     * <p>u = F D is the bearing force per length and m = F_yb D³/6 the plastic moment of the screw. The moments at the
     * two faces add up to P g: m = u L²/4 − P L/2 − P²/(4u) where the screw stays straight in a member, m − P²/(2u)
     * where it bends.
     *
     * @param screw the connection [-]
     * @param gap g, between the members [m]
     * @return P, in each mode [N]
     */
    public static ModeLoads acrossGap(DowelConnection screw, double gap) {
        double g = Ranges.length("gap between the members", gap);
        double lm = screw.mainLength();
        double ls = screw.sideLength();
        double um = screw.mainBearing() * screw.diameter();
        double us = screw.sideBearing() * screw.diameter();
        double m = screw.bendingYield() * Math.pow(screw.diameter(), 3) / 6;
        double straightMain = um * lm * lm / 4;
        double straightSide = us * ls * ls / 4;
        return new ModeLoads(
                um * lm,
                us * ls,
                root(1 / (4 * us) + 1 / (4 * um), ls / 2 + g + lm / 2, -straightSide - straightMain),
                root(1 / (2 * us) + 1 / (4 * um), g + lm / 2, -m - straightMain),
                root(1 / (4 * us) + 1 / (2 * um), ls / 2 + g, -straightSide - m),
                root(1 / (2 * us) + 1 / (2 * um), g, -m - m));
    }

    /**
     * Reference values for ten years: each yield load over its divisor.
     *
     * @param screw the connection [-]
     * @param gap g, between the members; 0 where they touch [m]
     * @param nominalDiameter D of the screw [m]
     * @param angle θ, largest angle between load and grain in either member [rad]
     * @return z, in each mode [N]
     */
    public static ModeLoads reference(DowelConnection screw, double gap, double nominalDiameter, double angle) {
        ModeLoads yield = acrossGap(screw, gap);
        double d = screw.diameter();
        return new ModeLoads(
                yield.im() / ReductionTerm.divisor(nominalDiameter, d, angle, YieldMode.IM),
                yield.is() / ReductionTerm.divisor(nominalDiameter, d, angle, YieldMode.IS),
                yield.ii() / ReductionTerm.divisor(nominalDiameter, d, angle, YieldMode.II),
                yield.iiim() / ReductionTerm.divisor(nominalDiameter, d, angle, YieldMode.IIIM),
                yield.iiis() / ReductionTerm.divisor(nominalDiameter, d, angle, YieldMode.IIIS),
                yield.iv() / ReductionTerm.divisor(nominalDiameter, d, angle, YieldMode.IV));
    }

    /** The positive root of a x² + b x + c = 0 for a &gt; 0 and c &lt; 0, written so that a large b costs no digits. */
    private static double root(double a, double b, double c) {
        return -2 * c / (b + Math.sqrt(b * b - 4 * a * c));
    }
}
