package fairgrain.form;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Writes a commented YAML file to start from: every key, those that may be left out behind a #. */
final class Starter {
    /** Text that YAML takes as it stands, whatever it is: none of the signs that begin or end something. */
    private static final Pattern PLAIN = Pattern.compile("[\\p{L}\\d¼½¾⅛⅜⅝⅞⅓⅔.][^#:,\\[\\]{}\\p{Cntrl}]*(?<! )");

    private Starter() {}

    static String of(Form<?> form) {
        List<String> lines = new ArrayList<>();
        lines.add("# " + form.help());
        lines.add("# A line that begins with # and a blank explains the next one. Where a # stands right before a key,"
                + " the key");
        lines.add("# may be left out; take the # away to use it.");
        lines.add("");
        lines.addAll(block(form));
        return String.join("\n", lines) + "\n";
    }

    /** What is needed stands first. */
    private static List<String> block(Form<?> form) {
        List<String> lines = new ArrayList<>();
        for (Field<?> field : form.fields()) {
            if (field.isRequired()) {
                lines.addAll(field(field));
            }
        }
        for (Field<?> field : form.fields()) {
            if (!field.isRequired()) {
                field(field).forEach(line -> lines.add(madeComment(line)));
            }
        }
        return lines;
    }

    private static String madeComment(String line) {
        String text = line.stripLeading();
        return text.startsWith("#") ? line : " ".repeat(line.length() - text.length()) + "#" + text;
    }

    private static List<String> field(Field<?> field) {
        List<String> lines = new ArrayList<>();
        String typed = field.example();
        lines.add("# " + field.help() + ": " + field.kind().says());
        if (field.leftOut() instanceof LeftOut.Default<?> standard) {
            lines.add("# if left out, " + standard.typed() + ": " + standard.why());
            typed = typed == null ? standard.typed() : typed;
        }
        List<String> value = value(field.kind(), typed);
        if (value.size() == 1 && !value.get(0).startsWith("- ")) {
            lines.add(field.key() + ": " + value.get(0));
        } else {
            lines.add(field.key() + ":");
            value.forEach(line -> lines.add("  " + line));
        }
        return lines;
    }

    private static List<String> value(Kind<?> kind, @Nullable String typed) {
        if (kind instanceof ListKind<?> list) {
            return item(value(list.inner().get(0), typed));
        }
        if (kind instanceof MappedKind<?, ?>) {
            return value(kind.inner().get(0), typed);
        }
        if (kind instanceof Form<?> form) {
            return block(form);
        }
        return List.of(scalar(typed == null ? kind.example() : typed));
    }

    /** The dash stands before the first key in use, or else before the first of all; comments above it stay above. */
    private static List<String> item(List<String> value) {
        int first = 0;
        while (first < value.size() && value.get(first).startsWith("#")) {
            first++;
        }
        if (first == value.size()) {
            first = 0;
            while (value.get(first).startsWith("# ")) {
                first++;
            }
        }
        List<String> lines = new ArrayList<>(value.subList(0, first));
        String key = value.get(first);
        lines.add("- " + (key.startsWith("#") ? key.substring(1) : key));
        value.subList(first + 1, value.size()).forEach(line -> lines.add("  " + line));
        return lines;
    }

    private static String scalar(String text) {
        return PLAIN.matcher(text).matches() ? text : JsonText.quoted(text);
    }
}
