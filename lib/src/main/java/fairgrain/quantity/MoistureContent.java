package fairgrain.quantity;

/**
 * Mass of water in a piece of wood over its oven-dry mass.
 *
 * @param fraction 0.09 for 9 %; up to 2, since fresh wood can hold more than its own mass
 */
public record MoistureContent(double fraction) implements Quantity, Comparable<MoistureContent> {
    public static final Limits LIMITS = new Limits("moisture content", 0, 2, "(a fraction; 9 % is 0.09)");

    public MoistureContent {
        LIMITS.check(fraction);
    }

    public static MoistureContent percent(double percent) {
        return new MoistureContent(Require.between("moisture content", percent, 0, 200, "%") / 100);
    }

    public double toPercent() {
        return fraction * 100;
    }

    @Override
    public double si() {
        return fraction;
    }

    @Override
    public Dimension dimension() {
        return Dimension.MOISTURE;
    }

    @Override
    public int compareTo(MoistureContent other) {
        return Double.compare(fraction, other.fraction);
    }
}
