package fairgrain.form;

/**
 * A value that the input left out and that was taken instead. Each is printed, so that nothing is assumed in silence.
 *
 * @param part the part it belongs to, as the maker calls it; empty for the whole
 * @param key the key left out, with the blocks it stands in, such as {@code groove depth}
 * @param value what was taken
 * @param why in a few words
 */
public record Taken(String part, String key, String value, String why) {
    /** The line to print. */
    public String text() {
        return (part.isEmpty() ? "" : part + ": ") + key + " taken as " + value + ": " + why;
    }
}
