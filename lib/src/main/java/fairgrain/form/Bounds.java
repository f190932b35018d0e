package fairgrain.form;

import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.Unit;
import fairgrain.quantity.UnitSystem;
import java.math.BigDecimal;
import java.util.List;

/** Limits as a maker reads them: in the units of the shop, and rounded inwards, so that what is printed is allowed. */
final class Bounds {
    private static final double A_HAIR = 1e-7; // of a step: a round number stays on its mark
    private static final double FINEST = 1 / 64.0; // in
    private static final int STEPS_APART = 4; // at least, between the two ends
    private static final double LONGEST = 1000; // m

    private final Dimension dimension;
    private final Unit unit;
    private final double coarsest; // step, in the unit

    private Bounds(Limits limits, Dimension dimension, UnitSystem system) {
        this.dimension = dimension;
        this.unit = system.unit(dimension);
        double apart = unit.fromSi(limits.most()) - unit.fromSi(limits.least());
        this.coarsest = apart > 0 ? apart / STEPS_APART : Double.MAX_VALUE;
    }

    /** The limits, if they can be written: from a finite number on, and lengths within what a length can be. */
    static Limits printable(Limits limits, Dimension dimension) {
        double furthest = dimension == Dimension.LENGTH ? LONGEST : Double.MAX_VALUE;
        boolean fine =
                Math.abs(limits.least()) <= furthest && (limits.most() <= furthest || dimension != Dimension.LENGTH);
        if (!fine) {
            throw new IllegalArgumentException("the limits of " + limits.name() + " are too wide for a form");
        }
        return limits;
    }

    /** {@code from 3/32 to 1 9/16 in}. */
    static String text(Limits limits, Dimension dimension, UnitSystem system) {
        String least = least(limits, dimension, system);
        if (limits.most() > Double.MAX_VALUE) {
            return "from " + least + " upwards";
        }
        String most = new Bounds(limits, dimension, system).end(limits.most(), false);
        return "from " + withoutUnit(least, most) + " to " + most;
    }

    /** The lower end with its unit. */
    static String least(Limits limits, Dimension dimension, UnitSystem system) {
        return new Bounds(limits, dimension, system).end(limits.least(), true);
    }

    private static String withoutUnit(String least, String most) {
        String unit = most.substring(most.lastIndexOf(' ') + 1);
        boolean same = most.indexOf(' ') > 0 && least.endsWith(" " + unit);
        return same ? least.substring(0, least.length() - unit.length() - 1) : least;
    }

    private String end(double si, boolean up) {
        if (dimension == Dimension.TIME) {
            return time(si, up);
        }
        double value = unit.fromSi(si);
        if (unit == Unit.INCH) {
            return inches(value, up) + " in";
        }
        String number = decimal(value, dimension == Dimension.LENGTH ? 4 : 3, up);
        return unit.sign().isEmpty() ? number : number + " " + unit.sign();
    }

    /** On a mark of the rule that is fine enough for the size; as a decimal where the marks are too far apart. */
    private String inches(double value, boolean up) {
        double most = Math.min(coarsest, Math.abs(value) / 20);
        double step = FINEST;
        while (step * 2 < most) {
            step *= 2;
        }
        double marked = steps(value, step, up) * step;
        boolean fair = Math.abs(marked - value) <= Math.abs(value) / 4 && step <= coarsest;
        String fraction = ShopRule.INCHES.text(Length.inches(marked));
        return fair ? fraction.substring(0, fraction.length() - " in".length()) : decimal(value, 2, up);
    }

    private String decimal(double value, int digits, boolean up) {
        if (value == 0) {
            return "0";
        }
        double step = Math.min(coarsest, Math.abs(value) / Math.pow(10, digits - 1));
        int power = (int) Math.floor(Math.log10(step) + A_HAIR);
        return BigDecimal.valueOf(steps(value, Math.pow(10, power), up))
                .scaleByPowerOfTen(power)
                .stripTrailingZeros()
                .toPlainString();
    }

    private String time(double seconds, boolean up) {
        for (Unit longer : List.of(Unit.YEAR, Unit.MONTH, Unit.WEEK)) {
            double value = longer.fromSi(seconds);
            if (value > 0.5 && Math.abs(value - Math.rint(value)) < A_HAIR) {
                return counted(BigDecimal.valueOf(Math.round(value)).toPlainString(), longer);
            }
        }
        return counted(decimal(Unit.DAY.fromSi(seconds), 3, up), Unit.DAY);
    }

    private static String counted(String number, Unit unit) {
        String sign = unit.sign();
        return number + " " + (number.equals("1") ? sign.substring(0, sign.length() - 1) : sign);
    }

    private static long steps(double value, double step, boolean up) {
        double steps = value / step;
        return (long) (up ? Math.ceil(steps - A_HAIR) : Math.floor(steps + A_HAIR));
    }
}
