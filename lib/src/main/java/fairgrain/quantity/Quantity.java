package fairgrain.quantity;

/** A number that knows what it is. {@link ShopRule} writes it in the maker's units. */
public interface Quantity {
    /** The value in SI base units; moisture, humidity and ratios as fractions. */
    double si();

    Dimension dimension();
}
