package fairgrain.hygrometer;

import fairgrain.quantity.Shown;
import java.util.Locale;

/**
 * A column of a log, by its name in the heading or by its number.
 *
 * @param name as it stands in the heading, or the number as it was given
 * @param number counted from 1; 0 where it goes by its name
 */
public record Column(String name, int number) {
    /** No hygrometer writes more. */
    public static final int MOST = 200;

    public Column {
        if (name.isBlank() || number < 0 || number > MOST) {
            throw new IllegalArgumentException(
                    "a column must be a name, or a number from 1 to " + MOST + ", but was " + Shown.quoted(name));
        }
    }

    /** Reads digits as a number and all else as a name. */
    public static Column of(String text) {
        String column = text.strip();
        if (!column.matches("\\d+")) {
            return new Column(column, 0);
        }
        int number = column.length() > 6 ? MOST + 1 : Integer.parseInt(column);
        return new Column(column, number == 0 ? MOST + 1 : number);
    }

    boolean goesByName() {
        return number == 0;
    }

    /** Whether a cell of the heading is its name; capitals and blanks do not matter. */
    boolean isCalled(String cell) {
        return plain(cell).equals(plain(name));
    }

    private static String plain(String cell) {
        return cell.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }
}
