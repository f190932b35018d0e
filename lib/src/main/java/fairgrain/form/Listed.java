package fairgrain.form;

import java.util.List;

/** Words one behind the other, as they are said. */
final class Listed {
    private Listed() {}

    /** {@code a, b or c}. */
    static String or(List<String> words) {
        int last = words.size() - 1;
        return last < 1 ? String.join("", words) : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
    }

    /** {@code ; did you mean 'a' or 'b'?}, or nothing if there is nothing near. */
    static String didYouMean(List<String> near) {
        return near.isEmpty()
                ? ""
                : "; did you mean " + or(near.stream().map(w -> "'" + w + "'").toList()) + "?";
    }
}
