package fairgrain.material;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.MoistureContent;

/**
 * Size across the grain as a straight line from the oven-dry size to the green one.
 *
 * <p>D(M) = 1 − S (1 − M/M₀) below M₀, 1 above
 *
 * <p><b>Source</b> {@code gtr190}, chapter 4: shrinkage from green to a moisture content, and Eq. 13-3, which is the same line.
 *
 * <p><b>Holds for</b> wood free to move. Left out: the S shape of the measured line, by which the straight one gives about a
 * twentieth less movement in the range of use; set from being held; the time that the moisture takes.
 */
public final class StraightCurve implements Curve {
    public static final Citation SOURCE =
            Citation.of("gtr190", "chapter 4: shrinkage from green to a moisture content", Basis.MEMORY);

    private final double shrinkage;
    private final double start;

    /**
     * A line.
     *
     * @param shrinkage S, total from green to oven-dry [fraction]
     * @param start M₀, moisture content where shrinkage starts [fraction]
     */
    public StraightCurve(double shrinkage, double start) {
        this.shrinkage = Shrinkage.TOTAL.check(shrinkage);
        this.start = Shrinkage.START.check(start);
    }

    @Override
    public double at(double moisture) {
        return 1 - shrinkage * (1 - Math.min(MoistureContent.LIMITS.check(moisture), start) / start);
    }
}
