package fairgrain.design;

import fairgrain.hanging.BevelledPair;
import fairgrain.hanging.CaseScrews;
import fairgrain.hanging.Hangers;
import fairgrain.hanging.HangingScrew;
import fairgrain.hanging.Ledger;
import fairgrain.hanging.Rail;
import fairgrain.quantity.Length;
import java.util.Optional;

/**
 * What else than screws through a rail holds a case to the wall; empty where it was not said.
 *
 * @param bevelled two bevelled strips; the one on the wall is the rail
 * @param ledger a strip that stays under the case
 * @param hangers plates, hooks or brackets on the case
 */
public record HungBy(Optional<Bevelled> bevelled, Optional<LedgerSaid> ledger, Optional<Hangers> hangers) {
    /** Nothing else. */
    public static final HungBy SCREWS = new HungBy(Optional.empty(), Optional.empty(), Optional.empty());

    /** Both strips, as they were said; what is missing of the wood of the case is asked for. */
    public record Bevelled(
            double bevel,
            Length caseDepth,
            int screws,
            HangingScrew screw,
            Length screwLength,
            Length screwsBelowTop,
            CaseScrews.Driven driven,
            Material caseWood,
            Length caseThickness,
            BevelledPair.Bearing bearing,
            Optional<Boolean> liftStop,
            Optional<Length> freeAbove) {
        /** Empty where the density of the wood of the case is not known. */
        Optional<BevelledPair> pair() {
            return WallHardware.wood(caseWood, caseThickness, Optional.empty(), Optional.empty(), Rail.Held.BOTH_EDGES)
                    .map(member -> new BevelledPair(
                            bevel,
                            caseDepth,
                            new CaseScrews(screws, screw, screwLength, screwsBelowTop, driven, member),
                            bearing,
                            liftStop,
                            freeAbove));
        }
    }

    /** A ledger, as it was said. */
    public record LedgerSaid(
            Material wood,
            Length thickness,
            Length depth,
            Optional<Length> screwsUp,
            int perStud,
            Optional<Length> screwLength) {
        /** Its screws as long as those above if nothing else was said; empty where the density of its wood is not known. */
        Optional<Ledger> ledger(Length above) {
            return WallHardware.wood(wood, thickness, Optional.of(depth), screwsUp, Rail.Held.BOTH_EDGES)
                    .map(strip -> new Ledger(strip, perStud, screwLength.orElse(above)));
        }
    }
}
