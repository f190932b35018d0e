package fairgrain.program;

import java.util.List;

/**
 * One question to a maker.
 *
 * @param columns that a typed answer may be for: the first that can read it takes it; none if only a number will do
 * @param question what is asked
 * @param empty what an empty answer stands for: an answer as it would be typed, nothing if one is needed, or {@link #LEAVE}
 * @param picks what can be seen, to choose from by number
 */
record Ask(List<String> columns, String question, String empty, List<Pick> picks) {
    /** An empty answer leaves the key out. */
    static final String LEAVE = "leave it out";

    Ask {
        columns = List.copyOf(columns);
        picks = List.copyOf(picks);
    }

    static Ask of(String column, String question, String empty, Pick... picks) {
        return new Ask(List.of(column), question, empty, List.of(picks));
    }

    /** What is answered by the number of what is seen, and in no other way. */
    static Ask seen(String question, String empty, Pick... picks) {
        return new Ask(List.of(), question, empty, List.of(picks));
    }

    /**
     * Something that a maker sees, and what it means.
     *
     * @param seen in the maker's words
     * @param column that it fills in; empty if none
     * @param typed what it fills in
     * @param told what to say when it is chosen; may be empty
     * @param then what to ask next
     */
    record Pick(String seen, String column, String typed, String told, List<Ask> then) {
        Pick {
            then = List.copyOf(then);
        }

        static Pick of(String seen, String column, String typed) {
            return new Pick(seen, column, typed, "", List.of());
        }

        static Pick then(String seen, Ask... then) {
            return new Pick(seen, "", "", "", List.of(then));
        }

        static Pick told(String seen, String told) {
            return new Pick(seen, "", "", told, List.of());
        }
    }
}
