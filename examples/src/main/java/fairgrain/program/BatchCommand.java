package fairgrain.program;

import fairgrain.entry.DesignForm;
import fairgrain.finding.Verdict;
import fairgrain.sheet.CsvSizes;
import java.io.BufferedWriter;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.apache.commons.csv.CSVFormat;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "batch",
        mixinStandardHelpOptions = true,
        description = {
            "Reads a table (CSV) of panels, shelves or joints, one a row, and writes a table of their sizes.",
            "A column is named like an option of the command panel, shelf or joint, with blanks for hyphens. Rows that"
                    + " cannot be read are listed with their line and the reason; all others are reckoned.",
            "Nothing in what it writes can act as a formula in a spreadsheet."
        },
        footer = {
            "",
            "Examples:",
            "  fairgrain batch panels panels.csv --out sizes.csv",
            "  fairgrain batch shelves - --same units=mm --same load=books < shelves.csv > sizes.csv"
        })
final class BatchCommand implements Callable<Integer> {
    private static final int CHUNK = 64;
    private static final int CHUNKS_AHEAD = 4;
    private static final String BAD = ".bad.csv";

    private final InputStream stdin;
    private final PrintStream out;
    private final PrintStream err;
    private final boolean terminal;

    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private OwnTables tables = new OwnTables();

    @Parameters(index = "0", paramLabel = "PARTS", description = "panels, shelves or joints.")
    private String parts = "";

    @Parameters(index = "1", paramLabel = "TABLE", description = "The table to read; - reads standard input.")
    private Path table = Path.of("-");

    @Option(names = "--out", paramLabel = "SIZES", description = "A new file to write; left out, standard output.")
    private @Nullable Path sizes;

    @Option(
            names = "--bad",
            paramLabel = "BAD",
            description = "A file to list bad rows in, written anew; left out, it lies beside the one of --out, or the"
                    + " list goes to standard error.")
    private @Nullable Path bad;

    @Option(
            names = "--same",
            paramLabel = "COLUMN=TEXT",
            description = "A text that stands in this column of every row, such as units=inches.")
    private Map<String, String> same = new LinkedHashMap<>();

    private long rows;
    private long badRows;
    private Verdict worst = Verdict.HOLDS;

    BatchCommand(InputStream stdin, PrintStream out, PrintStream err, boolean terminal) {
        this.stdin = stdin;
        this.out = out;
        this.err = err;
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        DesignForm form = new DesignForm(tables.catalog());
        OneDesign one = OneDesign.of(form, topic(), "table");
        boolean fromInput = table.toString().equals("-");
        if (!fromInput && !Files.isRegularFile(table)) {
            throw new IOException("there is no file " + table);
        }
        String file = fromInput ? "standard input" : table.toString();
        try (InputStream in = fromInput ? stdin : Files.newInputStream(table)) {
            TableLines lines = new TableLines(in);
            TableLines.Line heading = lines.next();
            if (heading == null) {
                throw new RefusedText(file, "the table is empty: its first line names the columns");
            }
            Batch batch = Batch.of(one, file, heading, same);
            long bytes = fromInput ? 0 : Files.size(table);
            run(batch, file, lines, new Progress(err, terminal, bytes));
        } catch (RefusedText e) {
            err.println(e.at() + ": " + e.sentence());
            err.println("Nothing was reckoned: mend the table and run it again.");
            return Exit.WRONG;
        }
        return badRows > 0 ? Exit.WRONG : Exit.of(rows == 0 ? Verdict.NOT_JUDGED : worst);
    }

    private Topic topic() {
        for (Topic topic : Topic.values()) {
            if (topic != Topic.HANG && (parts.equals(topic.key()) || parts.equals(topic.word()))) {
                return topic;
            }
        }
        if (spec == null) {
            throw new IllegalStateException("the command was not started by the command line");
        }
        throw new ParameterException(
                spec.commandLine(), "PARTS must be panels, shelves or joints, but was '" + parts + "'");
    }

    private void run(Batch batch, String file, TableLines lines, Progress progress) throws IOException {
        Path list = bad != null ? bad : sizes != null ? Path.of(sizes + BAD) : null;
        if (list != null && (isSame(list, table) || (sizes != null && isSame(list, sizes)))) {
            throw new IOException(list + " is read or written already: give the list of bad rows another name");
        }
        try (Writer to = sizes == null ? kept(out) : created(sizes);
                Writer refused = list == null ? kept(err) : replaced(list)) {
            CsvSizes.heading(to, List.of("line", "taken"));
            if (list != null) {
                CSVFormat.RFC4180.printRecord(refused, "line", "reason", "row");
            }
            work(batch, lines, progress, new Taker() {
                @Override
                public void take(Batch.Row row) throws IOException {
                    rows++;
                    to.write(row.csv());
                    if (row.wrong().isEmpty()) {
                        worst = worst.worse(row.verdict());
                    } else {
                        badRows++;
                        tell(row, list == null ? file : "", refused);
                    }
                }

                @Override
                public void flush() throws IOException {
                    to.flush();
                    refused.flush();
                }
            });
        } finally {
            progress.end();
        }
        if (out.checkError()) {
            throw new IOException("the sizes could not all be written");
        }
        err.println(rows + " rows read, " + (rows - badRows) + " reckoned, " + badRows + " bad"
                + (badRows > 0 && list != null ? ": see " + list : ""));
    }

    /** A stream that others write to as well: it is never closed here. */
    private static Writer kept(PrintStream stream) {
        return new OutputStreamWriter(
                new FilterOutputStream(stream) {
                    @Override
                    public void write(byte[] bytes, int from, int most) throws IOException {
                        out.write(bytes, from, most);
                    }

                    @Override
                    public void close() throws IOException {
                        flush();
                    }
                },
                StandardCharsets.UTF_8);
    }

    private static Writer created(Path file) throws IOException {
        if (Files.exists(file)) {
            throw new IOException(file + " is there already: give the name of a new file");
        }
        return new BufferedWriter(Files.newBufferedWriter(file, StandardOpenOption.CREATE_NEW));
    }

    private static boolean isSame(Path one, Path other) throws IOException {
        return one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize())
                || (Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other));
    }

    private static Writer replaced(Path file) throws IOException {
        return Files.newBufferedWriter(file);
    }

    private static void tell(Batch.Row row, String file, Writer to) throws IOException {
        String line = Integer.toString(row.line().number());
        for (String reason : row.wrong()) {
            if (file.isEmpty()) {
                CSVFormat.RFC4180.printRecord(
                        to,
                        line,
                        CsvSizes.safe(reason),
                        CsvSizes.safe(row.line().text()));
            } else {
                to.write(file + ":" + line + ": " + reason + "\n");
            }
        }
    }

    /** Takes one row after the other, in their order, and lets go of them now and then: what was reckoned is not lost. */
    private interface Taker {
        void take(Batch.Row row) throws IOException;

        void flush() throws IOException;
    }

    /** As many threads as there are processors work chunks of rows out; few chunks are held at a time. */
    private void work(Batch batch, TableLines lines, Progress progress, Taker taker) throws IOException {
        ExecutorService workers =
                Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        Deque<Future<List<Batch.Row>>> ahead = new ArrayDeque<>();
        try {
            boolean more = true;
            while (more || !ahead.isEmpty()) {
                List<TableLines.Line> chunk = more ? chunk(lines) : List.of();
                more = !chunk.isEmpty();
                if (more) {
                    ahead.add(
                            workers.submit(() -> chunk.stream().map(batch::row).toList()));
                }
                if (!ahead.isEmpty() && (!more || ahead.size() >= CHUNKS_AHEAD)) {
                    for (Batch.Row row : ahead.remove().get()) {
                        taker.take(row);
                    }
                    taker.flush();
                    progress.show(lines.bytes(), rows + " rows, " + badRows + " bad");
                }
            }
        } catch (ExecutionException e) {
            throw new IllegalStateException("a row could not be worked out: " + e.getCause(), e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted after " + rows + " rows", e);
        } finally {
            workers.shutdownNow();
        }
    }

    private static List<TableLines.Line> chunk(TableLines lines) throws IOException {
        List<TableLines.Line> chunk = new ArrayList<>(CHUNK);
        while (chunk.size() < CHUNK) {
            TableLines.Line line = lines.next();
            if (line == null) {
                break;
            }
            chunk.add(line);
        }
        return chunk;
    }
}
