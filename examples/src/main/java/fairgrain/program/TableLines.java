package fairgrain.program;

import java.io.BufferedReader;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/** The lines of a table one by one, however many there are: none is kept, and none can be longer than memory allows. */
final class TableLines {
    private static final int LONGEST = 64 * 1024;
    private static final char BYTE_ORDER_MARK = '\uFEFF';
    private static final char NO_CHARACTER = '\uFFFD';

    private final Counted in;
    private final BufferedReader reader;
    private int number;
    private int pushedBack = -1;

    TableLines(InputStream in) {
        this.in = new Counted(in);
        this.reader = new BufferedReader(new InputStreamReader(this.in, StandardCharsets.UTF_8));
    }

    /**
     * A line.
     *
     * @param number the first is 1
     * @param wrong why it cannot be read; empty if it can
     */
    record Line(int number, String text, String wrong) {}

    /** How many bytes have been read. */
    long bytes() {
        return in.bytes;
    }

    /** The next line that is neither blank nor a comment; null at the end. */
    @Nullable
    Line next() throws IOException {
        while (true) {
            int first = read();
            if (first < 0) {
                return null;
            }
            number++;
            Line line = line(first);
            if (!line.wrong().isEmpty()
                    || !(line.text().isBlank() || line.text().startsWith("#"))) {
                return line;
            }
        }
    }

    private Line line(int first) throws IOException {
        StringBuilder text = new StringBuilder();
        boolean broken = false;
        int c = first;
        int length = 0;
        while (c >= 0 && c != '\n' && c != '\r') {
            broken |= c == NO_CHARACTER;
            if (length++ < LONGEST && !(number == 1 && length == 1 && c == BYTE_ORDER_MARK)) {
                text.append((char) c);
            }
            c = read();
        }
        if (c == '\r') {
            int next = read();
            pushedBack = next == '\n' ? -1 : next;
        }
        String wrong = length > LONGEST
                ? "the line is longer than " + LONGEST + " characters"
                : broken ? "the line is not text in UTF-8" : "";
        return new Line(number, text.toString(), wrong);
    }

    private int read() throws IOException {
        int c = pushedBack;
        pushedBack = -1;
        return c >= 0 ? c : reader.read();
    }

    private static final class Counted extends FilterInputStream {
        private long bytes;

        Counted(InputStream in) {
            super(in);
        }

        @Override
        public int read() throws IOException {
            int read = super.read();
            bytes += read < 0 ? 0 : 1;
            return read;
        }

        @Override
        public int read(byte[] into, int from, int most) throws IOException {
            int read = super.read(into, from, most);
            bytes += Math.max(read, 0);
            return read;
        }
    }
}
