package fairgrain.shelf;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * How far a shelf may sag. The first-day limit is held against the first-day sag only, the limit after years against the sag after
 * years only.
 */
public enum SagLimit {
    /** In the open: 1/300 of the span after years. */
    OPEN(300, Double.POSITIVE_INFINITY),
    /** Behind doors: 1/200 of the span after years, and no more than 6 mm. */
    BEHIND_DOORS(200, 0.006);

    /** A fiftieth of an inch a foot on the first day. */
    public static final Citation FIRST_DAY =
            Citation.of("trade-press", "shelf sag: 0.02 in per foot of span at first", Basis.READ);

    /** The same order as a published pair of limits for permanent load, 1/333 in sight and 1/200 hidden. */
    public static final Citation AFTER_YEARS =
            Citation.of("csn910001", "shelf sag under permanent load", Basis.SECOND_HAND);

    private static final double FIRST_DAY_SPAN_OVER = 600; // 0.02 in over 12 in

    private final double spanOver;
    private final double most;

    SagLimit(double spanOver, double most) {
        this.spanOver = spanOver;
        this.most = most;
    }

    /** Limit of the first-day sag [m]. */
    public double firstDay(double span) {
        return span / FIRST_DAY_SPAN_OVER;
    }

    /** Limit of the sag after years [m]. */
    public double afterYears(double span) {
        return Math.min(span / spanOver, most);
    }
}
