package fairgrain.form;

import java.util.List;

/**
 * Looks things up by the names that makers give them, such as woods in a catalogue.
 *
 * @param <V> what is found
 */
public interface Finder<V> {
    /** Everything that the words may mean. One: that is it. Several: the maker is asked which. */
    List<V> find(String words);

    /** The name that means this thing and no other. */
    String name(V thing);

    /** Names that may have been meant where nothing is found, the likeliest first; may be empty. */
    List<String> nearest(String words);

    /** Where a maker can look names up, as the end of a sentence; may be empty. */
    default String hint() {
        return "";
    }

    /** All names, where they are few enough to be told; else none. */
    default List<String> few() {
        return List.of();
    }
}
