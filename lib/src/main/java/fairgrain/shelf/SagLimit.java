package fairgrain.shelf;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.quantity.Length;

/**
 * How far a shelf may sag. The first-day limit is held against the first-day sag only, the limit after years against the sag after
 * years only.
 */
public enum SagLimit {
    /** In the open: 1/300 of the span after years. */
    OPEN(
            "in the open",
            600,
            300,
            Double.POSITIVE_INFINITY,
            "csn910001, shelf sag under permanent load",
            Basis.SECOND_HAND),
    /** Behind doors: 1/200 of the span after years, and no more than 6 mm. */
    BEHIND_DOORS("behind doors", 600, 200, 0.006, "csn910001, shelf sag under permanent load", Basis.SECOND_HAND),
    /** What the eye does not notice, after years too: 1/384, a thirty-second of an inch in a foot. */
    NOT_NOTICED(
            "not noticed",
            600,
            384,
            Double.POSITIVE_INFINITY,
            "trade-press, shelf sag: the eye notices 1/32 in a foot",
            Basis.READ),
    /** The figure of a test of kitchen cabinets, here under what really stands on it: 1/192 and no more than a quarter of an inch. */
    KITCHEN_CABINETS(
            "kitchen cabinets", 192, 192, 0.25 * Length.METRES_PER_INCH, "kcma-a161-1, 5.1", Basis.SECOND_HAND),
    /** The figure of a test of architectural woodwork, here under what really stands on it: 1/144. */
    ARCHITECTURAL_WOODWORK(
            "architectural woodwork",
            144,
            144,
            Double.POSITIVE_INFINITY,
            "aws2009, 1.2.21.2 and 4.4.14.10",
            Basis.READ);

    /** A fiftieth of an inch a foot on the first day. */
    public static final Citation FIRST_DAY =
            Citation.of("trade-press", "shelf sag: 0.02 in per foot of span at first", Basis.READ);

    private static final double BEST_FIRST_DAY = 600; // 0.02 in over 12 in

    private final String word;
    private final double firstOver;
    private final double spanOver;
    private final double most;
    private final String source;
    private final Basis basis;

    SagLimit(String word, double firstOver, double spanOver, double most, String source, Basis basis) {
        this.word = word;
        this.firstOver = firstOver;
        this.spanOver = spanOver;
        this.most = most;
        this.source = source;
        this.basis = basis;
    }

    /** As it is written in a design. */
    public String word() {
        return word;
    }

    /** Where it is from. The defaults are of the same order as a published pair for permanent load, 1/333 in sight and 1/200 hidden. */
    public Evidence evidence() {
        Citation years = Citation.parse(source, basis);
        return firstOver == BEST_FIRST_DAY ? Evidence.of(FIRST_DAY, years) : Evidence.of(years);
    }

    /** Limit of the first-day sag [m]. */
    public double firstDay(double span) {
        return Math.min(span / firstOver, most);
    }

    /** The same in words. */
    String firstDayWords(double span, String of) {
        return words(firstDay(span), span, of);
    }

    /** The limit after years in words. */
    String afterYearsWords(double span, String of) {
        return words(afterYears(span), span, of);
    }

    private String words(double limit, double span, String of) {
        double millimetres = Math.round(most * 1e5) / 100.0;
        return limit < most
                ? "1/" + Math.round(span / limit) + " of " + of
                : (millimetres == Math.rint(millimetres) ? Long.toString((long) millimetres) : "" + millimetres)
                        + " mm";
    }

    /** Limit of the sag after years [m]. */
    public double afterYears(double span) {
        return Math.min(span / spanOver, most);
    }
}
