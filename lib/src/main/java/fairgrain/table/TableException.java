package fairgrain.table;

import java.util.List;

/** A table that cannot be used, with every problem found in it. */
public final class TableException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final transient List<String> problems;

    public TableException(String file, List<String> problems) {
        super(file + " cannot be used:\n  " + String.join("\n  ", problems));
        this.problems = List.copyOf(problems);
    }

    /** One line each, beginning with {@code file:line}. */
    public List<String> problems() {
        return problems;
    }
}
