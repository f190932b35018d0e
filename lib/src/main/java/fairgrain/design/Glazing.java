package fairgrain.design;

import fairgrain.clearance.DoorFrame;
import fairgrain.clearance.GlassInRebate;
import fairgrain.clearance.Pane;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Mass;
import java.util.Optional;

/**
 * A pane and the rebate it lies in, but for its frame.
 *
 * @param planned whether its clearance is still to be chosen
 * @param weighs as it was weighed, for a made-up pane such as leaded glass; empty for a plain one
 */
public record Glazing(Pane pane, boolean planned, Length rebate, Length cover, Optional<Mass> weighs) {
    public static final Limits WEIGHS = new Limits("weight of a made-up pane", 0.05, 60, "kg");

    public Glazing {
        weighs.ifPresent(WEIGHS::check);
    }

    GlassInRebate question(String part, DoorFrame frame, Length across, Length up, Setting in) {
        GlassInRebate asked = new GlassInRebate(part, frame, across, up, rebate, cover, pane, in);
        return planned ? asked.planned() : asked;
    }
}
