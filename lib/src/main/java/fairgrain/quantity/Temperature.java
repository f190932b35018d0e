package fairgrain.quantity;

/**
 * A temperature of air or wood.
 *
 * @param kelvin [K]; within what people live and store wood in
 */
public record Temperature(double kelvin) implements Quantity {
    private static final double ZERO_CELSIUS = 273.15; // exact, by definition

    public static final Limits LIMITS = new Limits("temperature", 213.15, 373.15, "K");

    public Temperature {
        LIMITS.check(kelvin);
    }

    public static Temperature celsius(double celsius) {
        return new Temperature(celsius + ZERO_CELSIUS);
    }

    public static Temperature fahrenheit(double fahrenheit) {
        return celsius((fahrenheit - 32) / 1.8);
    }

    public double toCelsius() {
        return kelvin - ZERO_CELSIUS;
    }

    public double toFahrenheit() {
        return toCelsius() * 1.8 + 32;
    }

    @Override
    public double si() {
        return kelvin;
    }

    @Override
    public Dimension dimension() {
        return Dimension.TEMPERATURE;
    }
}
