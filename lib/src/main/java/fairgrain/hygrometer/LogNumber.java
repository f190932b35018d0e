package fairgrain.hygrometer;

import java.util.List;
import java.util.Locale;

/** Reads the numbers of a log: digits, one decimal mark, and perhaps the unit behind. */
final class LogNumber {
    /** What loggers write where a sensor gave nothing. */
    private static final List<String> NOTHING =
            List.of("", "nan", "n/a", "na", "null", "none", "-", "--", "---", "unavailable", "unknown");

    private static final int MOST_DIGITS = 15; // up to here both whole numbers below are exact, and so is the rounding
    private static final double[] POWERS = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

    private LogNumber() {}

    /** The number; NaN if it is none. */
    static double read(LogRow row, int cell, boolean comma, List<String> units) {
        char[] text = row.text();
        int end = row.end(cell);
        int at = row.start(cell);
        boolean minus = at < end && (text[at] == '-' || text[at] == '−');
        if (minus || (at < end && text[at] == '+')) {
            at++;
        }
        long digits = 0;
        int count = 0;
        int decimals = -1; // none yet
        while (at < end) {
            char c = text[at];
            if (c >= '0' && c <= '9') {
                digits = digits * 10 + c - '0';
                count++;
                decimals += decimals >= 0 ? 1 : 0;
            } else if (decimals < 0 && (c == '.' || (comma && c == ','))) {
                decimals = 0;
            } else {
                break;
            }
            at++;
            if (count > MOST_DIGITS) {
                return Double.NaN;
            }
        }
        if (count == 0 || (at < end && !isUnit(text, at, end, units))) {
            return Double.NaN;
        }
        double value = digits / POWERS[Math.max(0, decimals)];
        return minus ? -value : value;
    }

    private static boolean isUnit(char[] text, int start, int end, List<String> units) {
        return units.contains(new String(text, start, end - start).strip());
    }

    /** Whether a cell says that there is no reading. */
    static boolean isNothing(LogRow row, int cell) {
        return NOTHING.contains(row.cell(cell).strip().toLowerCase(Locale.ROOT));
    }
}
