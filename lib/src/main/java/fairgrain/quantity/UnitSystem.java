package fairgrain.quantity;

import java.util.List;

/** What a bare length means, and in which units numbers are written. */
public enum UnitSystem {
    INCHES("inches", Unit.INCH),
    MILLIMETRES("millimetres", Unit.MILLIMETRE);

    private final String word;
    private final Unit length;

    UnitSystem(String word, Unit length) {
        this.word = word;
        this.length = length;
    }

    /** As it is written in a design. */
    public String word() {
        return word;
    }

    /** Other words for it that a maker may type. */
    public List<String> also() {
        return this == INCHES ? List.of("inch", "in") : List.of("mm", "millimetre", "millimeters", "millimeter");
    }

    /** The unit of a length that carries none. */
    public Unit length() {
        return length;
    }

    /** The unit in which numbers of a dimension are written. */
    public Unit unit(Dimension dimension) {
        boolean inches = this == INCHES;
        return switch (dimension) {
            case LENGTH -> length;
            case FORCE -> inches ? Unit.POUND_FORCE : Unit.NEWTON;
            case STRESS -> inches ? Unit.PSI : Unit.MEGAPASCAL;
            case PRESSURE -> inches ? Unit.POUND_PER_SQUARE_FOOT : Unit.KILOPASCAL;
            case MASS -> inches ? Unit.POUND : Unit.KILOGRAM;
            case LINE_MASS -> inches ? Unit.POUND_PER_FOOT : Unit.KILOGRAM_PER_METRE;
            case AREA_MASS -> inches ? Unit.POUND_PER_AREA : Unit.KILOGRAM_PER_AREA;
            case DENSITY -> inches ? Unit.POUND_PER_CUBIC_FOOT : Unit.KILOGRAM_PER_CUBIC_METRE;
            case MOMENT -> inches ? Unit.POUND_INCH : Unit.NEWTON_METRE;
            case MOISTURE -> Unit.MOISTURE_PERCENT;
            case HUMIDITY -> Unit.HUMIDITY_PERCENT;
            case TEMPERATURE -> inches ? Unit.FAHRENHEIT : Unit.CELSIUS;
            case TIME -> Unit.DAY;
            case RATIO -> Unit.TIMES;
            case COUNT -> Unit.PIECES;
        };
    }
}
