package fairgrain.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads JSON and nothing else; double keys are refused. */
final class StrictJson {
    private final String text;
    private int at;

    private StrictJson(String text) {
        this.text = text;
    }

    static Object read(String text) {
        StrictJson json = new StrictJson(text);
        Object value = json.value();
        json.blanks();
        if (json.at != text.length()) {
            throw json.wrong("more text");
        }
        return value;
    }

    private Object value() {
        blanks();
        char c = peek();
        if (c == '{') {
            return object();
        }
        if (c == '[') {
            return list();
        }
        if (c == '"') {
            return string();
        }
        for (Object word : List.of(true, false)) {
            if (text.startsWith(word.toString(), at)) {
                at += word.toString().length();
                return word;
            }
        }
        return number();
    }

    private Map<String, Object> object() {
        Map<String, Object> object = new LinkedHashMap<>();
        expect('{');
        blanks();
        if (peek() != '}') {
            do {
                blanks();
                String key = string();
                blanks();
                expect(':');
                if (object.put(key, value()) != null) {
                    throw wrong("double key " + key);
                }
                blanks();
            } while (comma());
        }
        expect('}');
        return object;
    }

    private List<Object> list() {
        List<Object> list = new ArrayList<>();
        expect('[');
        blanks();
        if (peek() != ']') {
            do {
                list.add(value());
                blanks();
            } while (comma());
        }
        expect(']');
        return list;
    }

    private String string() {
        StringBuilder out = new StringBuilder();
        expect('"');
        while (peek() != '"') {
            char c = text.charAt(at++);
            if (c < ' ') {
                throw wrong("control character");
            }
            out.append(c == '\\' ? escaped() : c);
        }
        expect('"');
        return out.toString();
    }

    private char escaped() {
        char c = text.charAt(at++);
        if (c == 'u') {
            at += 4;
            return (char) Integer.parseInt(text.substring(at - 4, at), 16);
        }
        int which = "\"\\/nrt".indexOf(c);
        if (which < 0) {
            throw wrong("escape");
        }
        return "\"\\/\n\r\t".charAt(which);
    }

    private Double number() {
        int from = at;
        while (at < text.length() && "+-0123456789.eE".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        String number = text.substring(from, at);
        if (!number.matches("-?(0|[1-9]\\d*)(\\.\\d+)?([eE][+-]?\\d+)?")) {
            throw wrong("number '" + number + "'");
        }
        return Double.valueOf(number);
    }

    private boolean comma() {
        if (peek() != ',') {
            return false;
        }
        at++;
        return true;
    }

    private void expect(char c) {
        if (peek() != c) {
            throw wrong("no " + c);
        }
        at++;
    }

    private char peek() {
        if (at >= text.length()) {
            throw wrong("end");
        }
        return text.charAt(at);
    }

    private void blanks() {
        while (at < text.length() && " \n\r\t".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
    }

    private IllegalArgumentException wrong(String what) {
        return new IllegalArgumentException(what + " at " + at + " of " + text);
    }
}
