package fairgrain.shelf;

import org.jspecify.annotations.Nullable;

/**
 * What a shelf may bear for good, besides its bending stress. Null where nothing is known.
 *
 * @param shear along the board [Pa]
 * @param bearing on its underside [Pa]
 * @param minutes how many times as much it may bear for minutes as for good
 */
public record ShelfStrengths(
        @Nullable Double shear, @Nullable Double bearing, double minutes) {
    /** Nothing known, and no more for minutes than for good. */
    public static final ShelfStrengths NONE = new ShelfStrengths(null, null, 1);
}
