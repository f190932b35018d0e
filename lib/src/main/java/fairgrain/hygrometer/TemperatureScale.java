package fairgrain.hygrometer;

import fairgrain.quantity.Unit;
import java.util.List;
import java.util.regex.Pattern;

/** The degrees that a log is written in. Always asked for: 30 may be a frost or a heat wave. */
public enum TemperatureScale {
    CELSIUS(Unit.CELSIUS, "celsius", "C", "°C", "℃"),
    FAHRENHEIT(Unit.FAHRENHEIT, "fahrenheit", "F", "°F", "℉");

    private final Unit unit;
    private final String word;

    @SuppressWarnings("ImmutableEnumChecker") // List.of cannot be changed
    private final List<String> signs;

    private final Pattern inHeading;

    TemperatureScale(Unit unit, String word, String... signs) {
        this.unit = unit;
        this.word = word;
        this.signs = List.of(signs);
        String letter = signs[0];
        this.inHeading = Pattern.compile(
                word + "|°\\s*" + letter + "|[(\\[]\\s*" + letter + "\\s*[)\\]]|"
                        + String.join("|", this.signs.subList(1, 3)),
                Pattern.CASE_INSENSITIVE);
    }

    /** {@code celsius} or {@code fahrenheit}. */
    public String word() {
        return word;
    }

    /** Other ways to write it, which may stand behind a number too: {@code C}, {@code °C}. */
    public List<String> signs() {
        return signs;
    }

    /** {@code C} or {@code F}. */
    String letter() {
        return signs.get(0);
    }

    TemperatureScale other() {
        return this == CELSIUS ? FAHRENHEIT : CELSIUS;
    }

    /** Whether the name of a column says that its degrees are these. */
    boolean isNamedIn(String column) {
        return inHeading.matcher(column).find();
    }

    double toKelvin(double degrees) {
        return unit.toSi(degrees);
    }
}
