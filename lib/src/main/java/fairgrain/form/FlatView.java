package fairgrain.form;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Some keys of a large block laid flat, for a table of which each row is such a block, or for a command that asks one question.
 * Each column has a path of keys, such as {@code panel tongue length}. Where the first of them goes without saying, the column
 * goes by the rest as well: {@code tongue length}.
 */
public final class FlatView {
    private final Form<?> root;
    private final List<Part> parts = new ArrayList<>();
    private final Map<String, Column> columns = new LinkedHashMap<>();
    private final Map<String, Column> byName = new LinkedHashMap<>();

    /**
     * One column.
     *
     * @param names of which any may be used, the shortest first; the last is the whole path
     * @param needed whether each row must fill it in
     */
    public record Column(List<String> names, Field<?> field, boolean needed) {
        public Column {
            names = List.copyOf(names);
        }

        /** The keys that lead to it. */
        public String path() {
            return names.get(names.size() - 1);
        }

        /** What a text in it stands for, to be read by the kind of the field. */
        public Node node(String at, String text) {
            return FlatInput.value(field, new Node.Scalar(at, text, true));
        }
    }

    /** A key of the root; where it holds a list, the row is one entry of it. */
    private record Part(
            String before, Field<?> field, @Nullable Form<?> form, boolean list, List<String> paths) {}

    /** A column before it has its names. */
    private record Loose(List<String> keys, Field<?> field, boolean needed) {
        String path() {
            return String.join(" ", keys);
        }

        String rest() {
            return String.join(" ", keys.subList(1, keys.size()));
        }

        Loose behind(String before) {
            List<String> all = new ArrayList<>(before.isEmpty() ? List.of() : List.of(before));
            all.addAll(keys);
            return new Loose(List.copyOf(all), field, needed);
        }
    }

    /**
     * Lays out some keys of a block.
     *
     * @param keys of the root, and what stands before the columns of each: its own name, another, or nothing
     * @param unsaid keys that may be left out at the beginning of a path, unless another column is then called so
     */
    public FlatView(Form<?> root, Map<String, String> keys, Set<String> unsaid) {
        this.root = root;
        List<Loose> loose = new ArrayList<>();
        keys.forEach((key, before) -> {
            Field<?> field = root.find(key);
            if (field == null) {
                throw new IllegalArgumentException(root.name() + " has no key '" + key + "'");
            }
            Form<?> form = Form.formIn(field.kind());
            boolean list = form != null && Form.blockIn(field.kind()) == null;
            List<Loose> inside = new ArrayList<>();
            if (form == null) {
                loose.add(new Loose(List.of(key), field, field.isRequired()));
            } else {
                collect(form, List.of(), before.isEmpty() || field.isRequired(), inside);
            }
            inside.forEach(column -> loose.add(column.behind(before)));
            parts.add(new Part(
                    before, field, form, list, inside.stream().map(Loose::path).toList()));
        });
        loose.forEach(column -> add(new Column(List.of(column.path()), column.field(), column.needed())));
        Map<String, Loose> shorter = new LinkedHashMap<>();
        Set<String> twice = new HashSet<>(columns.keySet());
        for (Loose column : loose) {
            if (column.keys().size() > 1 && unsaid.contains(column.keys().get(0))) {
                if (shorter.put(column.rest(), column) != null) {
                    twice.add(column.rest());
                }
            }
        }
        shorter.forEach((rest, column) -> {
            if (!twice.contains(rest)) {
                add(new Column(List.of(rest, column.path()), column.field(), column.needed()));
            }
        });
    }

    private static void collect(Form<?> form, List<String> before, boolean needed, List<Loose> into) {
        for (Field<?> field : form.fields()) {
            List<String> keys = new ArrayList<>(before);
            keys.add(field.key());
            if (FlatInput.takesText(field.kind())) {
                into.add(new Loose(List.copyOf(keys), field, needed && field.isRequired()));
            }
            Form<?> inside = Form.blockIn(field.kind());
            if (inside != null) {
                collect(inside, keys, needed && field.isRequired() && field.kind() instanceof Form<?>, into);
            }
        }
    }

    private void add(Column column) {
        columns.put(column.path(), column);
        column.names().forEach(name -> byName.put(name, column));
    }

    /** All columns, in the order in which they are declared. */
    public Collection<Column> columns() {
        return List.copyOf(columns.values());
    }

    /** The column of a name; null if there is none. */
    public @Nullable Column column(String name) {
        return byName.get(name);
    }

    /** At most three names that may have been meant by one that is not known. */
    public List<String> nearest(String name) {
        return Nearest.several(name, byName.keySet(), 3);
    }

    /**
     * The block that the texts of some columns stand for.
     *
     * @param at where it stands
     * @param texts by name or path of the column; what is blank was left out
     * @throws IllegalArgumentException if a column is not known, or named in two ways
     */
    public Node.Mapping block(String at, Map<String, String> texts) {
        Map<String, Node.Entry> flat = new LinkedHashMap<>();
        texts.forEach((name, text) -> {
            Column column = byName.get(name);
            if (column == null) {
                throw new IllegalArgumentException("'" + name + "' is not a column");
            }
            if (!text.isBlank() && flat.put(column.path(), FlatInput.entry(at, column.path(), text)) != null) {
                throw new IllegalArgumentException("'" + column.path() + "' is given twice");
            }
        });
        List<Node.Entry> entries = new ArrayList<>();
        for (Part part : parts) {
            Node.Entry entry = entry(part, at, flat);
            if (entry != null) {
                entries.add(entry);
            }
        }
        return new Node.Mapping(at, entries);
    }

    private static Node.@Nullable Entry entry(Part part, String at, Map<String, Node.Entry> flat) {
        String key = part.field().key();
        if (part.form() == null) {
            Node.Entry given = flat.get(key);
            return given != null && given.value() instanceof Node.Scalar text
                    ? new Node.Entry(given.key(), FlatInput.value(part.field(), text))
                    : null;
        }
        List<Node.Entry> own = new ArrayList<>();
        for (String path : part.paths()) {
            Node.Entry given = flat.get(part.before().isEmpty() ? path : part.before() + " " + path);
            if (given != null) {
                own.add(new Node.Entry(new Node.Scalar(at, path), given.value()));
            }
        }
        if (own.isEmpty() && !part.before().isEmpty()) {
            return null;
        }
        Node block = new Node.Mapping(at, FlatInput.nested(part.form(), at, own));
        return new Node.Entry(new Node.Scalar(at, key), part.list() ? new Node.Sequence(at, List.of(block)) : block);
    }

    /** The block as YAML, each key with its meaning above it. */
    public String written(Node.Mapping block) {
        return root.written(block);
    }
}
