package fairgrain.form;

import fairgrain.quantity.Shown;
import org.jspecify.annotations.Nullable;

/** What was typed, taken from a node and repeated in messages. */
final class Typed {
    private Typed() {}

    /** The text of a scalar; anything else is refused. */
    static @Nullable String text(Node node, String says, Reading in) {
        if (node instanceof Node.Scalar scalar) {
            return scalar.text().strip();
        }
        in.refuse(node, "must be " + says + ", not " + shape(node));
        return null;
    }

    /** What kind of thing stands there, for a message. */
    static String shape(Node node) {
        if (node instanceof Node.Scalar scalar) {
            return quoted(scalar.text());
        }
        return node instanceof Node.Sequence ? "a list" : node instanceof Node.Mapping ? "a block of keys" : "nothing";
    }

    /** In quotes, on one line, cut short if it is long. */
    static String quoted(String text) {
        return Shown.quoted(text);
    }
}
