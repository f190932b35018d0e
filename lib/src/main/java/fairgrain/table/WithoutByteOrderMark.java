package fairgrain.table;

import java.io.FilterReader;
import java.io.IOException;
import java.io.PushbackReader;
import java.io.Reader;

/** Text without the byte order mark that some programs put before it. */
final class WithoutByteOrderMark extends FilterReader {
    private static final int MARK = 0xFEFF;

    WithoutByteOrderMark(Reader text) throws IOException {
        super(new PushbackReader(text, 1));
        int first = in.read();
        if (first != MARK && first >= 0) {
            ((PushbackReader) in).unread(first);
        }
    }
}
