package fairgrain.form;

/**
 * What happens when a key is left out.
 *
 * @param <V> what its value is read as
 */
sealed interface LeftOut<V> {
    /** The block is refused. */
    record Refused<V>() implements LeftOut<V> {}

    /** Leaving it out says something by itself, such as "there is none": nothing is assumed, so nothing is told. */
    record Meaning<V>(V value) implements LeftOut<V> {}

    /** It is read as if this had been typed, and the maker is told. */
    record Default<V>(String typed, String why) implements LeftOut<V> {}

    /** It is read as an empty block, whose own defaults are told. */
    record EmptyBlock<V>() implements LeftOut<V> {}
}
