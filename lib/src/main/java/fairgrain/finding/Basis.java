package fairgrain.finding;

import fairgrain.quantity.Shown;
import java.util.Arrays;

/** How far a figure was checked against its source. Best first; the word stands beside the figure wherever it is shown. */
public enum Basis {
    /** The figure stood in a text that was read. */
    READ("read"),
    /** Stated by whoever makes the product. */
    DECLARED("declared by the maker of the product"),
    /** Measured or chosen by the person who asks. */
    ENTERED("entered by you"),
    /** Worked out in this project from first principles or from figures that were read. */
    DERIVED("worked out here"),
    /** Read in a text that quotes the source, not in the source. */
    SECOND_HAND("second-hand"),
    /** What the trade does; no single source. */
    COMMON_PRACTICE("common practice"),
    /** Recalled, not read. */
    MEMORY("from memory"),
    /** A choice made in this project where no source was found. */
    JUDGEMENT("judgement");

    private final String words;

    Basis(String words) {
        this.words = words;
    }

    /** As it is written in tables and on sheets. */
    public String words() {
        return words;
    }

    /** Reads {@link #words()}. */
    public static Basis of(String words) {
        for (Basis basis : values()) {
            if (basis.words.equals(words)) {
                return basis;
            }
        }
        throw new IllegalArgumentException("basis must be one of "
                + String.join(" / ", Arrays.stream(values()).map(Basis::words).toList()) + ", but was "
                + Shown.quoted(words));
    }

    /** The one that was checked less far. */
    public Basis weaker(Basis other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
