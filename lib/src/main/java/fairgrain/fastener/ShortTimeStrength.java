package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Strength to hold a published test load against: a lower five-per-cent value in a short test, not an allowable load.
 *
 * <p>sideways z R_d; withdrawal n w p · 0.67
 *
 * <p><b>Source</b> {@code own}, 0.67 of the mean as the lower value.
 *
 * <p><b>Holds for</b> the information "this test would probably be passed". It never enters a verdict on daily use.
 * 0.67 is what tests of joints gave for 95 in 100 at 95 % confidence. The yield load is taken whole, since it is
 * reached well before the screw lets go. Left out: heads and steel.
 */
public final class ShortTimeStrength {
    public static final Citation SOURCE = Citation.of("own", "0.67 of the mean as the lower value", Basis.JUDGEMENT);

    private static final double LOWER_PART_OF_MEAN = 0.67;

    private ShortTimeStrength() {}

    /**
     * Sideways: the yield load itself.
     *
     * @param reference z [N]
     * @param divisor R_d of the governing mode [-]
     * @return yield load [N]
     */
    public static double lateral(double reference, double divisor) {
        return Ranges.force("reference lateral value", reference) * Require.between("R_d", divisor, 1, 6, "(ratio)");
    }

    /**
     * Withdrawal.
     *
     * @param reference w p [N]
     * @param ratio n, mean of tests over reference value, as in {@link YieldMargin} [-]
     * @return lower value of the strength [N]
     */
    public static double withdrawal(double reference, double ratio) {
        return Ranges.force("reference withdrawal", reference)
                * Require.between("strength over reference value", ratio, 1, 20, "(ratio)")
                * LOWER_PART_OF_MEAN;
    }
}
