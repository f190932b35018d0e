package fairgrain.hygrometer;

import fairgrain.quantity.Shown;

/** The cells of one line, each as a stretch of the buffer, without the blanks and the quotes around it. */
final class LogRow {
    private static final int SHOWN = 40;

    private final char separator;
    private final int[] starts = new int[Column.MOST];
    private final int[] ends = new int[Column.MOST];
    private char[] text = {};
    private int count;
    private boolean broken;

    LogRow(Separator separator) {
        this.separator = separator.sign();
    }

    /** Finds the cells up to the last that is wanted. */
    void split(char[] buffer, int start, int end, int wanted) {
        text = buffer;
        count = 0;
        broken = false;
        int at = start;
        while (count < wanted && !broken) {
            at = cell(at, end);
            if (at >= end) {
                return;
            }
            at++; // the separator
        }
    }

    /** Reads one cell and gives the place of the separator behind it. */
    private int cell(int from, int end) {
        int start = from;
        while (start < end && text[start] == ' ') {
            start++;
        }
        if (start < end && text[start] == '"') {
            return quoted(start + 1, end);
        }
        int stop = start;
        while (stop < end && text[stop] != separator) {
            stop++;
        }
        int last = stop;
        while (last > start && text[last - 1] == ' ') {
            last--;
        }
        add(start, last);
        return stop;
    }

    private int quoted(int start, int end) {
        int stop = start;
        while (stop < end && (text[stop] != '"' || (stop + 1 < end && text[stop + 1] == '"'))) {
            stop += text[stop] == '"' ? 2 : 1;
        }
        int behind = stop + 1;
        while (behind < end && text[behind] == ' ') {
            behind++;
        }
        broken = stop >= end || (behind < end && text[behind] != separator);
        add(start, Math.min(stop, end));
        return behind;
    }

    private void add(int start, int end) {
        starts[count] = start;
        ends[count] = end;
        count++;
    }

    /** How many cells were found. */
    int count() {
        return count;
    }

    /** Whether a quote is not closed, or something stands behind it. */
    boolean isBroken() {
        return broken;
    }

    char[] text() {
        return text;
    }

    int start(int cell) {
        return starts[cell];
    }

    int end(int cell) {
        return ends[cell];
    }

    /** A cell as a text of its own. */
    String cell(int cell) {
        return new String(text, starts[cell], ends[cell] - starts[cell]).replace("\"\"", "\"");
    }

    /** A cell for a message: on one line, cut short if it is long. */
    String shown(int cell) {
        return "'" + Shown.cut(cell(cell), SHOWN) + "'";
    }
}
