package fairgrain.quantity;

/** All sizes that will do, from the least to the most; empty where the least lies above the most. */
public record Window(Length least, Length most) {
    public boolean isEmpty() {
        return least.compareTo(most) > 0;
    }

    public boolean contains(Length size) {
        return least.compareTo(size) <= 0 && size.compareTo(most) <= 0;
    }

    public Length middle() {
        return least.plus(most).times(0.5);
    }
}
