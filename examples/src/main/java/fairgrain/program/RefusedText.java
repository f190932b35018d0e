package fairgrain.program;

/** Text that cannot be read any further, with the place and the reason in the maker's words. Never leaves the reading. */
final class RefusedText extends Exception {
    private static final long serialVersionUID = 1L;

    private final String at;
    private final String sentence;

    RefusedText(String at, String sentence) {
        super(at + ": " + sentence);
        this.at = at;
        this.sentence = sentence;
    }

    String at() {
        return at;
    }

    String sentence() {
        return sentence;
    }
}
