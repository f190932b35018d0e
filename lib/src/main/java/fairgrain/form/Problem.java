package fairgrain.form;

/**
 * Something wrong with the input.
 *
 * @param at where, such as {@code lakeside.yaml:7:20}
 * @param sentence what, in the maker's words
 */
public record Problem(String at, String sentence) {
    /** The line to print. */
    public String text() {
        return at + ": " + sentence;
    }
}
