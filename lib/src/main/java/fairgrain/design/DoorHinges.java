package fairgrain.design;

import fairgrain.door.Hinges;
import fairgrain.door.HingesHold;
import fairgrain.door.LeafIn;
import fairgrain.finding.Caution;
import fairgrain.finding.Evidence;
import fairgrain.finding.Missing;
import fairgrain.finding.Question;
import fairgrain.finding.Unasked;
import fairgrain.quantity.Force;
import java.util.List;
import java.util.Set;

/**
 * How a door hangs on the side of the case.
 *
 * @param leaning of a hand on the open door
 */
public record DoorHinges(Hinges hinges, Force leaning) {
    static final String ASKED = "do its hinges hold";

    Question<?> question(Door door, Design design) {
        if (design.box().isEmpty()) {
            return new Unasked(
                    door.name(),
                    ASKED,
                    List.of(new Missing("what the other leaf is screwed to", "enter 'case' with its sides")),
                    Evidence.of(HingesHold.SOURCE),
                    Set.of(Caution.CHILDREN));
        }
        Box box = design.box().get();
        LeafIn stile =
                new Material(door.stile().wood(), null).leafIn(door.stile().width());
        return new HingesHold(
                door.name(),
                door.heavyWeight(),
                door.width(),
                door.height(),
                hinges,
                stile,
                box.material().leafIn(box.thickness()),
                leaning,
                design.setting().rule());
    }
}
