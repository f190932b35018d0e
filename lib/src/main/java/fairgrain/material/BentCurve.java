package fairgrain.material;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.MoistureContent;

/**
 * Size across the grain for a wood whose movement in the range of use is known better than its total shrinkage.
 *
 * <p>d = max(differential, 100 C); slope d from 0 to 20 % moisture content, above it up to M₀ slope max((S − 20 d) / (M₀ − 20), 0.3 S / M₀),
 * all in % per 1 %
 *
 * <p><b>Source</b> {@code own}, bent shrinkage curve.
 *
 * <p><b>Holds for</b> a wood with a differential shrinkage, the movement per 1 % moisture content as furniture sees it. Spread over
 * the whole range, the total shrinkage of many woods gives a tenth to a third less than that. The total of the curve follows from
 * its two slopes, so where the differential is large it lies above the printed one. The knee at 20 % and the least slope beyond
 * it are judgement. From about 20 % up to M₀ the straight line may move more: plan with the larger of the two for each pair of ends.
 */
public final class BentCurve implements Curve {
    public static final Citation SOURCE = Citation.of("own", "bent shrinkage curve", Basis.JUDGEMENT);

    private static final double KNEE = 0.20; // moisture content up to which the differential shrinkage is used
    private static final double LEAST_PART = 0.3; // of the straight slope, beyond the knee
    private static final double PER_PERCENT = 100; // C counts per 1 %, these slopes per whole

    private final double printedTotal;
    private final double start;
    private final double knee;
    private final double slopeBelow;
    private final double slopeAbove;

    /**
     * A curve.
     *
     * @param differential largest figure found for the wood, % per 1 % [ratio]
     * @param shrinkage S, printed total from green to oven-dry [fraction]
     * @param start M₀, moisture content where shrinkage starts [fraction]
     */
    public BentCurve(double differential, double shrinkage, double start) {
        this.printedTotal = Shrinkage.TOTAL.check(shrinkage);
        this.start = Shrinkage.START.check(start);
        this.knee = Math.min(KNEE, start);
        // 100 C is never less than S/M₀, so a small differential cannot make the movement smaller than the straight
        // line's
        this.slopeBelow = Math.max(
                Shrinkage.DIFFERENTIAL.check(differential), PER_PERCENT * ShrinkageCoefficient.of(shrinkage, start));
        this.slopeAbove = start > knee
                ? Math.max((shrinkage - knee * slopeBelow) / (start - knee), LEAST_PART * shrinkage / start)
                : 0;
    }

    @Override
    public double at(double moisture) {
        double m = Math.min(MoistureContent.LIMITS.check(moisture), start);
        return 1 - slopeAbove * (start - Math.max(m, knee)) - slopeBelow * Math.max(0, knee - m);
    }

    /** What the curve shrinks from green to oven-dry [fraction]. */
    public double total() {
        return 1 - at(0);
    }

    /** Whether that is more than the printed total. */
    public boolean raisesTotal() {
        return total() > printedTotal + 1e-9;
    }
}
