package fairgrain.table;

import java.io.FilterReader;
import java.io.IOException;
import java.io.PushbackReader;
import java.io.Reader;
import org.apache.commons.csv.CSVException;

/** The text of a table, without the byte order mark that some programs put before it, and of no more than a bearable length. */
final class TableText extends FilterReader {
    static final int LONGEST = 1 << 20;

    private static final int MARK = 0xFEFF;

    private int length;

    TableText(Reader text) throws IOException {
        super(new PushbackReader(text, 1));
        int first = in.read();
        if (first != MARK && first >= 0) {
            ((PushbackReader) in).unread(first);
        }
    }

    @Override
    public int read() throws IOException {
        int c = super.read();
        count(c < 0 ? 0 : 1);
        return c;
    }

    @Override
    public int read(char[] into, int from, int most) throws IOException {
        int read = super.read(into, from, most);
        count(Math.max(read, 0));
        return read;
    }

    private void count(int more) throws CSVException {
        length += more;
        if (length > LONGEST) {
            throw new CSVException("it has more than " + LONGEST + " signs");
        }
    }
}
