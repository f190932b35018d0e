package fairgrain.drawing;

/** How a line is drawn. Told apart by width and dashes, never by colour alone. */
public enum Pen {
    /** Edges of what is cut. */
    EDGE(0.45, false, false),
    /** Dimension lines, hatching, everything that is not an edge. */
    FINE(0.18, false, false),
    /** Where something was, will be, or is hidden. */
    DASHED(0.3, true, false),
    /** What the drawing is about. */
    ACCENT(0.6, false, true);

    private final double width;
    private final boolean dashed;
    private final boolean accent;

    Pen(double width, boolean dashed, boolean accent) {
        this.width = width;
        this.dashed = dashed;
        this.accent = accent;
    }

    /** Of the line [mm]. */
    public double width() {
        return width;
    }

    public boolean isDashed() {
        return dashed;
    }

    public boolean isAccent() {
        return accent;
    }
}
