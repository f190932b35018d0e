package fairgrain.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Every unit that Fairgrain reads or writes: its signs, what it measures, and its value in SI. */
public enum Unit {
    METRE(Dimension.LENGTH, 1, "m", "metre", "metres"),
    CENTIMETRE(Dimension.LENGTH, 0.01, "cm"),
    MILLIMETRE(Dimension.LENGTH, 0.001, "mm", "millimetres"),
    INCH(Dimension.LENGTH, Length.METRES_PER_INCH, "in", "\"", "″", "inch", "inches"),
    FOOT(Dimension.LENGTH, 12 * Length.METRES_PER_INCH, "ft", "'", "′", "foot", "feet"),
    NEWTON(Dimension.FORCE, 1, "N"),
    KILONEWTON(Dimension.FORCE, 1000, "kN"),
    POUND_FORCE(Dimension.FORCE, Force.NEWTONS_PER_POUND, "lbf", "lb", "lbs", "pounds"),
    KILOGRAM_FORCE(Dimension.FORCE, Force.STANDARD_GRAVITY, "kgf", "kg"),
    PASCAL(Dimension.STRESS, 1, "Pa"),
    MEGAPASCAL(Dimension.STRESS, 1e6, "MPa", "N/mm2", "N/mm²"),
    GIGAPASCAL(Dimension.STRESS, 1e9, "GPa"),
    PSI(Dimension.STRESS, Force.NEWTONS_PER_POUND / (Length.METRES_PER_INCH * Length.METRES_PER_INCH), "psi"),
    KILOPASCAL(Dimension.PRESSURE, 1000, "kPa"),
    POUND_PER_SQUARE_FOOT(
            Dimension.PRESSURE,
            Force.NEWTONS_PER_POUND / (144 * Length.METRES_PER_INCH * Length.METRES_PER_INCH),
            "lb/ft²",
            "lb/ft2",
            "psf"),
    KILOGRAM(Dimension.MASS, 1, "kg", "kilograms"),
    GRAM(Dimension.MASS, 0.001, "g", "grams"),
    POUND(Dimension.MASS, Mass.KILOGRAMS_PER_POUND, "lb", "lbs", "pounds"),
    OUNCE(Dimension.MASS, Mass.KILOGRAMS_PER_POUND / 16, "oz", "ounces"),
    KILOGRAM_PER_METRE(Dimension.LINE_MASS, 1, "kg/m"),
    POUND_PER_FOOT(Dimension.LINE_MASS, Mass.KILOGRAMS_PER_POUND / (12 * Length.METRES_PER_INCH), "lb/ft", "lbs/ft"),
    KILOGRAM_PER_AREA(Dimension.AREA_MASS, 1, "kg/m²", "kg/m2"),
    POUND_PER_AREA(
            Dimension.AREA_MASS,
            Mass.KILOGRAMS_PER_POUND / (144 * Length.METRES_PER_INCH * Length.METRES_PER_INCH),
            "lb/ft²",
            "lb/ft2",
            "psf"),
    KILOGRAM_PER_CUBIC_METRE(Dimension.DENSITY, 1, "kg/m³", "kg/m3"),
    POUND_PER_CUBIC_FOOT(
            Dimension.DENSITY,
            Mass.KILOGRAMS_PER_POUND
                    / (1728 * Length.METRES_PER_INCH * Length.METRES_PER_INCH * Length.METRES_PER_INCH),
            "lb/ft³",
            "lb/ft3",
            "pcf"),
    NEWTON_METRE(Dimension.MOMENT, 1, "N m", "Nm"),
    POUND_INCH(Dimension.MOMENT, Force.NEWTONS_PER_POUND * Length.METRES_PER_INCH, "lb in", "in-lb"),
    MOISTURE_PERCENT(Dimension.MOISTURE, 0.01, "%", "percent"),
    HUMIDITY_PERCENT(Dimension.HUMIDITY, 0.01, "%", "percent"),
    CELSIUS(Dimension.TEMPERATURE, 1, 273.15, "°C", "C"),
    FAHRENHEIT(Dimension.TEMPERATURE, 1 / 1.8, 273.15 - 32 / 1.8, "°F", "F"),
    DAY(Dimension.TIME, 86_400, "days", "day", "d"),
    WEEK(Dimension.TIME, 7 * 86_400, "weeks", "week"),
    MONTH(Dimension.TIME, 365.25 / 12 * 86_400, "months", "month"),
    YEAR(Dimension.TIME, 365.25 * 86_400, "years", "year"),
    TIMES(Dimension.RATIO, 1, ""),
    PERCENT(Dimension.RATIO, 0.01, "%"),
    PIECES(Dimension.COUNT, 1, "");

    private final Dimension dimension;
    private final double scale;
    private final double zero;

    @SuppressWarnings("ImmutableEnumChecker") // List.of cannot be changed
    private final List<String> signs;

    Unit(Dimension dimension, double scale, String... signs) {
        this(dimension, scale, 0, signs);
    }

    Unit(Dimension dimension, double scale, double zero, String... signs) {
        this.dimension = dimension;
        this.scale = scale;
        this.zero = zero;
        this.signs = List.of(signs);
    }

    /** The sign it is written with. */
    public String sign() {
        return signs.get(0);
    }

    public Dimension dimension() {
        return dimension;
    }

    public double toSi(double value) {
        return value * scale + zero;
    }

    public double fromSi(double si) {
        return (si - zero) / scale;
    }

    /** The unit of a dimension with this sign; null if there is none. Capitals matter only where two signs differ by them. */
    public static @Nullable Unit find(Dimension dimension, String sign) {
        for (Unit unit : values()) {
            if (unit.dimension == dimension && unit.signs.contains(sign)) {
                return unit;
            }
        }
        for (Unit unit : values()) {
            if (unit.dimension == dimension
                    && unit.signs.stream()
                            .anyMatch(s -> s.toLowerCase(Locale.ROOT).equals(sign.toLowerCase(Locale.ROOT)))) {
                return unit;
            }
        }
        return null;
    }

    /** The signs that numbers of a dimension may carry, the first of each unit. */
    public static List<String> signs(Dimension dimension) {
        List<String> all = new ArrayList<>();
        for (Unit unit : values()) {
            if (unit.dimension == dimension && !unit.sign().isEmpty()) {
                all.add(unit.sign());
            }
        }
        return List.copyOf(all);
    }
}
