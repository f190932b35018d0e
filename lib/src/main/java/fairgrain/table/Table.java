package fairgrain.table;

import fairgrain.quantity.Shown;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads a CSV table strictly: known columns in the given order, full rows, one spelling of numbers. The first column is the
 * key of the row and stands once. Either every row is good or {@link TableException} names the bad ones, up to 200.
 *
 * <p>Lines that start with # are comments. A byte order mark before the header is passed over, since spreadsheets write one. A
 * text of more than a million signs is refused before it fills the memory: the largest table shipped has a tenth of that.
 */
public final class Table {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setAllowMissingColumnNames(true) // so that the refusal is ours, with its line
            .setCommentMarker('#')
            .get();

    /** A table with more than that was meant for something else. */
    private static final int MOST_PROBLEMS = 200;

    private static final Pattern LINE_BREAK = Pattern.compile("\r\n|\r|\n");

    private Table() {}

    /**
     * Reads all rows.
     *
     * @param csv the text; closed here
     * @param file what to call it in messages
     * @param columns the names that must stand in the first row
     * @param build makes one thing of one row; refuses by {@link IllegalArgumentException}
     * @throws TableException with what is wrong, as {@code file:line: column, rule, value}; the line is the first of its row
     */
    public static <T> List<T> read(Reader csv, String file, List<String> columns, Function<Row, T> build) {
        List<String> problems = new ArrayList<>();
        List<T> found = new ArrayList<>();
        Map<String, Long> lines = new HashMap<>();
        try (Reader text = new TableText(csv);
                CSVParser rows =
                        CSVParser.builder().setReader(text).setFormat(FORMAT).get()) {
            if (!rows.getHeaderNames().equals(columns)) {
                throw new TableException(file, List.of(wrongColumns(rows, file, columns)));
            }
            long end = rows.getCurrentLineNumber();
            for (CSVRecord row : rows) {
                if (problems.size() == MOST_PROBLEMS) {
                    problems.add(file + ": these are the first " + MOST_PROBLEMS + "; what comes behind was not read");
                    break;
                }
                long begin = end + 1;
                end = rows.getCurrentLineNumber();
                long line = begin == end ? end : end - lineBreaks(row); // not the record number: comments shift that
                String at = file + ":" + line + ": ";
                if (!row.isConsistent()) {
                    problems.add(at + "expected " + columns.size() + " cells, but found " + row.size());
                    continue;
                }
                Long before = lines.putIfAbsent(row.get(0), line);
                if (before != null) {
                    problems.add(at + columns.get(0) + " must stand once, but '" + Shown.cut(row.get(0), Row.SHOWN)
                            + "' stands on line " + before + " too");
                    continue;
                }
                try {
                    found.add(build.apply(new Row(row)));
                } catch (IllegalArgumentException e) {
                    problems.add(at + e.getMessage());
                }
            }
        } catch (CSVException e) {
            problems.add(noTable(file, e));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (UncheckedIOException e) {
            if (!(e.getCause() instanceof CSVException noTable)) {
                throw e;
            }
            problems.add(noTable(file, noTable));
        }
        if (!problems.isEmpty()) {
            throw new TableException(file, problems);
        }
        return List.copyOf(found);
    }

    private static String wrongColumns(CSVParser rows, String file, List<String> columns) {
        List<String> found = rows.getHeaderNames();
        return file + ":" + Math.max(1, rows.getCurrentLineNumber()) + ": columns must be " + String.join(",", columns)
                + (found.isEmpty()
                        ? ", but there were none"
                        : ", but were " + Shown.cut(String.join(",", found), 5 * Row.SHOWN));
    }

    /** The parser stands at the end of a row, a person looks for its beginning. */
    private static long lineBreaks(CSVRecord row) {
        long breaks = 0;
        for (String cell : row) {
            breaks += LINE_BREAK.matcher(cell).results().count();
        }
        return breaks;
    }

    private static String noTable(String file, CSVException e) {
        return file + ": this is not a CSV table: " + e.getMessage();
    }
}
