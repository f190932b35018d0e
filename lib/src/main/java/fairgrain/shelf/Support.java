package fairgrain.shelf;

/** How the ends of a shelf are held. */
public enum Support {
    /** Four loose pins. */
    PINS("pins"),
    /** A strip under each end. */
    CLEATS("cleats"),
    /** Let into a housing (dado) at each end; reckoned as loose, since no published stiffness of a housing was found. */
    HOUSED("housed");

    private final String word;

    Support(String word) {
        this.word = word;
    }

    /** As it is written in a design. */
    public String word() {
        return word;
    }
}
