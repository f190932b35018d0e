package fairgrain.form;

import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Input for the tests: each key stands on a line of its own, from line 1 on, as if it came from lakeside.yaml. */
public final class Given {
    private int line;

    private Given() {}

    /** Key, value, key, value ...; a value is a text, a list, another array of keys and values, or nothing (""). */
    public static Node.Mapping block(Object... keysAndValues) {
        return new Given().mapping(keysAndValues, 1);
    }

    static Node.Scalar scalar(String text) {
        return new Node.Scalar("lakeside.yaml:1:1", text);
    }

    public static Object[] in(Object... keysAndValues) {
        return keysAndValues;
    }

    /** A list of blocks. */
    public static List<Object> blocks(Object[]... blocks) {
        return List.<Object>copyOf(Arrays.asList(blocks));
    }

    public static Reading inInches() {
        return new Reading(ShopRule.INCHES);
    }

    static List<String> problems(Kind<?> kind, Node node) {
        return problems(kind, node, inInches());
    }

    static List<String> problems(Kind<?> kind, Node node, Reading in) {
        kind.read(node, in);
        return in.problems().stream().map(Problem::text).toList();
    }

    private Node.Mapping mapping(Object[] keysAndValues, int column) {
        String at = "lakeside.yaml:" + (line + 1) + ":" + column;
        List<Node.Entry> entries = new ArrayList<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            String key = (String) keysAndValues[i];
            line++;
            Node.Scalar where = new Node.Scalar("lakeside.yaml:" + line + ":" + column, key);
            entries.add(new Node.Entry(where, node(keysAndValues[i + 1], column + key.length() + 2)));
        }
        return new Node.Mapping(at, entries);
    }

    private Node node(Object value, int column) {
        String at = "lakeside.yaml:" + line + ":" + column;
        if (value instanceof Object[] inner) {
            return mapping(inner, 3);
        }
        if (value instanceof List<?> list) {
            List<Node> items = new ArrayList<>();
            for (Object item : list) {
                items.add(node(item, 5));
            }
            return new Node.Sequence(at, items);
        }
        return value.equals("") ? new Node.Nothing(at, "") : new Node.Scalar(at, (String) value);
    }
}
