package fairgrain.hygrometer;

/** Everything that can be wrong with a row of a log, or with what lies between two. */
public enum Fault {
    QUOTES("row", "with quotes that do not match", "left out", true),
    TOO_SHORT("row", "with too few cells", "left out", true),
    TIME("row", "whose time has another form", "left out", true),
    BLANK("row", "without a reading", "left out", false),
    NUMBER("row", "whose temperature or humidity is no number", "left out", true),
    TEMPERATURE_STUCK("row", "at -40 or 85 °C, which sensors show when they fail", "left out", false),
    TEMPERATURE_ODD("row", "outside -30 to 60 °C", "left out", false),
    HUMIDITY_STUCK("row", "at 0 %, or at 99.9 % and more, where sensors stick", "left out", false),
    HUMIDITY_ODD("row", "outside 0 to 100 % humidity", "left out", false),
    REPEATED("row", "with the time of the reading before", "left out", false),
    BACKWARDS("row", "earlier than the reading before", "left out", true),
    LEAP("row", "more than a year ahead of the reading before, and alone there", "left out", false),
    GAP("gap", "of more than 6 hours between readings", "not bridged", false),
    UNCHANGED("stretch", "of more than 3 days without any change: the sensor may be stuck", "kept", false),
    COLD("row", "below -1.1 °C, where the printed table of moisture contents begins", "kept", false);

    private final String noun;
    private final String what;
    private final String done;
    private final boolean spoils;

    Fault(String noun, String what, String done, boolean spoils) {
        this.noun = noun;
        this.what = what;
        this.done = done;
        this.spoils = spoils;
    }

    /** {@code 3 rows without a reading}. */
    String counted(long count) {
        String plural = noun.endsWith("ch") ? noun + "es" : noun + "s";
        return count + " " + (count == 1 ? noun : plural) + " " + what;
    }

    /** What was done with it. */
    public String done() {
        return done;
    }

    /** Whether many of it mean that the log was described wrongly, rather than that a sensor failed. */
    boolean spoils() {
        return spoils;
    }
}
