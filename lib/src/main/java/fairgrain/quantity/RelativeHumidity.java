package fairgrain.quantity;

/**
 * Water vapour in air over the most it can hold at its temperature.
 *
 * @param fraction 0.45 for 45 %
 */
public record RelativeHumidity(double fraction) implements Quantity {
    public static final Limits LIMITS = new Limits("relative humidity", 0, 1, "(a fraction; 45 % is 0.45)");

    public RelativeHumidity {
        LIMITS.check(fraction);
    }

    public static RelativeHumidity percent(double percent) {
        return new RelativeHumidity(Require.between("relative humidity", percent, 0, 100, "%") / 100);
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
        return Dimension.HUMIDITY;
    }
}
