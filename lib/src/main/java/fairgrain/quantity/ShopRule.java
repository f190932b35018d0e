package fairgrain.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * How one shop reads, rounds and writes numbers.
 *
 * @param system inches with fractions, or millimetres
 * @param step the finest mark the maker works to; sizes to act on are rounded to it
 */
public record ShopRule(UnitSystem system, Length step) {
    /** Thirty-seconds of an inch. */
    public static final ShopRule INCHES = new ShopRule(UnitSystem.INCHES, Length.inches(1 / 32.0));

    /** Half millimetres. */
    public static final ShopRule MILLIMETRES = new ShopRule(UnitSystem.MILLIMETRES, Length.mm(0.5));

    private static final double A_HAIR = 1e-6; // of a step: what stands on a mark but for rounding stays on it
    private static final int FINEST = 64;
    private static final double FAR = 1000; // a ratio that stands for any that is far too much
    private static final double HALF_A_THOUSANDTH = 0.0005 + 1e-9; // in, and a hair

    public ShopRule {
        Require.between("shop step", step.metres(), 1e-5, 0.1, "m");
    }

    public static ShopRule of(UnitSystem system) {
        return system == UnitSystem.INCHES ? INCHES : MILLIMETRES;
    }

    /** The next mark at or above. */
    public Length up(Length length) {
        return mark(Math.ceil(length.metres() / step.metres() - A_HAIR));
    }

    /** The next mark at or below. */
    public Length down(Length length) {
        return mark(Math.floor(length.metres() / step.metres() + A_HAIR));
    }

    /** The nearest mark. */
    public Length nearest(Length length) {
        return mark(Math.rint(length.metres() / step.metres()));
    }

    private Length mark(double number) {
        return new Length(number == 0 ? 0 : number * step.metres()); // never minus zero
    }

    /** A length read as this shop means it: a bare number takes this shop's unit. */
    public Length length(String text) {
        return ShopNumber.length(text, system);
    }

    /**
     * The number with its unit. A length on a 64th of an inch is written as a fraction; any other below one inch in
     * thousandths, above it as the nearest 64th. Other numbers carry three digits.
     */
    public String text(Quantity quantity) {
        Unit unit = system.unit(quantity.dimension());
        double value = unit.fromSi(quantity.si());
        return switch (quantity.dimension()) {
            case LENGTH -> system == UnitSystem.INCHES ? inches(value) : millimetres(value);
            case MOISTURE, HUMIDITY -> rounded(value, 1) + " %";
            case TEMPERATURE -> rounded(value, 0) + " " + unit.sign();
            case TIME -> time(quantity.si());
            case RATIO -> value < FAR ? digits(value, 3) : "over 999"; // by then only that it is far too much
            case COUNT -> digits(value, 4);
            default -> digits(value, 3) + " " + unit.sign();
        };
    }

    private static String inches(double value) {
        double marks = value * FINEST;
        double thousandths = Math.rint(value * 1000) / 1000;
        boolean onMark = Math.abs(thousandths - Math.rint(marks) / FINEST) <= HALF_A_THOUSANDTH;
        if (!onMark && Math.abs(value) < 1) {
            return rounded(thousandths, 3) + " in";
        }
        long n = Math.round(Math.abs(marks));
        long whole = n / FINEST;
        long over = n % FINEST;
        long under = FINEST;
        while (over > 0 && over % 2 == 0) {
            over /= 2;
            under /= 2;
        }
        String size = over == 0 ? whole + "" : (whole == 0 ? "" : whole + " ") + over + "/" + under;
        return (value < 0 && n > 0 ? "-" : "") + size + " in";
    }

    private static String millimetres(double value) {
        return rounded(value, Math.abs(value) < 1 ? 2 : 1) + " mm";
    }

    private static String time(double seconds) {
        double days = Unit.DAY.fromSi(seconds);
        if (days < 14) {
            return counted(days, "day");
        }
        if (days < 90) {
            return counted(days / 7, "week");
        }
        return days < 730 ? counted(Unit.MONTH.fromSi(seconds), "month") : counted(Unit.YEAR.fromSi(seconds), "year");
    }

    private static String counted(double number, String unit) {
        String text = rounded(number, 0);
        return text + " " + unit + (text.equals("1") ? "" : "s");
    }

    /** With so many places behind the point at most. */
    private static String rounded(double value, int places) {
        return plain(BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_EVEN));
    }

    /** With so many digits in all, but never fewer than stand before the point. */
    private static String digits(double value, int digits) {
        BigDecimal exact = BigDecimal.valueOf(value);
        return Math.abs(value) >= Math.pow(10, digits)
                ? plain(exact.setScale(0, RoundingMode.HALF_EVEN))
                : plain(exact.round(new MathContext(digits, RoundingMode.HALF_EVEN)));
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}
