package fairgrain.shelf;

/** What holds the back edge of a shelf. */
public enum BackEdge {
    FREE("free"),
    /** On a cleat all along, not fastened: the back corners lift and the front sags more. */
    ON_CLEAT("on a cleat"),
    /** Screwed to a cleat all along, near both ends at least. */
    SCREWED_TO_CLEAT("screwed to a cleat"),
    /** Screwed all along to a back that stands on the bottom and cannot sag. */
    SCREWED_TO_BACK("screwed to the back");

    private final String word;

    BackEdge(String word) {
        this.word = word;
    }

    /** As it is written in a design. */
    public String word() {
        return word;
    }
}
