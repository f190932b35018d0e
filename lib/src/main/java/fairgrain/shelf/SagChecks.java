package fairgrain.shelf;

import fairgrain.finding.Check;
import fairgrain.quantity.Dimension;

/** Sags against their limits, worded once. */
final class SagChecks {
    private final double firstLimit;
    private final double laterLimit;
    private final double tipFirstLimit;
    private final double tipLaterLimit;
    private final String today;
    private final String later;
    private final String tipToday;
    private final String tipLater;

    /** Limits for a bay and for an overhang, whose tip sags as half a shelf of twice its length would [m]. */
    SagChecks(SagLimit limit, double span, double overhang) {
        firstLimit = limit.firstDay(span);
        laterLimit = limit.afterYears(span);
        tipFirstLimit = limit.firstDay(2 * overhang);
        tipLaterLimit = limit.afterYears(2 * overhang);
        today = "sag on the first day, against " + limit.firstDayWords(span, "the span");
        later = "sag after years, against " + limit.afterYearsWords(span, "the span");
        tipToday = "sag of the overhang's tip on the first day, against "
                + limit.firstDayWords(2 * overhang, "twice its length");
        tipLater = "sag of the overhang's tip after years, against "
                + limit.afterYearsWords(2 * overhang, "twice its length");
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
        return Check.of(today, sag, firstLimit, Dimension.LENGTH);
    }

    Check later(double sag) {
        return Check.of(later, sag, laterLimit, Dimension.LENGTH);
    }

    Check tipToday(double sag) {
        return Check.of(tipToday, sag, tipFirstLimit, Dimension.LENGTH);
    }

    Check tipLater(double sag) {
        return Check.of(tipLater, sag, tipLaterLimit, Dimension.LENGTH);
    }
}
