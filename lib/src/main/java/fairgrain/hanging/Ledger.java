package fairgrain.hanging;

import fairgrain.quantity.Length;
import fairgrain.quantity.Require;

/**
 * A ledger that stays under a cabinet, which rests on it.
 *
 * @param strip its wood; its depth must be known
 * @param perStud screws in each stud, like those of the cabinet
 * @param screwLength from under the head
 */
public record Ledger(Rail strip, int perStud, Length screwLength) {
    public Ledger {
        if (strip.depth().isEmpty()) {
            throw new IllegalArgumentException("the depth of the ledger must be known");
        }
        Require.between("screws of the ledger in each stud", perStud, 1, 12, "screws");
        Fixing.LENGTH.check(screwLength);
        strip = strip.held(Rail.Held.BOTH_EDGES); // its lever is counted about its own heel
    }

    public Ledger perStud(int other) {
        return new Ledger(strip, other, screwLength);
    }

    /** Its screws in the same studs. */
    Fixing fixing(Fixing above) {
        return new Fixing(
                above.screw(), screwLength, new Row(new Length(strip.below()), perStud), above.studs(), strip);
    }
}
