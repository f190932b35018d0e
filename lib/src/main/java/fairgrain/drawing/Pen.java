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

    /** Of letters and of all lines but one. */
    public static final int INK = 0x1a1a1a;

    private static final int ACCENT_COLOUR = 0x8a2d12; // 8.6 to 1 on white

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

    /** Red, green and blue, a byte each. */
    public int colour() {
        return accent ? ACCENT_COLOUR : INK;
    }

    public boolean isDashed() {
        return dashed;
    }
}
