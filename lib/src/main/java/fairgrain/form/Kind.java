package fairgrain.form;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * How one value is read, and what may stand there.
 *
 * @param <V> what it is read as
 */
public interface Kind<V> {
    /** The value; null if it was refused, with the reason in the reading. Never throws because of what stands there. */
    @Nullable
    V read(Node node, Reading in);

    /** What may stand there, for "must be ...": {@code a length from 1/4 to 2 in}. */
    String says();

    /** JSON Schema of it: an object of strings, numbers, booleans, lists and objects. */
    Map<String, Object> schema();

    /** Something that may stand there, for a starter file. */
    String example();

    /** The words that may stand there, where they are few enough to choose from. */
    default List<String> words() {
        return List.of();
    }

    /** The kinds that this one is made of. */
    default List<Kind<?>> inner() {
        return List.of();
    }

    /** What to call one of several such things; null if it is no part of its own, but a plain value. */
    default @Nullable String title(Node node, int number) {
        return null;
    }

    /** The same words, made into something else. {@code make} may refuse by {@link IllegalArgumentException}. */
    default <W> Kind<W> to(Function<? super V, ? extends W> make) {
        return new MappedKind<V, W>(this, make);
    }
}
