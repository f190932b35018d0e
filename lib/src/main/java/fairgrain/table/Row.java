package fairgrain.table;

import fairgrain.quantity.Limits;
import fairgrain.quantity.Shown;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;

/** One row. Each reader of a cell refuses by a message with column, rule and value. An empty cell means unknown. */
public final class Row {
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,15}(\\.\\d{1,15})?");
    /** So many signs of a cell are shown. */
    static final int SHOWN = 100;

    private static final Pattern KEY = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    private final CSVRecord record;

    Row(CSVRecord record) {
        this.record = record;
    }

    /** A key in lower case with hyphens, such as {@code black-walnut}. */
    public String key(String column) {
        String cell = text(column);
        if (!KEY.matcher(cell).matches()) {
            throw wrong(column, "must be lower-case letters, digits and hyphens", cell);
        }
        return cell;
    }

    /** Text that must be there. */
    public String text(String column) {
        String cell = textOrEmpty(column);
        if (cell.isBlank()) {
            throw wrong(column, "must not be empty", cell);
        }
        return cell;
    }

    /** Text that may be missing. */
    public String textOrEmpty(String column) {
        String cell = record.get(column);
        for (int i = 0; i < cell.length(); i++) {
            if (Character.isISOControl(cell.charAt(i))) {
                throw wrong(column, "must be one line without control characters", cell);
            }
        }
        return cell;
    }

    /** Words separated by semicolons; none if the cell is empty. */
    public List<String> list(String column) {
        String cell = textOrEmpty(column);
        if (cell.isEmpty()) {
            return List.of();
        }
        List<String> words = new ArrayList<>();
        for (String word : Arrays.asList(cell.split(";", -1))) {
            if (!word.isBlank()) {
                words.add(word.strip());
            }
        }
        return List.copyOf(words);
    }

    /** A number that must be there, in the unit that the column's name carries. */
    public double number(String column, double least, double most) {
        return optional(column, least, most)
                .orElseThrow(() -> wrong(column, "must be a number such as 12.3", record.get(column)));
    }

    /** A number, empty where the cell is. */
    public OptionalDouble optional(String column, double least, double most) {
        String cell = textOrEmpty(column);
        if (cell.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (!NUMBER.matcher(cell).matches()) {
            throw wrong(column, "must be a number such as 12.3", cell);
        }
        double value = Double.parseDouble(cell);
        if (!new Limits(column, least, most, "").allow(value)) {
            throw wrong(column, "must be from " + least + " to " + most, cell);
        }
        return OptionalDouble.of(value);
    }

    /** One of several words. */
    public <T> T choice(String column, List<T> allowed, Function<T, String> word) {
        String cell = text(column);
        for (T one : allowed) {
            if (word.apply(one).equals(cell)) {
                return one;
            }
        }
        throw wrong(
                column,
                "must be one of "
                        + String.join(" / ", allowed.stream().map(word).toList()),
                cell);
    }

    /** A refusal of one cell, worded as all others are. */
    public static IllegalArgumentException wrong(String column, String rule, String value) {
        return new IllegalArgumentException(column + " " + rule + ", but was '" + Shown.cut(value, SHOWN) + "'");
    }
}
