package fairgrain.shelf;

import fairgrain.finding.Check;
import fairgrain.quantity.Dimension;

/** Sags against their limits, worded once. */
final class SagChecks {
    private static final String TODAY = "sag on the first day, against 1/600 of the span";
    private static final String TIP_TODAY =
            "sag of the overhang's tip on the first day, against 1/600 of twice its length";

    private final double firstLimit;
    private final double laterLimit;
    private final double tipFirstLimit;
    private final double tipLaterLimit;
    private final String later;
    private final String tipLater;

    /** Limits for a bay and for an overhang, whose tip sags as half a shelf of twice its length would [m]. */
    SagChecks(SagLimit limit, double span, double overhang) {
        firstLimit = limit.firstDay(span);
        laterLimit = limit.afterYears(span);
        tipFirstLimit = limit.firstDay(2 * overhang);
        tipLaterLimit = limit.afterYears(2 * overhang);
        later = "sag after years, against " + words(limit, span, "the span");
        tipLater = "sag of the overhang's tip after years, against " + words(limit, 2 * overhang, "twice its length");
    }

    private static String words(SagLimit limit, double span, String of) {
        boolean capped = limit == SagLimit.BEHIND_DOORS && span / limit.afterYears(span) > 200.5;
        return capped ? "6 mm" : (limit == SagLimit.OPEN ? "1/300 of " : "1/200 of ") + of;
    }

    /** The limit of one of the four, in the order below [m]. */
    double of(int check) {
        return switch (check) {
            case 0 -> firstLimit;
            case 1 -> laterLimit;
            case 2 -> tipFirstLimit;
            default -> tipLaterLimit;
        };
    }

    Check today(double sag) {
        return Check.of(TODAY, sag, firstLimit, Dimension.LENGTH);
    }

    Check later(double sag) {
        return Check.of(later, sag, laterLimit, Dimension.LENGTH);
    }

    Check tipToday(double sag) {
        return Check.of(TIP_TODAY, sag, tipFirstLimit, Dimension.LENGTH);
    }

    Check tipLater(double sag) {
        return Check.of(tipLater, sag, tipLaterLimit, Dimension.LENGTH);
    }
}
