package fairgrain.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes JSON: objects as maps with string keys, lists, strings, whole numbers and finite decimals, true and false. */
public final class JsonText {
    private JsonText() {}

    /** An object whose keys stand in the order given: key, value, key, value ... */
    public static Map<String, Object> object(Object... keysAndValues) {
        Map<String, Object> object = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            object.put((String) keysAndValues[i], keysAndValues[i + 1]);
        }
        return object;
    }

    /** The text of a value, with two blanks for each level. */
    public static String of(Object value) {
        StringBuilder out = new StringBuilder();
        write(value, "\n", out);
        return out.toString();
    }

    private static void write(Object value, String newLine, StringBuilder out) {
        if (value instanceof Map<?, ?> object) {
            String inner = newLine + "  ";
            String before = inner;
            out.append('{');
            for (Map.Entry<?, ?> entry : object.entrySet()) {
                out.append(before).append(quoted((String) entry.getKey())).append(": ");
                write(entry.getValue(), inner, out);
                before = "," + inner;
            }
            out.append(object.isEmpty() ? "}" : newLine + "}");
        } else if (value instanceof List<?> list) {
            boolean spread = list.stream().anyMatch(item -> item instanceof Map);
            String inner = newLine + "  ";
            String before = spread ? inner : "";
            out.append('[');
            for (Object item : list) {
                out.append(before);
                write(item, spread ? inner : newLine, out);
                before = spread ? "," + inner : ", ";
            }
            out.append(spread ? newLine : "");
            out.append(']');
        } else if (value instanceof String text) {
            out.append(quoted(text));
        } else if (value instanceof Integer || value instanceof Long || value instanceof Boolean) {
            out.append(value);
        } else if (value instanceof Double number && Math.abs(number) <= Double.MAX_VALUE) {
            out.append(number);
        } else {
            throw new IllegalArgumentException("JSON has no way to write " + value);
        }
    }

    /** A string in quotes. */
    public static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\n' -> out.append("\\n");
                case '\r' -> out.append("\\r");
                case '\t' -> out.append("\\t");
                default -> {
                    if (Character.isISOControl(c) || c == '\u2028' || c == '\u2029' || halfOfNothing(text, i)) {
                        String hex = Integer.toHexString(c);
                        out.append("\\u").append("0".repeat(4 - hex.length())).append(hex);
                    } else {
                        out.append(c);
                    }
                }
            }
        }
        return out.append('"').toString();
    }

    /** Half a character outside of the basic plane, the other half of which is missing: no file can hold it as it is. */
    private static boolean halfOfNothing(String text, int at) {
        char c = text.charAt(at);
        boolean paired = Character.isHighSurrogate(c)
                ? at + 1 < text.length() && Character.isLowSurrogate(text.charAt(at + 1))
                : at > 0 && Character.isHighSurrogate(text.charAt(at - 1));
        return Character.isSurrogate(c) && !paired;
    }
}
