package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * Reference withdrawal value of a fastener in side grain, per length of thread, for a load of ten years.
 *
 * <p>lag screw w = 1800 G^1.5 D^0.75, wood screw w = 2850 G² D, plain nail w = 1380 G^2.5 D, in lb/in with D in inches
 *
 * <p><b>Source</b> {@code nds2018}, equations 12.2-1 to 12.2-3. The wood screw also stands in {@code hicks}, equation
 * 6.37.
 *
 * <p><b>Holds for</b> dry seasoned side grain, holes bored as in {@link PilotHole}, and G on oven-dry mass and oven-dry
 * volume. A density on another basis must be turned into that first: mixing them overstates by 7 to 13 %. D is the
 * nominal diameter, not the root. Left out: end grain ({@link EndGrain}), the head ({@link HeadPullThrough}), the steel
 * ({@link ScrewSteel}), and panels ({@link PanelScrew}).
 */
public final class ReferenceWithdrawal {
    public static final Citation SOURCE = Citation.of("nds2018", "equations 12.2-1 to 12.2-3", Basis.SECOND_HAND);
    public static final Citation WOOD_SCREW_SOURCE = Citation.of("hicks", "equation 6.37", Basis.READ);

    static final double LAG_SCREW = 1800; // lb/in, in
    static final double WOOD_SCREW = 2850; // lb/in, in
    static final double PLAIN_NAIL = 1380; // lb/in, in

    private ReferenceWithdrawal() {}

    /**
     * A lag screw. Its tapered tip does not count as thread.
     *
     * @param specificGravity G, oven-dry mass on oven-dry volume [-]
     * @param diameter D, nominal [m]
     * @return w, for each length of thread in the member [N/m]
     */
    public static double lagScrew(double specificGravity, double diameter) {
        double g = Ranges.gravity(specificGravity);
        double d = Ranges.diameter("lag screw diameter", diameter) / InchPound.METRES_PER_INCH;
        return LAG_SCREW * Math.pow(g, 1.5) * Math.pow(d, 0.75) * InchPound.NEWTONS_PER_METRE_PER_POUND_PER_INCH;
    }

    /**
     * A wood screw.
     *
     * @param specificGravity G, oven-dry mass on oven-dry volume [-]
     * @param diameter D, nominal [m]
     * @return w, for each length of thread in the member [N/m]
     */
    public static double woodScrew(double specificGravity, double diameter) {
        double g = Ranges.gravity(specificGravity);
        double d = Ranges.diameter("wood screw diameter", diameter) / InchPound.METRES_PER_INCH;
        return WOOD_SCREW * g * g * d * InchPound.NEWTONS_PER_METRE_PER_POUND_PER_INCH;
    }

    /**
     * A plain-shank nail.
     *
     * @param specificGravity G, oven-dry mass on oven-dry volume [-]
     * @param diameter D [m]
     * @return w, for each length of nail in the member [N/m]
     */
    public static double plainNail(double specificGravity, double diameter) {
        double g = Ranges.gravity(specificGravity);
        double d = Ranges.diameter("nail diameter", diameter) / InchPound.METRES_PER_INCH;
        return PLAIN_NAIL * Math.pow(g, 2.5) * d * InchPound.NEWTONS_PER_METRE_PER_POUND_PER_INCH;
    }
}
