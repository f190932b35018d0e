package fairgrain.program;

import fairgrain.hygrometer.LogException;
import fairgrain.hygrometer.LogReader;
import fairgrain.hygrometer.Separator;
import fairgrain.material.Woods;
import fairgrain.table.TableException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;

/** Reads one line of so many megabytes by every reader of texts of any length, and prints what each says to it. */
final class EndlessLines {
    private EndlessLines() {}

    public static void main(String[] args) throws IOException {
        long bytes = Long.parseLong(args[0]) << 20;
        try (Reader table = reader(Woods.COLUMNS.get(0), bytes)) {
            Woods.read(table, "woods.csv");
        } catch (TableException e) {
            System.out.println(e.problems());
        }
        try (Reader log = reader("time,temperature,humidity\n", bytes)) {
            LogReader.read(
                    log,
                    "log.csv",
                    Readers.layout("year-month-day hour:minute", Separator.COMMA, "time", "temperature", "humidity"));
        } catch (LogException e) {
            System.out.println(e.getMessage());
        }
        TableLines lines = new TableLines(line("name\n", bytes));
        for (TableLines.Line line = lines.next(); line != null; line = lines.next()) {
            System.out.println(line.number() + " " + line.wrong());
        }
        try {
            PlainText.of("d.yaml", line("name: ", bytes).readNBytes(PlainText.MOST_BYTES + 1));
        } catch (RefusedText e) {
            System.out.println(e.sentence());
        }
        System.out.println(
                String.format(Locale.ROOT, "heap %d MB", Runtime.getRuntime().maxMemory() >> 20));
    }

    private static Reader reader(String begin, long bytes) {
        return new InputStreamReader(line(begin, bytes), StandardCharsets.UTF_8);
    }

    private static InputStream line(String begin, long bytes) {
        InputStream letters = new InputStream() {
            private long left = bytes;

            @Override
            public int read() {
                return left-- > 0 ? 'x' : -1;
            }

            @Override
            public int read(byte[] into, int from, int most) {
                int some = (int) Math.min(left, most);
                Arrays.fill(into, from, from + some, (byte) 'x');
                left -= some;
                return some == 0 && most > 0 ? -1 : some;
            }
        };
        return new SequenceInputStream(new ByteArrayInputStream(begin.getBytes(StandardCharsets.UTF_8)), letters);
    }
}
