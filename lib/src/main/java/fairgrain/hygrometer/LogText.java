package fairgrain.hygrometer;

import java.io.IOException;
import java.io.Reader;
import java.util.Locale;

/** The lines of a text one after the other, in a buffer that never grows. Lines that no log has are refused. */
final class LogText {
    static final int LONGEST_LINE = 4096;

    private static final int BUFFER = 1 << 15;
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private final Reader in;
    private final String file;
    private final char[] buffer = new char[BUFFER];
    private int filled;
    private int next;
    private boolean afterReturn;

    private int start;
    private int end;
    private long line;

    LogText(Reader in, String file) {
        this.in = in;
        this.file = file;
    }

    /** Moves on to the next line; false at the end of the text. */
    boolean next() throws IOException {
        if (!hasMore()) {
            return false;
        }
        line++;
        start = next;
        int at = next;
        while (true) {
            while (at < filled) {
                char c = buffer[at];
                if (c < ' ' && c != '\t') {
                    afterReturn = c == '\r';
                    return endAt(c, at);
                }
                at++;
            }
            int read = at - start;
            refuseTooLong(read);
            next = start;
            boolean more = fill();
            start = next;
            at = start + read;
            if (!more) {
                end = at;
                next = at;
                return true;
            }
        }
    }

    /** Whether a line begins here; passes over the second half of a line break, and over a byte order mark. */
    private boolean hasMore() throws IOException {
        if (next == filled && !fill()) {
            return false;
        }
        boolean passOver = line == 0 ? buffer[next] == BYTE_ORDER_MARK : afterReturn && buffer[next] == '\n';
        afterReturn = false;
        if (!passOver) {
            return true;
        }
        next++;
        return next < filled || fill();
    }

    private boolean endAt(char c, int at) {
        if (c != '\n' && c != '\r') {
            String hex = Integer.toHexString(0x10000 | c).substring(1).toUpperCase(Locale.ROOT);
            throw new LogException(here()
                    + ": a sign that no text has stands here (U+" + hex
                    + "): export the log as CSV text in UTF-8, not as a spreadsheet or an archive");
        }
        refuseTooLong(at - start);
        end = at;
        next = at + 1;
        return true;
    }

    private void refuseTooLong(int length) {
        if (length > LONGEST_LINE) {
            throw new LogException(here() + ": the line is longer than " + LONGEST_LINE
                    + " signs: no log of a hygrometer has such lines");
        }
    }

    /** Moves what is still needed to the front and reads on behind it. */
    private boolean fill() throws IOException {
        System.arraycopy(buffer, next, buffer, 0, filled - next);
        filled -= next;
        next = 0;
        int read = in.read(buffer, filled, buffer.length - filled);
        filled += Math.max(0, read);
        return read > 0;
    }

    char[] text() {
        return buffer;
    }

    int start() {
        return start;
    }

    int end() {
        return end;
    }

    /** The number of the line, from 1. */
    long line() {
        return line;
    }

    /** {@code log.csv:7}. */
    String here() {
        return file + ":" + line;
    }
}
