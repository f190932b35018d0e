package fairgrain.quantity;

/** Guards that are true for good values only, so that NaN fails them. Each gives the value back. */
public final class Require {
    private Require() {}

    /**
     * A value within its limits, both included.
     *
     * @throws IllegalArgumentException if it is not; the message gives name, rule, unit and value
     */
    public static double between(String name, double value, double least, double most, String unit) {
        if (value >= least && value <= most) {
            return value;
        }
        throw new IllegalArgumentException(name + " must be from " + plain(least) + " to " + plain(most) + " " + unit
                + ", but was " + plain(value));
    }

    /** A finite value above zero. */
    public static double positive(String name, double value, String unit) {
        if (value > 0 && value <= Double.MAX_VALUE) {
            return value;
        }
        throw new IllegalArgumentException(name + " must be above 0 " + unit + ", but was " + plain(value));
    }

    /** A finite value of zero or more. */
    public static double notNegative(String name, double value, String unit) {
        if (value >= 0 && value <= Double.MAX_VALUE) {
            return value;
        }
        throw new IllegalArgumentException(name + " must be 0 " + unit + " or more, but was " + plain(value));
    }

    /** Any finite value. */
    public static double finite(String name, double value, String unit) {
        if (Math.abs(value) <= Double.MAX_VALUE) {
            return value;
        }
        throw new IllegalArgumentException(name + " must be a finite number of " + unit + ", but was " + value);
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e6
                ? Long.toString((long) value)
                : Double.toString(value);
    }
}
