package fairgrain.form;

import fairgrain.quantity.ShopRule;
import java.io.Reader;
import java.util.Map;

/** The values of one block, each read by its field, for {@link Form#build}. */
public final class Entries {
    private final Node.Mapping block;
    private final Map<String, Object> values;
    private final Reading in;

    Entries(Node.Mapping block, Map<String, Object> values, Reading in) {
        this.block = block;
        this.values = Map.copyOf(values);
        this.in = in;
    }

    @SuppressWarnings("unchecked") // the value of a key was read by the kind of its field
    public <V> V get(Field<V> field) {
        Object value = values.get(field.key());
        if (value == null) {
            throw new IllegalStateException("the form has no field '" + field.key() + "'");
        }
        return (V) value;
    }

    /** Tells that something was taken for a key that the block leaves out, worked out from the others. */
    public void take(Field<?> field, String value, String why) {
        in.enterKey(field.key());
        in.take(value, why);
        in.leave();
    }

    /** The part being read, as the maker calls it; empty outside of all parts. */
    public String part() {
        return in.part();
    }

    /** Where the block stands. */
    public String at() {
        return block.at();
    }

    /** A text that comes with the input, by the name the block gives it; whoever asks closes it. */
    public Reader enclosed(String name) {
        return in.enclosures().open(name);
    }

    /** How the shop of this input measures. */
    public ShopRule rule() {
        return in.rule();
    }
}
