package fairgrain.quantity;

/**
 * What a workshop could mean by one number: wide, but narrow enough to catch millimetres passed as metres. The guard of a
 * record and the field of a form read the same one.
 *
 * @param name what the number is, as the maker calls it
 * @param least the least value allowed, SI
 * @param most the greatest value allowed, SI
 * @param unit the SI unit
 */
public record Limits(String name, double least, double most, String unit) {
    public Limits {
        if (!(least <= most)) {
            throw new IllegalArgumentException("limits of " + name + " are upside down: " + least + " to " + most);
        }
    }

    /** The value, if it is within the limits. */
    public double check(double value) {
        return Require.between(name, value, least, most, unit);
    }

    /** The quantity, if it is within the limits. */
    public <Q extends Quantity> Q check(Q quantity) {
        check(quantity.si());
        return quantity;
    }

    public boolean allow(double value) {
        return value >= least && value <= most;
    }
}
