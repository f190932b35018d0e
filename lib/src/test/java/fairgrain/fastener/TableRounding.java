package fairgrain.fastener;

/** How a printed table was rounded. */
enum TableRounding {
    NONE,
    NEAREST_1,
    NEAREST_10,
    CUT_TO_1;

    double apply(double value) {
        return switch (this) {
            case NONE -> value;
            case NEAREST_1 -> Math.round(value);
            case NEAREST_10 -> 10.0 * Math.round(value / 10);
            case CUT_TO_1 -> Math.floor(value);
        };
    }
}
