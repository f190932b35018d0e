package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * What is left of a screw's side-grain value when it sits in end grain.
 *
 * <p><b>Source</b> {@code nds2018}, clauses 12.2.2.3 and 12.2.3.3. Wood screws in {@code hicks}, chapter 6.
 *
 * <p><b>Holds for</b> solid wood. In withdrawal this library grants nothing, standing load or not: the code forbids it
 * for wood screws and nails, and tests scatter widely. For lag screws the code prints 0.75
 * ({@link #LAG_WITHDRAWAL_IN_THE_CODE}); that is kept for comparison and not used. A tightened thread in end grain
 * relaxes, so no credit is given for clamping or friction.
 */
public final class EndGrain {
    public static final Citation SOURCE = Citation.of("nds2018", "clauses 12.2.2.3 and 12.2.3.3", Basis.SECOND_HAND);
    /** Two thirds sideways, nothing in withdrawal. */
    public static final Citation LATERAL_SOURCE = Citation.of("hicks", "chapter 6", Basis.READ);

    /** Withdrawal: none. [-] */
    public static final double WITHDRAWAL = 0;
    /** Sideways: printed as two thirds and as 0.67; the smaller rounding is used. [-] */
    public static final double LATERAL = 2.0 / 3;
    /** What the code allows a lag screw in withdrawal. Not used. [-] */
    public static final double LAG_WITHDRAWAL_IN_THE_CODE = 0.75;

    private EndGrain() {}

    /**
     * A sideways value in end grain.
     *
     * @param sideGrainValue z, the same screw in side grain [N]
     * @return what may be counted in end grain [N]
     */
    public static double lateral(double sideGrainValue) {
        return LATERAL * Ranges.force("lateral value in side grain", sideGrainValue);
    }
}
