package fairgrain.finding;

import fairgrain.quantity.Shown;
import java.util.regex.Pattern;

/**
 * A place in a source, and how far what stands there was checked.
 *
 * @param source key of a row in {@code data/sources.csv}
 * @param place where in it: equation, table, clause or page; may be empty
 * @param basis how far the figure was checked
 */
public record Citation(String source, String place, Basis basis) {
    private static final Pattern KEY = Pattern.compile("[a-z][a-z0-9-]*");

    public Citation {
        if (!KEY.matcher(source).matches()) {
            throw new IllegalArgumentException(
                    "a source is named by its key in sources.csv, such as gtr190, but was " + Shown.quoted(source));
        }
    }

    public static Citation of(String source, String place, Basis basis) {
        return new Citation(source, place, basis);
    }

    /** Reads {@code gtr190, table 4-3}: the key, then the place. */
    public static Citation parse(String text, Basis basis) {
        int comma = text.indexOf(',');
        return comma < 0
                ? new Citation(text.strip(), "", basis)
                : new Citation(
                        text.substring(0, comma).strip(),
                        text.substring(comma + 1).strip(),
                        basis);
    }

    /** As it is printed, for example {@code gtr190, eq. 4-5 (read)}. */
    @Override
    public String toString() {
        return source + (place.isEmpty() ? "" : ", " + place) + " (" + basis.words() + ")";
    }
}
