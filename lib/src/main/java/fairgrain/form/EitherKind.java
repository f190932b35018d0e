package fairgrain.form;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A plain value, or a block or list for those who know more. */
final class EitherKind<V> implements Kind<V> {
    private final Kind<? extends V> plain;
    private final Kind<? extends V> whole;

    EitherKind(Kind<? extends V> plain, Kind<? extends V> whole) {
        this.plain = plain;
        this.whole = whole;
    }

    @Override
    public @Nullable V read(Node node, Reading in) {
        return node instanceof Node.Scalar ? plain.read(node, in) : whole.read(node, in);
    }

    @Override
    public String says() {
        return plain.says() + ", or " + whole.says();
    }

    @Override
    public Map<String, Object> schema() {
        return JsonText.object("anyOf", List.of(plain.schema(), whole.schema()));
    }

    @Override
    public List<String> words() {
        return plain.words();
    }

    @Override
    public String example() {
        return plain.example();
    }

    @Override
    public List<Kind<?>> inner() {
        return List.of(plain, whole);
    }

    @Override
    public @Nullable String title(Node node, int number) {
        return node instanceof Node.Scalar ? plain.title(node, number) : whole.title(node, number);
    }
}
