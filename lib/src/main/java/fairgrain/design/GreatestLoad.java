package fairgrain.design;

import fairgrain.quantity.Mass;
import java.util.Optional;

/**
 * How much may stand somewhere before the first link of its way gives out.
 *
 * @param on where it stands: the name of shelves, or {@link Wall#CASE}
 * @param planned what the design puts there: on each shelf, or in the whole case
 * @param most what may stand there, the rest of the piece loaded as planned; never more than was looked at
 * @param setBy the check that sets it; empty if even {@link GreatestLoads#FARTHEST} times as much may stand there
 */
public record GreatestLoad(String on, Mass planned, Mass most, Optional<SetBy> setBy) {
    /**
     * The check that is at its limit first.
     *
     * @param part of the link, as the maker calls it
     * @param check what is compared
     */
    public record SetBy(Stage stage, String part, String check) {}
}
