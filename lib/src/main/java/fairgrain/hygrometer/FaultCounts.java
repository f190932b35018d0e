package fairgrain.hygrometer;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Counts faults, and remembers the first few lines of each. */
final class FaultCounts {
    /** So many of one fault are forgiven in a short log. */
    private static final int FORGIVEN = 10;

    /** Of all rows; more of one fault than that, and the log was described wrongly. */
    private static final int ONE_IN = 10;

    private final Map<Fault, Count> counts = new EnumMap<>(Fault.class);

    private static final class Count {
        private final List<Long> lines = new ArrayList<>();
        private long count;
        private String sample = "";
    }

    void note(Fault fault, long line) {
        Count count = counts.computeIfAbsent(fault, f -> new Count());
        count.count++;
        if (count.lines.size() < Trouble.LINES_TOLD) {
            count.lines.add(line);
        }
    }

    /** With what stands in a cell, for the message if there are too many. */
    void note(Fault fault, long line, LogRow row, int cell) {
        note(fault, line);
        Count count = counts.get(fault);
        if (count != null && count.sample.isEmpty()) {
            count.sample = row.shown(cell);
        }
    }

    List<Trouble> troubles() {
        return counts.entrySet().stream()
                .map(entry -> new Trouble(entry.getKey(), entry.getValue().count, entry.getValue().lines))
                .toList();
    }

    /** Refuses a log that was plainly described wrongly. */
    void refuseTooMany(String file, long rows, LogLayout layout) {
        for (Map.Entry<Fault, Count> entry : counts.entrySet()) {
            Fault fault = entry.getKey();
            Count count = entry.getValue();
            if (fault.spoils() && count.count > Math.max(FORGIVEN, rows / ONE_IN)) {
                throw new LogException(file + ":" + count.lines.get(0) + ": " + fault.counted(count.count) + ", of "
                        + rows
                        + " in all; the first stands here" + (count.sample.isEmpty() ? "" : ", " + count.sample) + ": "
                        + advice(fault, layout));
            }
        }
    }

    private static String advice(Fault fault, LogLayout layout) {
        return switch (fault) {
            case TIME -> "the form of the times was given as '" + layout.form() + "'";
            case BACKWARDS -> "sort the log by its time, the oldest first";
            case NUMBER ->
                "a comma may be the decimal mark only where the separator is a semicolon or a tab, and the"
                        + " degrees were given as " + layout.scale().letter();
            default -> "the separator was given as " + layout.separator().word();
        };
    }
}
