package fairgrain.form;

import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Mass;
import fairgrain.quantity.MoistureContent;
import fairgrain.quantity.Quantity;
import fairgrain.quantity.RelativeHumidity;
import fairgrain.quantity.Temperature;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * One block of input, declared once. The same declaration reads design files, rows of tables and options of commands, refuses
 * what is wrong with its place and the nearest known key, and writes schema, reference page and starter file.
 *
 * <p>A form is made once and may then be read with any number of times.
 *
 * @param <T> what the block is read as
 */
public abstract class Form<T> implements Kind<T> {
    private final String name;
    private final String help;
    private final Map<String, Field<?>> fields = new LinkedHashMap<>();
    private @Nullable String naming;

    /**
     * A form without keys yet.
     *
     * @param name what the block is, such as {@code panel}; in messages and as heading of the reference
     * @param help one sentence on it
     */
    protected Form(String name, String help) {
        this.name = name;
        this.help = help;
    }

    /** Makes the thing of its values. May refuse by {@link IllegalArgumentException}, whose message goes to the maker. */
    protected abstract T build(Entries entries);

    // How keys are declared: each method adds one, and gives the field to get its value by.

    protected final <V> Field<V> field(String key, Kind<V> kind, String meaning) {
        if (fields.containsKey(key)) {
            throw new IllegalArgumentException("'" + key + "' is declared twice in " + name);
        }
        Field<V> field = Field.required(this, key, kind, meaning);
        fields.put(key, field);
        return field;
    }

    /** What the maker calls this block; messages call it so too. */
    protected final Field<String> name(String key, String meaning) {
        naming = key;
        return text(key, meaning);
    }

    protected final Field<String> text(String key, String meaning) {
        return field(key, Kinds.text(), meaning);
    }

    protected final Field<Integer> count(String key, int least, int most, String meaning) {
        return field(key, Kinds.count(least, most), meaning);
    }

    protected final Field<Length> length(String key, Limits limits, String meaning) {
        return field(key, Kinds.length(limits), meaning);
    }

    protected final Field<Mass> mass(String key, Limits limits, String meaning) {
        return field(key, Kinds.mass(limits), meaning);
    }

    protected final Field<Force> force(String key, Limits limits, String meaning) {
        return field(key, Kinds.force(limits), meaning);
    }

    protected final Field<Temperature> temperature(String key, Limits limits, String meaning) {
        return field(key, Kinds.temperature(limits), meaning);
    }

    protected final Field<MoistureContent> moisture(String key, Limits limits, String meaning) {
        return field(key, Kinds.moisture(limits), meaning);
    }

    protected final Field<RelativeHumidity> humidity(String key, Limits limits, String meaning) {
        return field(key, Kinds.humidity(limits), meaning);
    }

    protected final Field<Amount> amount(String key, Dimension dimension, Limits limits, String meaning) {
        return field(key, Kinds.amount(dimension, limits), meaning);
    }

    protected final Field<Boolean> yesNo(String key, String meaning) {
        return field(key, Kinds.yesNo(), meaning);
    }

    protected final <V> Field<V> choice(String key, List<V> values, Function<? super V, String> word, String meaning) {
        return field(key, Kinds.choice(values, word), meaning);
    }

    protected final <V> Field<V> named(String key, Finder<V> finder, String meaning) {
        return field(key, Kinds.named(key, finder), meaning);
    }

    /** A block inside this one. */
    protected final <V> Field<V> block(String key, Form<V> form, String meaning) {
        return field(key, form, meaning);
    }

    /** Several things; none if the key is left out. */
    protected final <V> Field<List<V>> list(String key, Kind<V> of, String meaning) {
        return field(key, Kinds.list(of), meaning).orElse(List.of());
    }

    /** Several things, at least one. */
    protected final <V> Field<List<V>> some(String key, Kind<V> of, String meaning) {
        return field(key, Kinds.some(of), meaning);
    }

    final <V> Field<V> replace(Field<V> field) {
        fields.put(field.key(), field);
        return field;
    }

    @Override
    public final @Nullable T read(Node node, Reading in) {
        if (!(node instanceof Node.Mapping block)) {
            in.refuseBlock(
                    node,
                    name,
                    "must be a block with the keys " + String.join(", ", keys()) + ", not " + Typed.shape(node)
                            + (node instanceof Node.Sequence ? ": take the '-' away" : ""));
            return null;
        }
        int before = in.count();
        MatchedKeys matched = new MatchedKeys(this, block, in);
        Map<String, Object> values = new HashMap<>();
        for (boolean first : new boolean[] {true, false}) {
            for (Field<?> field : fields.values()) {
                if ((field.first() != null) == first && !readField(field, block, matched, values, in) && first) {
                    return null;
                }
            }
        }
        if (in.count() > before) {
            return null;
        }
        try {
            return build(new Entries(block, values, in));
        } catch (IllegalArgumentException e) {
            in.refuseBlock(block, name, String.valueOf(e.getMessage()));
            return null;
        }
    }

    private <V> boolean readField(
            Field<V> field, Node.Mapping block, MatchedKeys matched, Map<String, Object> values, Reading in) {
        String key = field.key();
        Node.Entry entry = matched.entry(key);
        if (entry == null && matched.isSpokenOf(key)) {
            return false;
        }
        if (entry == null && field.isRequired()) {
            in.refuseBlock(block, name, "needs '" + key + "': " + field.help());
            return false;
        }
        in.enterKey(key);
        V value = entry == null ? leftOut(field, block.at(), in) : field.kind().read(entry.value(), in);
        in.leave();
        if (value == null) {
            return false;
        }
        values.put(key, value);
        BiConsumer<? super V, Reading> first = field.first();
        if (first != null) {
            first.accept(value, in);
        }
        return true;
    }

    private static <V> @Nullable V leftOut(Field<V> field, String at, Reading in) {
        if (field.leftOut() instanceof LeftOut.Meaning<V> meaning) {
            return meaning.value();
        }
        if (field.leftOut() instanceof LeftOut.Default<V> standard) {
            V value = field.kind().read(new Node.Scalar(at, standard.typed()), in);
            if (value != null) {
                in.take(value instanceof Quantity q ? in.rule().text(q) : standard.typed(), standard.why());
            }
            return value;
        }
        return field.kind().read(new Node.Mapping(at, List.of()), in);
    }

    /** What the block is. */
    public final String name() {
        return name;
    }

    /** One sentence on it. */
    public final String help() {
        return help;
    }

    /** All keys, as declared. */
    public final List<Field<?>> fields() {
        return List.copyOf(fields.values());
    }

    final List<String> keys() {
        return List.copyOf(fields.keySet());
    }

    final @Nullable Field<?> find(String key) {
        return fields.get(key);
    }

    /** The keys of blocks inside this one, each with the keys that lead to it, such as {@code groove depth}. */
    final List<String> paths() {
        List<String> paths = new ArrayList<>();
        for (Field<?> field : fields.values()) {
            Form<?> inside = blockIn(field.kind());
            if (inside != null) {
                inside.keys().forEach(key -> paths.add(field.key() + " " + key));
                inside.paths().forEach(path -> paths.add(field.key() + " " + path));
            }
        }
        return paths;
    }

    /** The key of the block that a path such as {@code groove depth} leads into; null if it leads nowhere. */
    final @Nullable String blockOf(String path) {
        for (Field<?> field : fields.values()) {
            Form<?> inside = path.startsWith(field.key() + " ") ? blockIn(field.kind()) : null;
            if (inside != null) {
                String rest = path.substring(field.key().length() + 1);
                if (inside.find(rest) != null || inside.blockOf(rest) != null) {
                    return field.key();
                }
            }
        }
        return null;
    }

    /** The form of a block that may stand here; null if none may. */
    static @Nullable Form<?> blockIn(Kind<?> kind) {
        return formIn(kind, false);
    }

    /** The form of a block, or of the entries of a list, that may stand here; null if neither may. */
    static @Nullable Form<?> formIn(Kind<?> kind) {
        return formIn(kind, true);
    }

    private static @Nullable Form<?> formIn(Kind<?> kind, boolean inLists) {
        if (kind instanceof Form<?> form) {
            return form;
        }
        if (kind instanceof ListKind<?> && !inLists) {
            return null;
        }
        for (Kind<?> inner : kind.inner()) {
            Form<?> form = formIn(inner, inLists);
            if (form != null) {
                return form;
            }
        }
        return null;
    }

    /** The name that the maker gave, or which one it is: {@code door 2}. */
    @Override
    public final String title(Node node, int number) {
        if (naming != null && node instanceof Node.Mapping block) {
            for (Node.Entry entry : block.entries()) {
                if (entry.key().text().equals(naming)
                        && entry.value() instanceof Node.Scalar called
                        && !called.text().isBlank()) {
                    String quoted = Typed.quoted(called.text().strip());
                    return quoted.substring(1, quoted.length() - 1);
                }
            }
        }
        return name + " " + number;
    }

    @Override
    public final List<Kind<?>> inner() {
        List<Kind<?>> kinds = new ArrayList<>();
        fields.values().forEach(field -> kinds.add(field.kind()));
        return kinds;
    }

    @Override
    public final String says() {
        return ("aeiou".indexOf(name.charAt(0)) < 0 ? "a " : "an ") + name + " block";
    }

    /** Points to its definition; {@link #jsonSchema()} writes the whole. */
    @Override
    public final Map<String, Object> schema() {
        return Schema.reference(this);
    }

    @Override
    public final String example() {
        return "{}";
    }

    /** JSON Schema (draft 2020-12) of an input whose root is this block. */
    public final String jsonSchema() {
        return Schema.of(this);
    }

    /** The reference in Markdown: a table for this block and each one inside it. */
    public final String reference() {
        return Reference.of(this);
    }

    /** A block of this form as YAML, each key with its meaning above it, as {@link #starter()} would comment it. */
    public final String written(Node.Mapping block) {
        return Written.of(this, block);
    }

    /** A commented file in YAML to start from. */
    public final String starter() {
        return Starter.of(this);
    }
}
