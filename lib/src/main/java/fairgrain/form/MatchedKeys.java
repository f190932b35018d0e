package fairgrain.form;

import fairgrain.quantity.Shown;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The entries of a block, matched with the keys of its form. Keys that are wrong, double or empty are refused here. One slip
 * gives one message: a key that was meant is not called missing as well.
 */
final class MatchedKeys {
    private static final Pattern AFTER_A_COMMA = Pattern.compile("\\d[\\d/ ]*( ?[^\\d\\s].*)?");
    private static final int COMMA_SHOWN = 30;
    private static final Pattern THOUSANDS = Pattern.compile("\\d{3}(\\D.*)?");

    private final Form<?> form;
    private final Reading in;
    private final Map<String, Node.Entry> found = new HashMap<>();
    private final Set<String> spokenOf = new HashSet<>();

    MatchedKeys(Form<?> form, Node.Mapping block, Reading in) {
        this.form = form;
        this.in = in;
        List<Node.Entry> entries = block.entries();
        for (int i = 0; i < entries.size() && !in.isFull(); i++) {
            Node.Entry next = i + 1 < entries.size() ? entries.get(i + 1) : null;
            if (next != null && isCommaSlip(entries.get(i), next)) {
                refuseComma(entries.get(i), next.key().text());
                i++;
            } else {
                match(entries.get(i));
            }
        }
    }

    /** The entry of a key; null if there is none that can be read. */
    Node.@Nullable Entry entry(String key) {
        return found.get(key);
    }

    /** Whether a message has been given about the key. */
    boolean isSpokenOf(String key) {
        return spokenOf.contains(key);
    }

    private void match(Node.Entry entry) {
        String key = entry.key().text();
        if (form.find(key) == null) {
            refuseUnknown(entry.key());
            return;
        }
        Node.Entry before = found.get(key);
        if (before != null || spokenOf.contains(key)) {
            in.report(
                    entry.key().at(),
                    "'" + key + "' stands twice in " + form.name()
                            + (before == null
                                    ? ""
                                    : "; first at " + before.key().at()));
        } else if (entry.value() instanceof Node.Nothing nothing) {
            in.report(entry.key().at(), Missing.nothingAfter(key, nothing));
            spokenOf.add(key);
        } else {
            found.put(key, entry);
        }
    }

    private void refuseUnknown(Node.Scalar key) {
        String typed = key.text();
        String wrong = Typed.quoted(typed) + " is not a key of " + form.name();
        String keys = "keys: " + String.join(", ", form.keys());
        String block = form.blockOf(typed);
        String near = Nearest.of(typed, form.keys());
        String inside = Nearest.of(typed, form.paths());
        if (block != null) {
            wrong += "; write '" + typed.substring(block.length() + 1) + "' inside '" + block + "'";
            spokenOf.add(block);
        } else if (near != null) {
            wrong += Listed.didYouMean(List.of(near)) + " " + keys;
            spokenOf.add(near);
        } else if (inside != null) {
            wrong += Listed.didYouMean(List.of(inside)) + " " + keys;
            spokenOf.add(String.valueOf(form.blockOf(inside)));
        } else {
            wrong += "; " + keys;
        }
        in.report(key.at(), wrong);
    }

    /** {@code width: 11,5} between braces: YAML takes the comma to end the entry, and 5 for the next key. */
    private boolean isCommaSlip(Node.Entry entry, Node.Entry next) {
        return entry.value() instanceof Node.Scalar value
                && !value.quoted()
                && !value.text().isEmpty()
                && Character.isDigit(value.text().charAt(value.text().length() - 1))
                && next.value() instanceof Node.Nothing
                && form.find(next.key().text()) == null
                && AFTER_A_COMMA.matcher(next.key().text()).matches();
    }

    private void refuseComma(Node.Entry entry, String behind) {
        String key = entry.key().text();
        String begun = Shown.cut(((Node.Scalar) entry.value()).text(), COMMA_SHOWN);
        String rest = Shown.cut(behind, COMMA_SHOWN);
        String point = "write " + begun + "." + rest + " with a point";
        in.report(
                entry.value().at(),
                key + ": "
                        + (THOUSANDS.matcher(behind).matches()
                                ? "write " + begun + rest + " without a comma, or " + begun + "." + rest
                                        + " with a point"
                                : point));
        spokenOf.add(key);
    }
}
