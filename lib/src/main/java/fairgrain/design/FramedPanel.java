package fairgrain.design;

import fairgrain.clearance.PanelFit;
import fairgrain.clearance.PanelWidth;
import fairgrain.finding.Question;
import fairgrain.part.Opening;
import fairgrain.part.Panel;
import fairgrain.quantity.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A panel and the opening it floats in.
 *
 * @param hold how much must stay in each groove at the dry end
 * @param widthAsCut if it is cut already; null while it is planned
 */
public record FramedPanel(
        String name,
        Panel panel,
        Opening opening,
        Length hold,
        @Nullable Length widthAsCut) implements Part {
    @Override
    public List<Question<?>> questions(Design design) {
        Length width =
                widthAsCut == null ? opening.across().plus(opening.groove().depth()) : widthAsCut;
        PanelFit fit = new PanelFit(name, panel, opening, hold, width, design.setting());
        return List.of(widthAsCut == null ? new PanelWidth(fit) : fit);
    }
}
