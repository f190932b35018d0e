package fairgrain.shelf;

import fairgrain.finding.Evidence;
import fairgrain.quantity.Require;

/**
 * How many times the first sag is added over the years.
 *
 * @param expected what to expect
 * @param cautious what to plan for, not below what is expected
 */
public record Creep(double expected, double cautious, Evidence evidence) {
    public Creep {
        Require.between("expected creep", expected, 0, 10, "times the first sag");
        Require.between("cautious creep", cautious, expected, 10, "times the first sag");
    }
}
