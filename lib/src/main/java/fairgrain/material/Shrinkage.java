package fairgrain.material;

import fairgrain.finding.Evidence;
import fairgrain.quantity.Limits;
import org.jspecify.annotations.Nullable;

/**
 * How a wood shrinks from green to oven-dry.
 *
 * @param radial total across the rings [fraction]
 * @param tangential total along the rings [fraction]
 * @param volumetric total of the volume; null if not known [fraction]
 * @param start moisture content where it begins [fraction]
 * @param differentialRadial change per change of moisture content in the range of use, across the rings; null if not known [ratio]
 * @param differentialTangential the same along the rings [ratio]
 * @param cv coefficient of variation from board to board [ratio]
 */
public record Shrinkage(
        double radial,
        double tangential,
        @Nullable Double volumetric,
        double start,
        @Nullable Double differentialRadial,
        @Nullable Double differentialTangential,
        double cv,
        Evidence evidence) {
    public static final Limits TOTAL = new Limits("shrinkage", 0.005, 0.25, "(a fraction; 8 % is 0.08)");
    public static final Limits VOLUMETRIC =
            new Limits("shrinkage of the volume", 0.01, 0.4, "(a fraction; 8 % is 0.08)");
    public static final Limits START = new Limits("start of shrinkage", 0.15, 0.4, "(a fraction; 30 % is 0.3)");
    public static final Limits DIFFERENTIAL = new Limits("differential shrinkage", 0.01, 1, "% per 1 %");
    public static final Limits CV = new Limits("coefficient of variation of shrinkage", 0.05, 0.5, "(a ratio)");

    private static final double PER_PERCENT = 100; // a coefficient counts per 1 %, a differential in % per 1 %

    public Shrinkage {
        TOTAL.check(radial);
        TOTAL.check(tangential);
        START.check(start);
        CV.check(cv);
        if (volumetric != null) {
            VOLUMETRIC.check(volumetric);
        }
        if (differentialRadial != null) {
            DIFFERENTIAL.check(differentialRadial);
        }
        if (differentialTangential != null) {
            DIFFERENTIAL.check(differentialTangential);
        }
    }

    /** The straight line along the rings. */
    public Curve tangentialCurve() {
        return new StraightCurve(tangential, start);
    }

    /** The straight line across the rings. */
    public Curve radialCurve() {
        return new StraightCurve(radial, start);
    }

    /** The bent curve along the rings; the straight line where no differential shrinkage is known. */
    public Curve bentTangentialCurve() {
        return differentialTangential == null
                ? tangentialCurve()
                : new BentCurve(differentialTangential, tangential, start);
    }

    /** The bent curve across the rings; the straight line where no differential shrinkage is known. */
    public Curve bentRadialCurve() {
        return differentialRadial == null ? radialCurve() : new BentCurve(differentialRadial, radial, start);
    }

    public boolean isBent() {
        return differentialRadial != null || differentialTangential != null;
    }

    /** Whether a figure published for the range of use is steeper than the coefficient that its total gives. */
    public boolean isSteeper() {
        return isSteeper(differentialRadial, radial) || isSteeper(differentialTangential, tangential);
    }

    private boolean isSteeper(@Nullable Double differential, double total) {
        return differential != null && differential > PER_PERCENT * ShrinkageCoefficient.of(total, start);
    }

    /** Whether a bent curve ends above the printed total, which is then said wherever the figure is shown. */
    public boolean raisesTotal() {
        return raisesTotal(bentRadialCurve()) || raisesTotal(bentTangentialCurve());
    }

    private static boolean raisesTotal(Curve curve) {
        return curve instanceof BentCurve bent && bent.raisesTotal();
    }
}
