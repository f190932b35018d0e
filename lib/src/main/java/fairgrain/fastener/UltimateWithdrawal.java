package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * The load at which a fastener is pulled out of side grain on average in tests. Never an allowable load.
 *
 * <p>wood screw P = 15 700 G² D L, lag screw P = 8 100 G^1.5 D^0.75 L, plain nail P = 7 850 G^2.5 D L, in lb with D and
 * L in inches
 *
 * <p><b>Source</b> {@code gtr190}, chapter 8. The lag screw constants were read as quoted, the rest is from memory.
 *
 * <p><b>Holds for</b> dry wood, side grain, a short-time test. G is on oven-dry mass and volume at 12 % moisture
 * content, a little lower than the G of {@link ReferenceWithdrawal}. Left out: scatter (see {@link ShortTimeStrength})
 * and duration of load.
 */
public final class UltimateWithdrawal {
    public static final Citation SOURCE = Citation.of("gtr190", "chapter 8", Basis.MEMORY);
    public static final Citation LAG_SOURCE = Citation.of("gtr190", "chapter 8, lag screws", Basis.SECOND_HAND);

    static final double WOOD_SCREW = 15_700; // lb, in
    static final double LAG_SCREW = 8_100; // lb, in
    static final double PLAIN_NAIL = 7_850; // lb, in

    private UltimateWithdrawal() {}

    /**
     * A wood screw.
     *
     * @param specificGravity G, oven-dry mass on volume at 12 % moisture content [-]
     * @param diameter D, nominal [m]
     * @param thread L, length of thread in the member [m]
     * @return P, mean of tests [N]
     */
    public static double woodScrew(double specificGravity, double diameter, double thread) {
        double g = Ranges.gravity(specificGravity);
        double d = Ranges.diameter("wood screw diameter", diameter) / InchPound.METRES_PER_INCH;
        double l = Ranges.length("length of thread", thread) / InchPound.METRES_PER_INCH;
        return WOOD_SCREW * g * g * d * l * InchPound.NEWTONS_PER_POUND;
    }

    /**
     * A lag screw.
     *
     * @param specificGravity G, oven-dry mass on volume at 12 % moisture content [-]
     * @param diameter D, nominal [m]
     * @param thread L, length of thread in the member, tip left out [m]
     * @return P, mean of tests [N]
     */
    public static double lagScrew(double specificGravity, double diameter, double thread) {
        double g = Ranges.gravity(specificGravity);
        double d = Ranges.diameter("lag screw diameter", diameter) / InchPound.METRES_PER_INCH;
        double l = Ranges.length("length of thread", thread) / InchPound.METRES_PER_INCH;
        return LAG_SCREW * Math.pow(g, 1.5) * Math.pow(d, 0.75) * l * InchPound.NEWTONS_PER_POUND;
    }

    /**
     * A plain-shank nail.
     *
     * @param specificGravity G, oven-dry mass on volume at 12 % moisture content [-]
     * @param diameter D [m]
     * @param depth L, length of nail in the member [m]
     * @return P, mean of tests [N]
     */
    public static double plainNail(double specificGravity, double diameter, double depth) {
        double g = Ranges.gravity(specificGravity);
        double d = Ranges.diameter("nail diameter", diameter) / InchPound.METRES_PER_INCH;
        double l = Ranges.length("length of nail in the member", depth) / InchPound.METRES_PER_INCH;
        return PLAIN_NAIL * Math.pow(g, 2.5) * d * l * InchPound.NEWTONS_PER_POUND;
    }
}
