package fairgrain.form;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Writes a filled block as YAML, the meaning of each key in a comment above it. */
final class Written {
    /** Text that YAML takes as it stands, wherever it stands. */
    private static final Pattern PLAIN = Pattern.compile("[\\p{L}\\d.][\\p{L}\\d ./%()-]*(?<! )");

    private static final String INDENT = "  ";

    private Written() {}

    static String of(Form<?> form, Node.Mapping block) {
        return String.join("\n", lines(form, block)) + "\n";
    }

    private static List<String> lines(@Nullable Form<?> form, Node.Mapping block) {
        List<String> lines = new ArrayList<>();
        for (Node.Entry entry : block.entries()) {
            Field<?> field = form == null ? null : form.find(entry.key().text());
            if (field != null) {
                lines.add("# " + field.help());
            }
            value(scalar(entry.key()), entry.value(), field == null ? null : Form.formIn(field.kind()), lines);
        }
        return lines;
    }

    private static void value(String key, Node value, @Nullable Form<?> inside, List<String> lines) {
        if (value instanceof Node.Scalar text) {
            lines.add(key + ": " + scalar(text));
        } else if (value instanceof Node.Mapping block) {
            lines.add(key + ":");
            lines(inside, block).forEach(line -> lines.add(INDENT + line));
        } else if (value instanceof Node.Sequence list) {
            if (list.items().stream().allMatch(item -> item instanceof Node.Scalar)) {
                lines.add(key + ": "
                        + list.items().stream()
                                .map(item -> scalar((Node.Scalar) item))
                                .collect(Collectors.joining(", ", "[", "]")));
            } else {
                lines.add(key + ":");
                list.items().forEach(item -> lines.addAll(item(inside, item)));
            }
        }
    }

    /** The comment of the first key stands above the dash. */
    private static List<String> item(@Nullable Form<?> inside, Node item) {
        if (!(item instanceof Node.Mapping block)) {
            throw new IllegalArgumentException("a list of blocks and other things cannot be written");
        }
        List<String> lines = new ArrayList<>();
        String before = INDENT + "- ";
        for (String line : lines(inside, block)) {
            boolean first = before.endsWith("- ");
            if (first && line.startsWith("#")) {
                lines.add(INDENT + line);
            } else {
                lines.add(before + line);
                before = INDENT + INDENT;
            }
        }
        return lines;
    }

    private static String scalar(Node.Scalar text) {
        String typed = text.text().strip();
        return PLAIN.matcher(typed).matches() ? typed : JsonText.quoted(typed);
    }
}
