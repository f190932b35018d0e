package fairgrain.quantity;

/**
 * What a thing weighs on a scale.
 *
 * @param kilograms [kg]
 */
public record Mass(double kilograms) implements Quantity {
    /** Exact, by definition of the pound. */
    public static final double KILOGRAMS_PER_POUND = 0.45359237;

    public Mass {
        Require.between("mass", kilograms, 0, 1e5, "kg");
    }

    public static Mass kilograms(double kilograms) {
        return new Mass(kilograms);
    }

    public static Mass pounds(double pounds) {
        return new Mass(pounds * KILOGRAMS_PER_POUND);
    }

    /** What it presses with, standing still. */
    public Force weight() {
        return new Force(kilograms * Force.STANDARD_GRAVITY);
    }

    public Mass plus(Mass other) {
        return new Mass(kilograms + other.kilograms);
    }

    @Override
    public double si() {
        return kilograms;
    }

    @Override
    public Dimension dimension() {
        return Dimension.MASS;
    }
}
