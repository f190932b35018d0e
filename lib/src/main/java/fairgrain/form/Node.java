package fairgrain.form;

import java.util.List;

/** Text with its place, wherever it came from: a YAML file, a row of a table, a command line. */
public sealed interface Node {
    /** Where it stands, such as {@code lakeside.yaml:7:20}. */
    String at();

    /** One word, number or line of text. */
    record Scalar(String at, String text, boolean quoted) implements Node {
        public Scalar(String at, String text) {
            this(at, text, false);
        }
    }

    /** An empty place, and what may be the cause, if that shows. */
    record Nothing(String at, String hint) implements Node {}

    record Sequence(String at, List<Node> items) implements Node {
        public Sequence {
            items = List.copyOf(items);
        }
    }

    /** A block of keys, in the order in which they stand; a key may stand twice, and is then refused by the form. */
    record Mapping(String at, List<Entry> entries) implements Node {
        public Mapping {
            entries = List.copyOf(entries);
        }
    }

    record Entry(Scalar key, Node value) {}
}
