package fairgrain.design;

import fairgrain.clearance.PanelFit;
import fairgrain.material.SheetGood;
import fairgrain.material.SheetMovement;
import fairgrain.part.Groove;
import fairgrain.quantity.Length;
import java.util.Optional;

/**
 * A sheet in the grooves of a door, in the place of a panel.
 *
 * @param moves empty if no table knows how much that kind of sheet grows
 * @param glued in all round: it keeps the frame square then
 */
public record SheetFill(
        SheetGood sheet, Optional<SheetMovement> moves, Length thickness, Groove groove, boolean glued) {
    /** Mass, as far as it reaches into the grooves [kg]. */
    double mass(Length across, Length up) {
        double behind = 2 * groove.depth().metres();
        return (across.metres() + behind) * (up.metres() + behind) * thickness.metres() * sheet.density();
    }

    /** What is asked of one that lies loose. */
    SheetInFrame loose(String name, Length longerWay) {
        return new SheetInFrame(
                name, sheet.name(), moves, longerWay, groove.depth(), PanelFit.USUAL_HOLD, Optional.empty());
    }
}
