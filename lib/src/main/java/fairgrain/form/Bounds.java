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
    private static final double THOUSANDTH = 1 / 1000.0; // in

    private Bounds() {}

    /** {@code from 3/32 to 1 9/16 in}. */
    static String text(Limits limits, Dimension dimension, UnitSystem system) {
        String least = end(limits.least(), true, dimension, system);
        if (limits.most() > Double.MAX_VALUE) {
            return "from " + least + " upwards";
        }
        String most = end(limits.most(), false, dimension, system);
        return "from " + withoutUnit(least, most) + " to " + most;
    }

    private static String withoutUnit(String least, String most) {
        String unit = most.substring(most.lastIndexOf(' ') + 1);
        boolean same = most.indexOf(' ') > 0 && least.endsWith(" " + unit);
        return same ? least.substring(0, least.length() - unit.length() - 1) : least;
    }

    /** One end, with its unit. */
    static String end(double si, boolean up, Dimension dimension, UnitSystem system) {
        if (dimension == Dimension.TIME) {
            return time(si, up);
        }
        Unit unit = system.unit(dimension);
        double value = unit.fromSi(si);
        if (unit == Unit.INCH) {
            return ShopRule.INCHES.text(Length.inches(inches(value, up)));
        }
        return decimal(value, dimension == Dimension.LENGTH ? 4 : 3, up)
                + (unit.sign().isEmpty() ? "" : " " + unit.sign());
    }

    /** On a mark of the rule that is fine enough for the size; below the marks, in thousandths. */
    private static double inches(double value, boolean up) {
        double step = FINEST;
        while (step * 2 < Math.abs(value) / 20) {
            step *= 2;
        }
        double marked = steps(value, step, up) * step;
        boolean fair = Math.abs(marked - value) <= Math.abs(value) / 4;
        return fair ? marked : steps(value, THOUSANDTH, up) * THOUSANDTH;
    }

    private static String decimal(double value, int digits, boolean up) {
        if (value == 0) {
            return "0";
        }
        int power = (int) Math.floor(Math.log10(Math.abs(value)) + A_HAIR) - digits + 1;
        long steps = steps(value, Math.pow(10, power), up);
        return BigDecimal.valueOf(steps)
                .scaleByPowerOfTen(power)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String time(double seconds, boolean up) {
        for (Unit unit : List.of(Unit.YEAR, Unit.MONTH, Unit.WEEK)) {
            double value = unit.fromSi(seconds);
            if (value > 0.5 && Math.abs(value - Math.rint(value)) < A_HAIR) {
                return counted(decimal(value, 3, up), unit);
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
