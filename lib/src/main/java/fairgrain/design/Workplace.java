package fairgrain.design;

/** Where a maker stands when acting on an answer. */
public enum Workplace {
    BENCH,
    WALL
}
