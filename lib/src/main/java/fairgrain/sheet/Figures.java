package fairgrain.sheet;

import fairgrain.clearance.PanelFit;
import fairgrain.clearance.PanelWidth;
import fairgrain.drawing.Drawing;
import fairgrain.finding.Question;
import fairgrain.quantity.ShopRule;
import java.util.Optional;

/** Which drawing goes with a question. */
final class Figures {
    private Figures() {}

    /** The drawing of what is asked about; empty where there is nothing to draw. */
    static Optional<Block.Figure> of(Question<?> question, ShopRule rule) {
        if (question instanceof PanelWidth width) {
            return Optional.of(panel(width.chosen(), rule));
        }
        return question instanceof PanelFit fit ? Optional.of(panel(fit, rule)) : Optional.empty();
    }

    private static Block.Figure panel(PanelFit fit, ShopRule rule) {
        Drawing drawing = PanelFigure.of(fit, rule);
        return new Block.Figure(
                drawing,
                "Cut across, full size when printed 96 mm wide; the middle is left out. Both ends of the year at the"
                        + " likely worst for 19 boards in 20.");
    }
}
