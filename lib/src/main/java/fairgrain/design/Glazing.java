package fairgrain.design;

import fairgrain.clearance.DoorFrame;
import fairgrain.clearance.GlassInRebate;
import fairgrain.clearance.Pane;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;

/**
 * A pane and the rebate it lies in, but for its frame.
 *
 * @param planned whether its clearance is still to be chosen
 */
public record Glazing(Pane pane, boolean planned, Length rebate, Length cover) {
    GlassInRebate question(String part, DoorFrame frame, Length across, Length up, Setting in) {
        GlassInRebate asked = new GlassInRebate(part, frame, across, up, rebate, cover, pane, in);
        return planned ? asked.planned() : asked;
    }
}
