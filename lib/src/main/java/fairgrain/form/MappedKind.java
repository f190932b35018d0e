package fairgrain.form;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Another kind, its value made into something else. */
final class MappedKind<V, W> implements Kind<W> {
    private final Kind<V> from;
    private final Function<? super V, ? extends W> make;

    MappedKind(Kind<V> from, Function<? super V, ? extends W> make) {
        this.from = from;
        this.make = make;
    }

    @Override
    public @Nullable W read(Node node, Reading in) {
        V value = from.read(node, in);
        if (value == null) {
            return null;
        }
        try {
            return make.apply(value);
        } catch (IllegalArgumentException e) {
            in.refuse(node, String.valueOf(e.getMessage()));
            return null;
        }
    }

    @Override
    public String says() {
        return from.says();
    }

    @Override
    public Map<String, Object> schema() {
        return from.schema();
    }

    @Override
    public List<String> words() {
        return from.words();
    }

    @Override
    public String example() {
        return from.example();
    }

    @Override
    public List<Kind<?>> inner() {
        return List.of(from);
    }

    @Override
    public @Nullable String title(Node node, int number) {
        return from.title(node, number);
    }
}
