package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * How far a screw reaches into the member in the wall, and what of that counts.
 *
 * <p>sideways: wood screw p ≥ 6 D, L_m = p, less half the tip (2 D long) while p &lt; 10 D; lag screw p ≥ 4 D, L_m = p
 * without the tip
 *
 * <p><b>Source</b> {@code nds2018}, clauses 12.1.4, 12.1.5 and 12.3.5. The least depths are second-hand, the rest is
 * from memory.
 *
 * <p><b>Holds for</b> single shear in side grain. Below the least depth no sideways value may be used at all. The
 * code's factor p/10D (p/8D for lag screws) belongs to the tabulated values; here L_m already holds it, and it must not
 * be multiplied in once more. The length of the screw is measured from the face under the head, a flush countersunk
 * head included. Neither plaster board nor the rail gives thread in the wall. Once the point leaves the far side, a
 * longer screw gains nothing and may lose thread.
 */
public final class Penetration {
    public static final Citation SOURCE = Citation.of("nds2018", "clauses 12.1.4, 12.1.5 and 12.3.5", Basis.MEMORY);

    /** Least depth of a wood screw or nail, in diameters. [-] */
    public static final double WOOD_SCREW_LEAST = 6;
    /** Least depth of a lag screw without its tip, in diameters. [-] */
    public static final double LAG_SCREW_LEAST = 4;

    private static final double FULL = 10; // diameters; from here the tip of a wood screw is not taken off
    private static final double TIP = 2; // diameters
    private static final double ROUNDING = 1e-9; // of a limit met exactly

    private Penetration() {}

    /**
     * How deep the screw reaches into the member, its tip included.
     *
     * @param screwLength from the face under the head to the point [m]
     * @param sideThickness thickness of the member under the head, less any recess for the head [m]
     * @param gap between the members [m]
     * @param memberDepth thickness of the member in the wall along the screw [m]
     * @return p, no more than the member [m]
     */
    public static double depth(double screwLength, double sideThickness, double gap, double memberDepth) {
        double reach = reach(screwLength, sideThickness, gap);
        return Math.max(0, Math.min(reach, Ranges.distance("depth of the wall member", memberDepth)));
    }

    /**
     * Bearing length of a wood screw or nail.
     *
     * @param depth p, tip included [m]
     * @param diameter D, nominal [m]
     * @return L_m [m]
     */
    public static double woodScrewBearing(double depth, double diameter) {
        double p = Ranges.length("depth in the wall member", depth);
        double d = Ranges.diameter("screw diameter", diameter);
        if (p >= FULL * d * (1 - ROUNDING)) {
            return p;
        }
        return Math.max(0, p - woodScrewTip(d) / 2);
    }

    /**
     * Bearing length of a lag screw, tip left out.
     *
     * @param screwLength from the face under the head to the point [m]
     * @param sideThickness thickness of the member under the head [m]
     * @param gap between the members [m]
     * @param memberDepth thickness of the member in the wall along the screw [m]
     * @param tip E, length of the tapered tip [m]
     * @return L_m, which is p for a lag screw [m]
     */
    public static double lagScrewBearing(
            double screwLength, double sideThickness, double gap, double memberDepth, double tip) {
        double reach = reach(screwLength, sideThickness, gap) - Require.between("length of the tip", tip, 0, 0.05, "m");
        return Math.max(0, Math.min(reach, Ranges.distance("depth of the wall member", memberDepth)));
    }

    /**
     * Whether a wood screw or nail reaches the least depth for a sideways value.
     *
     * @param depth p, tip included [m]
     * @param diameter D, nominal [m]
     * @return yes or no [-]
     */
    public static boolean isEnoughForWoodScrew(double depth, double diameter) {
        return reaches(depth, WOOD_SCREW_LEAST, diameter);
    }

    /**
     * Whether a lag screw reaches the least depth for a sideways value.
     *
     * @param depth p, without the tip [m]
     * @param diameter D, nominal [m]
     * @return yes or no [-]
     */
    public static boolean isEnoughForLagScrew(double depth, double diameter) {
        return reaches(depth, LAG_SCREW_LEAST, diameter);
    }

    /**
     * Length of the tip of a wood screw or nail: 2 D.
     *
     * @param diameter D, nominal [m]
     * @return E [m]
     */
    public static double woodScrewTip(double diameter) {
        return TIP * Ranges.diameter("screw diameter", diameter);
    }

    /**
     * Length of thread inside the member in the wall, for withdrawal.
     *
     * @param screwLength from the face under the head to the point [m]
     * @param threadLength from the end of the shank to the point [m]
     * @param tipLeftOut what of the tip does not count: E for a lag screw, 0 for a wood screw [m]
     * @param before thickness of everything between the head and the member [m]
     * @param memberDepth thickness of the member along the screw [m]
     * @return p [m]
     */
    public static double thread(
            double screwLength, double threadLength, double tipLeftOut, double before, double memberDepth) {
        double length = Ranges.distance("length of the screw", screwLength);
        double threaded = Require.between("length of thread", threadLength, 0, length, "m, no more than the screw");
        double tip = Require.between("tip left out", tipLeftOut, 0, threaded, "m, no more than the thread");
        double start = Ranges.length("thickness before the member", before);
        double end = start + Ranges.distance("depth of the wall member", memberDepth);
        return Math.max(0, Math.min(length - tip, end) - Math.max(length - threaded, start));
    }

    private static double reach(double screwLength, double sideThickness, double gap) {
        return Ranges.distance("length of the screw", screwLength)
                - Ranges.length("thickness of the member under the head", sideThickness)
                - Ranges.length("gap between the members", gap);
    }

    private static boolean reaches(double depth, double diameters, double diameter) {
        double least = diameters * Ranges.diameter("screw diameter", diameter);
        return Ranges.length("depth in the wall member", depth) >= least * (1 - ROUNDING);
    }
}
