package fairgrain.design;

/** Wood that a screw may go into. */
public enum ScrewsInto {
    STUDS("studs"),
    BLOCKING("blocking"),
    BACKING("plywood backing");

    private final String word;

    ScrewsInto(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
