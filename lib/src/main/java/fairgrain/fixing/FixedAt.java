package fairgrain.fixing;

/** Where two parts stay put to each other; from there they move apart. */
public enum FixedAt {
    FRONT("front"),
    MIDDLE("middle"),
    BACK("back");

    private final String word;

    FixedAt(String word) {
        this.word = word;
    }

    /** As it is written in a design. */
    public String word() {
        return word;
    }

    /** How far a screw lies from the fixed place [m], given its place from the front and the width between the outermost. */
    double distance(double fromFront, double between) {
        return switch (this) {
            case FRONT -> fromFront;
            case MIDDLE -> Math.abs(fromFront - between / 2);
            case BACK -> between - fromFront;
        };
    }

    /** How far the farthest screw lies from the fixed place [m]. */
    double arm(double between) {
        return this == MIDDLE ? between / 2 : between;
    }
}
