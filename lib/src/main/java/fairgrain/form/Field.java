package fairgrain.form;

import java.util.Optional;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/**
 * One key of a form. Required, unless one of the methods here says what happens when it is left out. Each gives a new field,
 * which takes the place of the one it was made from; keep the last.
 *
 * @param <V> what its value is read as
 */
public final class Field<V> {
    private final Form<?> form;
    private final String key;
    private final Kind<V> kind;
    private final String help;
    private final LeftOut<V> leftOut;
    private final @Nullable String example;
    private final @Nullable BiConsumer<? super V, Reading> first;

    private Field(
            Form<?> form,
            String key,
            Kind<V> kind,
            String help,
            LeftOut<V> leftOut,
            @Nullable String example,
            @Nullable BiConsumer<? super V, Reading> first) {
        this.form = form;
        this.key = key;
        this.kind = kind;
        this.help = help;
        this.leftOut = leftOut;
        this.example = example;
        this.first = first;
    }

    static <V> Field<V> required(Form<?> form, String key, Kind<V> kind, String help) {
        return new Field<>(form, key, kind, help, new LeftOut.Refused<>(), null, null);
    }

    /** If left out, this is taken, written as a maker would type it but with its unit, and told with the reason. */
    public Field<V> or(String typed, String why) {
        return with(new LeftOut.Default<>(typed, why));
    }

    /** If left out, this is meant, and nothing need be told: that a list is empty, say. */
    public Field<V> orElse(V meaning) {
        return with(new LeftOut.Meaning<>(meaning));
    }

    /** If left out, the block is read as an empty one, each key of which has a default. */
    public Field<V> orDefaults() {
        return with(new LeftOut.EmptyBlock<>());
    }

    /** May be left out; its value is then empty. */
    public Field<Optional<V>> optional() {
        return form.replace(new Field<Optional<V>>(
                form, key, kind.to(Optional::of), help, new LeftOut.Meaning<>(Optional.empty()), example, null));
    }

    /** What the starter file shows. */
    public Field<V> example(String typed) {
        return form.replace(new Field<>(form, key, kind, help, leftOut, typed, first));
    }

    /**
     * Read before all other keys, wherever it stands, and handed over at once: what the others mean hangs on it. Several are
     * read in the order of their declaration. If it is refused, nothing else of the block is read.
     */
    public Field<V> first(BiConsumer<? super V, Reading> then) {
        return form.replace(new Field<>(form, key, kind, help, leftOut, example, then));
    }

    private Field<V> with(LeftOut<V> other) {
        return form.replace(new Field<>(form, key, kind, help, other, example, first));
    }

    public String key() {
        return key;
    }

    public Kind<V> kind() {
        return kind;
    }

    /** What it means, in a few words. */
    public String help() {
        return help;
    }

    public boolean isRequired() {
        return leftOut instanceof LeftOut.Refused;
    }

    LeftOut<V> leftOut() {
        return leftOut;
    }

    @Nullable
    String example() {
        return example;
    }

    @Nullable
    BiConsumer<? super V, Reading> first() {
        return first;
    }
}
