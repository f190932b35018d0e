package fairgrain.design;

import fairgrain.clearance.DoorGap;
import fairgrain.clearance.HungDoor;
import fairgrain.clearance.Reveal;
import fairgrain.finding.Evidence;
import fairgrain.finding.Missing;
import fairgrain.finding.Question;
import fairgrain.finding.Unasked;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The opening that a door closes, as far as it was said.
 *
 * @param hung inside it or over it, if said
 * @param overlap of an overlay door, if said
 * @param gap where it closes, if it hangs already
 * @param gapAboveAndBelow the same at top and bottom
 */
public record DoorOpening(
        Length width,
        Length height,
        Optional<HungDoor.Hung> hung,
        boolean pair,
        Optional<Length> overlap,
        Length overlapWanted,
        Reveal reveal,
        Optional<Length> hingeLeaf,
        Length setBack,
        Optional<Length> gap,
        Optional<Length> gapAboveAndBelow) {

    List<Question<?>> questions(Door door, Setting in) {
        List<Missing> missing = new ArrayList<>();
        if (hung.isEmpty()) {
            missing.add(new Missing("how the door sits to its opening", "enter 'hung' as inset or overlay"));
        } else if (hung.get() == HungDoor.Hung.OVERLAY && overlap.isEmpty()) {
            missing.add(new Missing(
                    "how far the door lies over the edges of its opening", "measure it and enter 'overlap'"));
        }
        if (!missing.isEmpty()) {
            return List.of(new Unasked(
                    door.name(), "how wide and high to make it", missing, Evidence.of(DoorGap.SOURCE), Set.of()));
        }
        boolean inset = hung.orElseThrow() == HungDoor.Hung.INSET;
        HungDoor hungDoor = new HungDoor(
                door.frame(),
                width,
                height,
                hung.orElseThrow(),
                pair,
                inset ? Length.ZERO : overlap.orElseThrow(),
                reveal,
                inset ? Length.ZERO : overlapWanted,
                hingeLeaf.orElse(null),
                setBack);
        return List.of(
                new DoorGap(door.name(), hungDoor, DoorGap.Side.WIDTH, gap.orElse(null), door.width(), in),
                new DoorGap(
                        door.name(), hungDoor, DoorGap.Side.HEIGHT, gapAboveAndBelow.orElse(null), door.height(), in));
    }
}
