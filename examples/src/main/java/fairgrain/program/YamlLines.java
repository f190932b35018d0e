package fairgrain.program;

import fairgrain.quantity.Shown;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The lines of a design file, looked at for slips that YAML itself takes without a word. */
final class YamlLines {
    private static final Pattern BEGINS_WITH_TAB = Pattern.compile(" *\\t[ \\t]*[^\\s#].*");
    private static final Pattern BEGINS_WITH_STRANGE_BLANK =
            Pattern.compile("[ \\t]*[\\u00a0\\u2000-\\u200b\\u202f\\u3000].*");
    private static final Pattern COMMENT = Pattern.compile("[ \\t]+(#\\S.*)");
    private static final Pattern NUMBER_SIGN = Pattern.compile("[ \\t]+(#\\d\\S*)");
    private static final Pattern NUMBER = Pattern.compile("#(\\d+)");
    private static final Pattern COMMENT_AFTER_KEY = Pattern.compile(".*[:,{\\[][ \\t]+#\\S.*");

    private static final int SHOWN = 60;

    private final String name;
    private final List<String> lines;

    private int lastLine;
    private int lastColumn = 1;
    private int lastIndex;

    YamlLines(String name, String text) {
        this.name = name;
        this.lines = text.lines().toList();
    }

    /** Where something stands; both count from one. */
    String place(int line, int column) {
        return name + ":" + line + ":" + column;
    }

    /** The rest of a line from a column on. */
    String from(int line, int column) {
        return whole(line).substring(index(line, column));
    }

    private String whole(int line) {
        return line <= lines.size() ? lines.get(line - 1) : "";
    }

    /** Where a column of signs begins; counted on from the last one asked for, as a line may be as long as the file. */
    private int index(int line, int column) {
        if (line != lastLine || column < lastColumn) {
            lastLine = line;
            lastColumn = 1;
            lastIndex = 0;
        }
        String whole = whole(line);
        while (lastColumn < column && lastIndex < whole.length()) {
            lastIndex += Character.charCount(whole.codePointAt(lastIndex));
            lastColumn++;
        }
        return lastIndex;
    }

    /** A pattern found right where a column begins; null if something else stands there. */
    private @Nullable Matcher at(int line, int column, Pattern pattern) {
        String whole = whole(line);
        Matcher matcher = pattern.matcher(whole).region(index(line, column), whole.length());
        return matcher.lookingAt() ? matcher : null;
    }

    /** A tab before a key looks like blanks and is not, and so does a blank of another kind that came with copied text. */
    void refuseTabs() throws RefusedText {
        for (int i = 0; i < lines.size(); i++) {
            String what = BEGINS_WITH_TAB.matcher(lines.get(i)).matches()
                    ? "a tab; YAML wants blanks"
                    : BEGINS_WITH_STRANGE_BLANK.matcher(lines.get(i)).matches()
                            ? "a blank of another kind; YAML wants plain blanks"
                            : "";
            if (!what.isEmpty()) {
                throw new RefusedText(place(i + 1, 1), "line " + (i + 1) + " begins with " + what);
            }
        }
    }

    /** Why nothing stands at a place, if a # right before other text has made a comment of the value; else empty. */
    String swallowed(int line, int column) {
        Matcher comment = at(line, column, COMMENT);
        if (comment == null) {
            return "";
        }
        String value = Shown.cut(comment.group(1).strip(), SHOWN);
        Matcher number = NUMBER.matcher(value);
        return "a # begins a comment in YAML, so write \"" + value.replace("\"", "\\\"") + "\""
                + (number.matches() ? " or No. " + number.group(1) : "");
    }

    /** The number such as #8 that YAML has taken off the end of a value as a comment; else empty. */
    String numberLost(int line, int column) {
        Matcher number = at(line, column, NUMBER_SIGN);
        return number != null ? Shown.cut(number.group(1), SHOWN) : "";
    }

    /** Whether a # has made a comment of a value, and of any bracket behind it, on one of these lines. */
    boolean haveSwallowedValue(int fromLine, int toLine) {
        for (int line = Math.max(fromLine, 1); line <= toLine && line <= lines.size(); line++) {
            if (COMMENT_AFTER_KEY.matcher(lines.get(line - 1)).matches()) {
                return true;
            }
        }
        return false;
    }
}
