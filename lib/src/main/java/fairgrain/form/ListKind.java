package fairgrain.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Several things of one kind. */
final class ListKind<V> implements Kind<List<V>> {
    private final Kind<V> of;
    private final boolean some;

    ListKind(Kind<V> of, boolean some) {
        this.of = of;
        this.some = some;
    }

    @Override
    public @Nullable List<V> read(Node node, Reading in) {
        if (!(node instanceof Node.Sequence list)) {
            in.refuse(
                    node,
                    "must be a list: put a '-' before " + (node instanceof Node.Mapping ? "it" : Typed.shape(node)));
            return null;
        }
        int before = in.count();
        List<V> values = new ArrayList<>();
        int number = 0;
        for (Node item : list.items()) {
            if (in.isFull()) {
                break;
            }
            V value = item(item, ++number, in);
            if (value != null) {
                values.add(value);
            }
        }
        if (some && list.items().isEmpty()) {
            in.refuse(node, "must have at least one entry");
        }
        return in.count() == before ? List.copyOf(values) : null;
    }

    private @Nullable V item(Node node, int number, Reading in) {
        String title = of.title(node, number);
        if (title == null) {
            in.enterKey("entry " + number);
        } else {
            in.enterPart(title);
        }
        try {
            if (node instanceof Node.Nothing nothing) {
                in.refuse(nothing, Missing.nothingAfter("-", nothing));
                return null;
            }
            return of.read(node, in);
        } finally {
            in.leave();
        }
    }

    @Override
    public String says() {
        return "a list, each entry " + of.says();
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> schema = JsonText.object("type", "array", "items", of.schema());
        if (some) {
            schema.put("minItems", 1);
        }
        return schema;
    }

    @Override
    public List<String> words() {
        return of.words();
    }

    @Override
    public String example() {
        return "[" + of.example() + "]";
    }

    @Override
    public List<Kind<?>> inner() {
        return List.of(of);
    }
}
