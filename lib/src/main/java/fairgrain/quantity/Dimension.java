package fairgrain.quantity;

/** What a number measures. */
public enum Dimension {
    LENGTH,
    FORCE,
    STRESS,
    PRESSURE,
    MASS,
    LINE_MASS,
    AREA_MASS,
    DENSITY,
    MOMENT,
    MOISTURE,
    HUMIDITY,
    TEMPERATURE,
    TIME,
    RATIO,
    COUNT
}
