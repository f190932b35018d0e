package fairgrain.quantity;

/** A quantity that nobody mixes up often enough to need a type of its own: a stress, a moment, a time, a ratio. */
public record Amount(double si, Dimension dimension) implements Quantity {
    public Amount {
        Require.finite("amount", si, "SI (" + dimension + ")");
    }

    public static Amount of(double si, Dimension dimension) {
        return new Amount(si, dimension);
    }

    public static Amount ratio(double ratio) {
        return new Amount(ratio, Dimension.RATIO);
    }

    public static Amount count(double count) {
        return new Amount(count, Dimension.COUNT);
    }
}
