package fairgrain.shelf;

/** What a glass shelf lies on. */
public enum GlassSupport {
    /** Four pins, two at each end. */
    PINS("pins"),
    /** A cleat right across under each end; one along the back that carries without holding down is not counted. */
    CLEATS("cleats"),
    /** A groove or strips above and below along both ends and the back. */
    THREE_EDGES("three edges");

    private final String word;

    GlassSupport(String word) {
        this.word = word;
    }

    /** As it is written in a design. */
    public String word() {
        return word;
    }
}
