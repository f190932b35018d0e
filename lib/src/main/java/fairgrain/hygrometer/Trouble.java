package fairgrain.hygrometer;

import java.util.List;

/**
 * One fault of a log, counted.
 *
 * @param lines where it was met first
 */
public record Trouble(Fault fault, long count, List<Long> lines) {
    /** How many lines are told. */
    public static final int LINES_TOLD = 5;

    public Trouble {
        lines = List.copyOf(lines);
    }

    /** {@code 12 rows without a reading, left out (lines 3, 4, 9, 17, 18 and more)}. */
    public String words() {
        String numbers = String.join(", ", lines.stream().map(String::valueOf).toList());
        return fault.counted(count) + ", " + fault.done() + " (" + (count == 1 ? "line " : "lines ") + numbers
                + (count > lines.size() ? " and more" : "") + ")";
    }
}
