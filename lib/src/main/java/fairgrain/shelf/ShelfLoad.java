package fairgrain.shelf;

import fairgrain.finding.Evidence;
import fairgrain.quantity.Limits;

/**
 * What stands on a shelf, spread evenly along it.
 *
 * @param said as the maker calls it
 * @param expected mass per length to reckon the sag with [kg/m]
 * @param heavy mass per length to reckon strength with, not below what is expected [kg/m]
 * @param cv coefficient of variation of the expected figure
 */
public record ShelfLoad(String said, double expected, double heavy, double cv, Evidence evidence) {
    public static final Limits PER_LENGTH = new Limits("load along the shelf", 0, 500, "kg/m");

    public ShelfLoad {
        PER_LENGTH.check(expected);
        new Limits("heavy load along the shelf", expected, 500, "kg/m").check(heavy);
        new Limits("coefficient of variation", 0, 0.6, "(a ratio)").check(cv);
    }

    /** So many times as much of the same. */
    public ShelfLoad times(double factor) {
        return new ShelfLoad(said, factor * expected, factor * heavy, cv, evidence);
    }
}
