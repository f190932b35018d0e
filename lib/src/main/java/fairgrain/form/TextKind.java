package fairgrain.form;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One line of text. */
final class TextKind implements Kind<String> {
    private static final int LONGEST = 200;

    @Override
    public @Nullable String read(Node node, Reading in) {
        String text = Typed.text(node, says(), in);
        if (text == null) {
            return null;
        }
        if (text.isEmpty()) {
            in.refuse(node, "must not be empty");
            return null;
        }
        if (text.length() > LONGEST) {
            in.refuse(node, "must be at most " + LONGEST + " characters, but has " + text.length());
            return null;
        }
        if (text.codePoints().anyMatch(TextKind::breaksTheLine)) {
            in.refuse(node, "must be one line without control characters, but was " + Typed.quoted(text));
            return null;
        }
        return text;
    }

    private static boolean breaksTheLine(int c) {
        return Character.isISOControl(c) || c == 0x2028 || c == 0x2029;
    }

    @Override
    public String says() {
        return "text";
    }

    @Override
    public Map<String, Object> schema() {
        return JsonText.object("type", List.of("string", "number"), "minLength", 1, "maxLength", LONGEST);
    }

    @Override
    public String example() {
        return "your words";
    }
}
