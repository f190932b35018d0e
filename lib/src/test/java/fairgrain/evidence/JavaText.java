package fairgrain.evidence;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The text of a Java file without its comments, taken apart as far as the ledger needs it. */
final class JavaText {
    private static final Pattern ANNOTATION = Pattern.compile("\\s*@\\w+\\s*");
    private static final Pattern FIELD = Pattern.compile("(\\w+)\\s*=");
    private static final Pattern METHOD = Pattern.compile("(\\w+)\\s*\\(");

    private final String code;

    JavaText(String source) {
        code = withoutComments(source);
    }

    String code() {
        return code;
    }

    /** Fields and methods by name, each with its annotations and its body; methods of one name one after the other. */
    Map<String, String> members() {
        Map<String, String> members = new LinkedHashMap<>();
        int start = code.indexOf('{', Math.max(0, typeStarts())) + 1;
        int at = start;
        while (start > 0 && at < code.length()) {
            char c = code.charAt(at);
            if (c == '"' || c == '\'') {
                at = afterLiteral(code, at);
            } else if (c == '(') {
                at = matching(code, at) + 1;
            } else if (c == '{') {
                at = matching(code, at) + 1;
                if (!code.substring(at).stripLeading().startsWith(";")) {
                    put(members, code.substring(start, at));
                    start = at;
                }
            } else if (c == ';') {
                at++;
                put(members, code.substring(start, at));
                start = at;
            } else {
                at++;
            }
        }
        return members;
    }

    private int typeStarts() {
        Matcher type =
                Pattern.compile("\\b(?:class|record|enum|interface) \\w+").matcher(code);
        return type.find() ? type.start() : code.length();
    }

    private static void put(Map<String, String> members, String member) {
        String declared = withoutAnnotations(member);
        Matcher field = FIELD.matcher(declared);
        Matcher method = METHOD.matcher(declared);
        boolean isField = field.find();
        boolean isMethod = method.find();
        if (isField && (!isMethod || field.start() < method.start())) {
            members.merge(field.group(1), member, String::concat);
        } else if (isMethod) {
            members.merge(method.group(1), member, String::concat);
        }
    }

    private static String withoutAnnotations(String member) {
        Matcher annotation = ANNOTATION.matcher(member);
        int at = 0;
        while (annotation.region(at, member.length()).lookingAt()) {
            at = annotation.end();
            if (member.charAt(at) == '(') {
                at = matching(member, at) + 1;
            }
        }
        return member.substring(at);
    }

    /** The place of the bracket that closes the one at {@code open}. */
    static int matching(String text, int open) {
        int depth = 0;
        int at = open;
        while (at < text.length()) {
            char c = text.charAt(at);
            if (c == '"' || c == '\'') {
                at = afterLiteral(text, at);
                continue;
            }
            if (c == '{' || c == '(') {
                depth++;
            } else if (c == '}' || c == ')') {
                depth--;
                if (depth == 0) {
                    return at;
                }
            }
            at++;
        }
        throw new IllegalArgumentException("a bracket is not closed in " + text.substring(open));
    }

    static int afterLiteral(String text, int quote) {
        String mark = text.startsWith("\"\"\"", quote) ? "\"\"\"" : text.substring(quote, quote + 1);
        int at = quote + mark.length();
        while (!text.startsWith(mark, at)) {
            at += text.charAt(at) == '\\' ? 2 : 1;
        }
        return at + mark.length();
    }

    private static String withoutComments(String source) {
        StringBuilder kept = new StringBuilder();
        int at = 0;
        while (at < source.length()) {
            char c = source.charAt(at);
            if (c == '"' || c == '\'') {
                int end = afterLiteral(source, at);
                kept.append(source, at, end);
                at = end;
            } else if (source.startsWith("//", at)) {
                int end = source.indexOf('\n', at);
                at = end < 0 ? source.length() : end;
            } else if (source.startsWith("/*", at)) {
                at = source.indexOf("*/", at) + 2;
            } else {
                kept.append(c);
                at++;
            }
        }
        return kept.toString();
    }
}
