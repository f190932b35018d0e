package fairgrain.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Input that has no blocks inside blocks, a row of a table or the options of a command, made into the block that a form reads.
 * A column or option named by a path, such as {@code groove depth}, stands for the key {@code depth} in the block {@code
 * groove}. What is empty was left out. Several plain values stand in one cell with a semicolon between them: {@code 8; 24}.
 */
public final class FlatInput {
    private static final String SEPARATOR = ";";

    private FlatInput() {}

    /**
     * A row of a table.
     *
     * @param at the place of the row, such as {@code panels.csv:12}
     * @param cells heading and text of each cell
     */
    public static Node.Mapping row(Form<?> form, String at, Map<String, String> cells) {
        List<Node.Entry> flat = new ArrayList<>();
        cells.forEach((heading, cell) -> {
            if (!cell.isBlank()) {
                flat.add(entry(at, heading.strip(), cell));
            }
        });
        return new Node.Mapping(at, nested(form, at, flat));
    }

    /**
     * The options of a command: {@code --groove-depth} stands for {@code groove depth}.
     *
     * @param command its name, the place of what is missing
     * @param options name, without dashes before it, and text of each option given
     */
    public static Node.Mapping options(Form<?> form, String command, Map<String, String> options) {
        List<Node.Entry> flat = new ArrayList<>();
        options.forEach((name, text) -> flat.add(entry("--" + name, name.replace('-', ' '), text)));
        return new Node.Mapping(command, nested(form, command, flat));
    }

    /** Every column or option that a form knows, by its path. A list of blocks cannot be given in one, and is left out. */
    public static Map<String, Field<?>> paths(Form<?> form) {
        Map<String, Field<?>> paths = new LinkedHashMap<>();
        for (Field<?> field : form.fields()) {
            if (takesText(field.kind())) {
                paths.put(field.key(), field);
            }
            Form<?> inside = Form.blockIn(field.kind());
            if (inside != null) {
                paths(inside).forEach((path, inner) -> paths.putIfAbsent(field.key() + " " + path, inner));
            }
        }
        return paths;
    }

    static boolean takesText(Kind<?> kind) {
        boolean asItsInner = kind instanceof MappedKind<?, ?> || kind instanceof ListKind<?>;
        return asItsInner ? takesText(kind.inner().get(0)) : !(kind instanceof Form<?>);
    }

    private static boolean isList(Kind<?> kind) {
        return kind instanceof ListKind<?>
                || (kind instanceof MappedKind<?, ?> && isList(kind.inner().get(0)));
    }

    private static Node.Entry asWanted(Form<?> form, Node.Entry entry) {
        Field<?> field = form.find(entry.key().text());
        return field != null && entry.value() instanceof Node.Scalar text
                ? new Node.Entry(entry.key(), value(field, text))
                : entry;
    }

    /** The text as the field wants it: where that is a list of plain values, taken apart at its semicolons. */
    static Node value(Field<?> field, Node.Scalar text) {
        if (!isList(field.kind())) {
            return text;
        }
        List<Node> items = new ArrayList<>();
        for (String item : text.text().split(SEPARATOR, -1)) {
            items.add(new Node.Scalar(text.at(), item.strip(), true));
        }
        return new Node.Sequence(text.at(), items);
    }

    static Node.Entry entry(String at, String key, String text) {
        return new Node.Entry(new Node.Scalar(at, key), new Node.Scalar(at, text, true));
    }

    /** Entries whose key is a path are put into their blocks, which stand where the first of each stood. */
    static List<Node.Entry> nested(Form<?> form, String at, List<Node.Entry> flat) {
        List<Node.Entry> out = new ArrayList<>();
        List<String> blocks = new ArrayList<>();
        for (Node.Entry entry : flat) {
            String block = blockOf(form, entry);
            if (block == null) {
                out.add(asWanted(form, entry));
            } else if (!blocks.contains(block)) {
                blocks.add(block);
                out.add(block(form, block, flat));
            }
        }
        boolean allKnown = out.stream().allMatch(entry -> form.find(entry.key().text()) != null);
        for (Field<?> field : form.fields()) {
            // An empty block says which of its keys is missing, by a name that has a column. Not where a heading is
            // misspelt, which may have been meant for it.
            if (allKnown && field.isRequired() && field.kind() instanceof Form<?> && !isGiven(field.key(), out)) {
                out.add(new Node.Entry(new Node.Scalar(at, field.key()), new Node.Mapping(at, List.of())));
            }
        }
        return out;
    }

    private static boolean isGiven(String key, List<Node.Entry> entries) {
        return entries.stream().anyMatch(entry -> entry.key().text().equals(key));
    }

    private static Node.Entry block(Form<?> form, String key, List<Node.Entry> flat) {
        List<Node.Entry> inside = new ArrayList<>();
        for (Node.Entry entry : flat) {
            if (key.equals(blockOf(form, entry))) {
                String rest = entry.key().text().substring(key.length() + 1);
                inside.add(new Node.Entry(new Node.Scalar(entry.key().at(), rest), entry.value()));
            }
        }
        String at = inside.get(0).key().at();
        Field<?> field = form.find(key);
        Form<?> of = field == null ? null : Form.blockIn(field.kind());
        return new Node.Entry(
                new Node.Scalar(at, key), new Node.Mapping(at, of == null ? inside : nested(of, at, inside)));
    }

    /** The key of the block that an entry belongs into; null if its key stands by itself, or is not known. */
    private static @Nullable String blockOf(Form<?> form, Node.Entry entry) {
        String path = entry.key().text();
        return form.find(path) == null ? form.blockOf(path) : null;
    }
}
