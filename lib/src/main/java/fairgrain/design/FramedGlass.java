package fairgrain.design;

import fairgrain.clearance.DoorFrame;
import fairgrain.finding.Question;
import fairgrain.quantity.Length;
import java.util.List;

/** A pane of glass and the frame it lies in. */
public record FramedGlass(String name, DoorFrame frame, Length across, Length up, Glazing glazing) implements Part {
    @Override
    public List<Question<?>> questions(Design design) {
        return List.of(glazing.question(name, frame, across, up, design.setting()));
    }
}
