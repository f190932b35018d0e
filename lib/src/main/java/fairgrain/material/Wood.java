package fairgrain.material;

import org.jspecify.annotations.Nullable;

/**
 * What the table says of one wood. Null means that nothing is known.
 *
 * @param id key of its row, such as {@code black-walnut}
 */
public record Wood(
        String id,
        WoodNames names,
        Origin origin,
        @Nullable Shrinkage shrinkage,
        @Nullable SpecificGravity gravity,
        @Nullable Strength strength,
        String note) {

    /** Where a wood's figures come from, and whether it bears needles or leaves where the table tells. */
    public enum Origin {
        US_HARDWOOD("us hardwood"),
        US_SOFTWOOD("us softwood"),
        IMPORTED("imported"),
        EUROPEAN("european");

        private final String words;

        Origin(String words) {
            this.words = words;
        }

        /** As it is written in the table. */
        public String words() {
            return words;
        }
    }

    /** The name that means this wood and no other. */
    public String name() {
        return names.common();
    }
}
