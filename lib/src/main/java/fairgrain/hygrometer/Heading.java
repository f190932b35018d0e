package fairgrain.hygrometer;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Finds the columns of a log in its heading, and its first row of readings where they go by number. */
final class Heading {
    /** Lines that a logger may put before its readings. */
    static final int MOST_LINES = 100;

    private final LogText text;
    private final LogRow row;
    private final LogLayout layout;

    private String nearest = "";
    private int mostFound = -1;

    Heading(LogText text, LogRow row, LogLayout layout) {
        this.text = text;
        this.row = row;
        this.layout = layout;
    }

    /** The numbers, from 0, of the columns of the layout in their order. The text then stands at the line of the names. */
    int[] columns() throws IOException {
        List<Column> columns = layout.columns();
        if (columns.stream().noneMatch(Column::goesByName)) {
            return columns.stream().mapToInt(column -> column.number() - 1).toArray();
        }
        while (text.line() < MOST_LINES && text.next()) {
            row.split(text.text(), text.start(), text.end(), Column.MOST);
            int[] found = found(columns);
            if (found.length > 0) {
                refuseOtherScale();
                return found;
            }
        }
        throw new LogException(text.here() + ": no line up to here has the columns " + names(columns)
                + (mostFound < 0 ? "" : "; line " + nearest));
    }

    /** Empty if one is missing. */
    private int[] found(List<Column> columns) {
        int[] numbers = new int[columns.size()];
        int found = 0;
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = number(columns.get(i));
            found += numbers[i] >= 0 && columns.get(i).goesByName() ? 1 : 0;
        }
        if (row.count() > 1 && found > mostFound) {
            mostFound = found;
            nearest = text.line() + " has " + cells();
        }
        for (int number : numbers) {
            if (number < 0) {
                return new int[0];
            }
        }
        return numbers;
    }

    private int number(Column column) {
        if (!column.goesByName()) {
            return column.number() - 1;
        }
        int found = -1;
        for (int i = 0; i < row.count(); i++) {
            if (column.isCalled(row.cell(i))) {
                if (found >= 0) {
                    throw new LogException(text.here() + ": columns " + (found + 1) + " and " + (i + 1)
                            + " are both called '" + column.name() + "': give the number of the one you mean");
                }
                found = i;
            }
        }
        return found;
    }

    private void refuseOtherScale() {
        String name = layout.temperature().name();
        TemperatureScale scale = layout.scale();
        if (scale.other().isNamedIn(name) && !scale.isNamedIn(name)) {
            throw new LogException(text.here() + ": the column '" + name + "' says degrees "
                    + scale.other().letter() + ", but they were given as " + scale.letter());
        }
    }

    private static String names(List<Column> columns) {
        return String.join(
                ", ",
                columns.stream()
                        .filter(Column::goesByName)
                        .map(column -> "'" + column.name() + "'")
                        .toList());
    }

    private String cells() {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < Math.min(row.count(), 8); i++) {
            cells.add(row.shown(i));
        }
        return String.join(", ", cells) + (row.count() > cells.size() ? ", ..." : "");
    }
}
