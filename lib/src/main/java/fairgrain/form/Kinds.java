package fairgrain.form;

import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Mass;
import fairgrain.quantity.MoistureContent;
import fairgrain.quantity.RelativeHumidity;
import fairgrain.quantity.Temperature;
import java.util.List;
import java.util.function.Function;

/** Every kind of value that a form can ask for. */
public final class Kinds {
    private Kinds() {}

    /** One line of text. */
    public static Kind<String> text() {
        return new TextKind();
    }

    /** A whole number, both ends included. */
    public static Kind<Integer> count(int least, int most) {
        return new CountKind(least, most);
    }

    /** A length; a bare number takes the unit of the reading. */
    public static Kind<Length> length(Limits limits) {
        return new QuantityKind<>(Dimension.LENGTH, limits, Length::new);
    }

    /** What something weighs. */
    public static Kind<Mass> mass(Limits limits) {
        return new QuantityKind<>(Dimension.MASS, limits, Mass::new);
    }

    public static Kind<Force> force(Limits limits) {
        return new QuantityKind<>(Dimension.FORCE, limits, Force::new);
    }

    public static Kind<Temperature> temperature(Limits limits) {
        return new QuantityKind<>(Dimension.TEMPERATURE, limits, Temperature::new);
    }

    /** Moisture content in percent. */
    public static Kind<MoistureContent> moisture(Limits limits) {
        return new QuantityKind<>(Dimension.MOISTURE, limits, MoistureContent::new);
    }

    /** Relative humidity in percent. */
    public static Kind<RelativeHumidity> humidity(Limits limits) {
        return new QuantityKind<>(Dimension.HUMIDITY, limits, RelativeHumidity::new);
    }

    /** A number of any other dimension: a stress, a time, a ratio. */
    public static Kind<Amount> amount(Dimension dimension, Limits limits) {
        return new QuantityKind<>(dimension, limits, si -> Amount.of(si, dimension));
    }

    public static Kind<Boolean> yesNo() {
        return new YesNoKind();
    }

    /** One of several things, each with its word: {@code choice(List.of(UnitSystem.values()), UnitSystem::word)}. */
    public static <V> Kind<V> choice(List<V> values, Function<? super V, String> word) {
        return choice(values, word, value -> List.of());
    }

    /** The same, where a thing goes by other words too. */
    public static <V> Kind<V> choice(
            List<V> values, Function<? super V, String> word, Function<? super V, List<String>> also) {
        return new ChoiceKind<>(values, word, also);
    }

    /** A thing found by its name; the noun says what sort of thing, such as "wood". */
    public static <V> Kind<V> named(String noun, Finder<V> finder) {
        return new NamedKind<>(noun, finder);
    }

    /** Several things, or none. */
    public static <V> Kind<List<V>> list(Kind<V> of) {
        return new ListKind<>(of, false);
    }

    /** Several things, at least one. */
    public static <V> Kind<List<V>> some(Kind<V> of) {
        return new ListKind<>(of, true);
    }

    /** One way to write it where a plain value stands, another where a block or a list stands. */
    public static <V> Kind<V> either(Kind<? extends V> plain, Kind<? extends V> whole) {
        return new EitherKind<>(plain, whole);
    }

    /** A word with a meaning of its own, such as {@code unknown}; anything else is read as the other kind. */
    public static <V> Kind<V> wordOr(String word, V meaning, Kind<? extends V> otherwise) {
        return new WordOrKind<>(word, meaning, otherwise);
    }
}
