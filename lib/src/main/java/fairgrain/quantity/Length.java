package fairgrain.quantity;

/**
 * A length, which may be below zero (a gap already used up). Immutable, compared by value.
 *
 * @param metres the length [m]; below one kilometre, so that millimetres passed as metres are mostly caught
 */
public record Length(double metres) implements Quantity, Comparable<Length> {
    /** Exact, by definition of the inch. */
    public static final double METRES_PER_INCH = 0.0254;

    public static final Length ZERO = new Length(0);

    public Length {
        Require.between("length", metres, -1000, 1000, "m");
    }

    public static Length metres(double metres) {
        return new Length(metres);
    }

    public static Length mm(double millimetres) {
        return new Length(millimetres / 1000);
    }

    public static Length inches(double inches) {
        return new Length(inches * METRES_PER_INCH);
    }

    public double toMm() {
        return metres * 1000;
    }

    public double toInches() {
        return metres / METRES_PER_INCH;
    }

    public Length plus(Length other) {
        return new Length(metres + other.metres);
    }

    public Length minus(Length other) {
        return new Length(metres - other.metres);
    }

    public Length times(double factor) {
        return new Length(metres * factor);
    }

    @Override
    public double si() {
        return metres;
    }

    @Override
    public Dimension dimension() {
        return Dimension.LENGTH;
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(metres, other.metres);
    }
}
