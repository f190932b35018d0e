package fairgrain.moisture;

/** For printed fits that take degrees Celsius. */
final class Celsius {
    /** Exact, by definition. */
    private static final double ZERO = 273.15;

    private Celsius() {}

    static double of(double kelvin) {
        return kelvin - ZERO;
    }

    static double toKelvin(double celsius) {
        return celsius + ZERO;
    }
}
