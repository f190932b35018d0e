package fairgrain.program;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** The bytes of a file as text: not too many, in UTF-8, without a byte order mark or signs that nobody can see. */
final class PlainText {
    /** Many times what a large piece of furniture needs; much more would make the reading slow. */
    static final int MOST_BYTES = 256 * 1024;

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private PlainText() {}

    /** The text of a file. */
    static String of(Path file) throws RefusedText {
        String name = file.toString();
        if (!Files.exists(file)) {
            throw new RefusedText(name, "there is no such file");
        }
        if (Files.isDirectory(file)) {
            throw new RefusedText(name, "this is a directory, not a file");
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw tooLarge(name, Math.max(bytes.length, Files.size(file)));
            }
            return of(name, bytes);
        } catch (IOException e) {
            throw new RefusedText(name, "the file cannot be read");
        }
    }

    /** The text of bytes that came from somewhere else. */
    static String of(String name, byte[] bytes) throws RefusedText {
        if (bytes.length > MOST_BYTES) {
            throw tooLarge(name, bytes.length);
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer from = ByteBuffer.wrap(bytes);
        CharBuffer to = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(from, to, true);
        String text = to.flip().toString();
        if (result.isError()) {
            throw new RefusedText(
                    place(name, text, text.length()),
                    "this is not text in UTF-8; save the file again with the encoding UTF-8");
        }
        String read = text.isEmpty() || text.charAt(0) != BYTE_ORDER_MARK ? text : text.substring(1);
        refuseUnseen(name, read);
        return read;
    }

    private static RefusedText tooLarge(String name, long bytes) {
        return new RefusedText(
                name,
                "the file has " + (bytes + 1023) / 1024 + " KB; it may have " + MOST_BYTES / 1024 + " KB at most");
    }

    private static void refuseUnseen(String name, String text) throws RefusedText {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean lineOrTab = c == '\n' || c == '\r' || c == '\t';
            boolean strange = Character.isISOControl(c) || c == BYTE_ORDER_MARK || c == '\uFFFE' || c == '\uFFFF';
            if (strange && !lineOrTab) {
                throw new RefusedText(
                        place(name, text, i), "a sign that cannot be seen stands here (" + code(c) + "); take it out");
            }
        }
    }

    private static String code(char c) {
        String hex = Integer.toHexString(0x10000 | c).substring(1);
        return "U+" + hex.toUpperCase(Locale.ROOT);
    }

    private static String place(String name, String text, int end) {
        int line = 1;
        int column = 1;
        for (int i = 0; i < end; i++) {
            boolean newLine = text.charAt(i) == '\n';
            line += newLine ? 1 : 0;
            column = newLine ? 1 : column + 1;
        }
        return name + ":" + line + ":" + column;
    }
}
