package fairgrain.shelf;

import fairgrain.finding.Check;
import fairgrain.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/** Sags against their limits, worded once. */
final class SagChecks {
    private static final String TODAY = "sag on the first day, against 1/600 of the span";

    private final double firstLimit;
    private final double laterLimit;
    private final String later;
    private final SagLimit limit;
    private final double overhang;

    SagChecks(SagLimit limit, double span, double overhang) {
        this.limit = limit;
        this.overhang = overhang;
        firstLimit = limit.firstDay(span);
        laterLimit = limit.afterYears(span);
        later = "sag after years, against " + words(limit, span);
    }

    private static String words(SagLimit limit, double span) {
        double over = span / limit.afterYears(span);
        return limit == SagLimit.OPEN ? "1/300 of the span" : over > 200.5 ? "6 mm" : "1/200 of the span";
    }

    Check today(double sag) {
        return Check.of(TODAY, sag, firstLimit, Dimension.LENGTH);
    }

    Check later(double sag) {
        return Check.of(later, sag, laterLimit, Dimension.LENGTH);
    }

    /** The tip of an overhang sags as half a shelf of twice its length would. */
    List<Check> overhang(double tip, double creep) {
        List<Check> checks = new ArrayList<>();
        if (overhang > 0) {
            double twice = 2 * overhang;
            checks.add(Check.of(
                    "sag of the overhang's tip on the first day, against 1/600 of twice its length",
                    tip,
                    limit.firstDay(twice),
                    Dimension.LENGTH));
            checks.add(Check.of(
                    "sag of the overhang's tip after years, against "
                            + words(limit, twice).replace("the span", "twice its length"),
                    tip * (1 + creep),
                    limit.afterYears(twice),
                    Dimension.LENGTH));
        }
        return checks;
    }
}
