package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * How far yielding or pulling out lies above the allowable load, both at the same duration.
 *
 * <p>margin = n · (0.9/1.6) / 0.9: the strength at permanent load is 0.9/1.6 = 0.5625 of the short-time one, the
 * allowable is 0.9 of the reference
 *
 * <p><b>Source</b> {@code own}, strength and allowable value at the same duration.
 *
 * <p><b>Holds for</b> means. n is R_d for a sideways load, or the mean of tests over the reference value for
 * withdrawal. Comparing a short-time strength with a permanent allowable instead would promise 1.6 times as much. The
 * divisor stays the same at every duration.
 */
public final class YieldMargin {
    public static final Citation SOURCE =
            Citation.of("own", "strength and allowable value at the same duration", Basis.DERIVED);

    /** Mean of tests over the reference withdrawal of a wood screw, same G. [-] */
    public static final double WOOD_SCREW = UltimateWithdrawal.WOOD_SCREW / ReferenceWithdrawal.WOOD_SCREW;
    /** Mean of tests over the reference withdrawal of a lag screw, same G. [-] */
    public static final double LAG_SCREW = UltimateWithdrawal.LAG_SCREW / ReferenceWithdrawal.LAG_SCREW;
    /** Mean of tests over the reference withdrawal of a plain nail, same G. [-] */
    public static final double PLAIN_NAIL = UltimateWithdrawal.PLAIN_NAIL / ReferenceWithdrawal.PLAIN_NAIL;

    private YieldMargin() {}

    /**
     * The margin under a permanent load.
     *
     * @param ratio n, short-time strength over reference value [-]
     * @return margin of the strength over the allowable load [-]
     */
    public static double atPermanentLoad(double ratio) {
        double n = Require.between("strength over reference value", ratio, 1, 20, "(ratio)");
        double permanent = LoadDuration.PERMANENT.factor();
        double strengthLeft = permanent / LoadDuration.TEN_MINUTES.factor();
        return n * strengthLeft / permanent;
    }
}
