package fairgrain.program;

import java.util.ArrayList;
import java.util.List;

/** One line of a table taken apart. A cell ends with its line, so that a quote left open spoils one row and no more. */
final class CsvLine {
    private static final char QUOTE = '"';

    private final String line;
    private int at;

    private CsvLine(String line) {
        this.line = line;
    }

    /**
     * Its cells.
     *
     * @throws IllegalArgumentException if the quotes are wrong
     */
    static List<String> cells(String line) {
        return new CsvLine(line).cells();
    }

    private List<String> cells() {
        List<String> cells = new ArrayList<>();
        cells.add(cell());
        while (at < line.length()) {
            at++; // the comma
            cells.add(cell());
        }
        return cells;
    }

    private String cell() {
        if (at >= line.length() || line.charAt(at) != QUOTE) {
            int end = line.indexOf(',', at);
            String cell = line.substring(at, end < 0 ? line.length() : end);
            at += cell.length();
            return cell.strip();
        }
        StringBuilder cell = new StringBuilder();
        at++;
        while (true) {
            int end = line.indexOf(QUOTE, at);
            if (end < 0) {
                throw new IllegalArgumentException("a quote is opened and not closed on this line");
            }
            cell.append(line, at, end);
            at = end + 1;
            if (at >= line.length() || line.charAt(at) == ',') {
                return cell.toString();
            }
            if (line.charAt(at) != QUOTE) {
                throw new IllegalArgumentException("text stands behind a closing quote; write a quote as two");
            }
            cell.append(QUOTE);
            at++;
        }
    }
}
