package fairgrain.quantity;

/**
 * A push or a pull.
 *
 * @param newtons [N]
 */
public record Force(double newtons) implements Quantity {
    /** Metres per second squared, exact, by convention. */
    public static final double STANDARD_GRAVITY = 9.80665;

    /** The weight of one pound. */
    public static final double NEWTONS_PER_POUND = Mass.KILOGRAMS_PER_POUND * STANDARD_GRAVITY;

    public Force {
        Require.between("force", newtons, -1e7, 1e7, "N");
    }

    public static Force newtons(double newtons) {
        return new Force(newtons);
    }

    public static Force pounds(double pounds) {
        return new Force(pounds * NEWTONS_PER_POUND);
    }

    public double toPounds() {
        return newtons / NEWTONS_PER_POUND;
    }

    @Override
    public double si() {
        return newtons;
    }

    @Override
    public Dimension dimension() {
        return Dimension.FORCE;
    }
}
