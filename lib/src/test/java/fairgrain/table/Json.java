package fairgrain.table;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A strict reader of JSON, as much as the package description needs. No null: nothing there has one. */
final class Json {
    private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][+-]?[0-9]+)?");
    private static final int DEEPEST = 20;

    private final String text;
    private int at;
    private int depth;

    private Json(String text) {
        this.text = text;
    }

    /** A map, list, string, BigDecimal or boolean. */
    static Object parse(String text) {
        Json json = new Json(text);
        Object value = json.value();
        json.space();
        if (json.at < text.length()) {
            throw json.wrong("nothing more");
        }
        return value;
    }

    private Object value() {
        space();
        if (++depth > DEEPEST) {
            throw wrong("at most " + DEEPEST + " levels");
        }
        char c = peek();
        Object value = switch (c) {
            case '{' -> object();
            case '[' -> array();
            case '"' -> string();
            case 't' -> word("true", true);
            case 'f' -> word("false", false);
            default -> number();
        };
        depth--;
        return value;
    }

    private Map<String, Object> object() {
        Map<String, Object> members = new LinkedHashMap<>();
        take('{');
        space();
        if (peek() == '}') {
            take('}');
            return members;
        }
        do {
            space();
            String key = string();
            space();
            take(':');
            if (members.putIfAbsent(key, value()) != null) {
                throw wrong("key '" + key + "' once");
            }
            space();
        } while (more('}'));
        return members;
    }

    private List<Object> array() {
        List<Object> items = new ArrayList<>();
        take('[');
        space();
        if (peek() == ']') {
            take(']');
            return items;
        }
        do {
            items.add(value());
            space();
        } while (more(']'));
        return items;
    }

    private boolean more(char end) {
        if (peek() == end) {
            at++;
            return false;
        }
        take(',');
        return true;
    }

    private String string() {
        take('"');
        StringBuilder found = new StringBuilder();
        while (peek() != '"') {
            char c = text.charAt(at++);
            if (c < ' ') {
                throw wrong("no control character in a string");
            }
            found.append(c == '\\' ? escaped() : c);
        }
        at++;
        return found.toString();
    }

    private char escaped() {
        char c = peek();
        at++;
        return switch (c) {
            case '"', '\\', '/' -> c;
            case 'n' -> '\n';
            case 't' -> '\t';
            default -> throw wrong("one of the escapes \\\" \\\\ \\/ \\n \\t");
        };
    }

    private Object word(String word, boolean value) {
        if (!text.startsWith(word, at)) {
            throw wrong(word);
        }
        at += word.length();
        return value;
    }

    private BigDecimal number() {
        Matcher found = NUMBER.matcher(text).region(at, text.length());
        if (!found.lookingAt()) {
            throw wrong("a value");
        }
        at = found.end();
        return new BigDecimal(found.group());
    }

    private void space() {
        while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
    }

    private char peek() {
        if (at >= text.length()) {
            throw wrong("more text");
        }
        return text.charAt(at);
    }

    private void take(char c) {
        if (peek() != c) {
            throw wrong("'" + c + "'");
        }
        at++;
    }

    private IllegalArgumentException wrong(String expected) {
        long line = 1
                + text.substring(0, Math.min(at, text.length()))
                        .chars()
                        .filter(c -> c == '\n')
                        .count();
        return new IllegalArgumentException("line " + line + ": expected " + expected);
    }
}
