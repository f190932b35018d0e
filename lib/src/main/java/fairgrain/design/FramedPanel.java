package fairgrain.design;

import fairgrain.clearance.Figure;
import fairgrain.clearance.PanelFit;
import fairgrain.clearance.PanelLength;
import fairgrain.clearance.PanelWidth;
import fairgrain.finding.Question;
import fairgrain.part.Opening;
import fairgrain.part.Panel;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A panel and the opening it floats in.
 *
 * @param hold how much must stay in each groove at the dry end
 * @param widthAsCut if it is cut already; null while it is planned
 * @param figure how its grain runs
 * @param warp if it is cut already and not flat
 */
public record FramedPanel(
        String name,
        Panel panel,
        Opening opening,
        Length hold,
        @Nullable Length widthAsCut,
        Figure figure,
        Optional<HeldFlat> warp)
        implements Part {
    @Override
    public List<Question<?>> questions(Design design) {
        return questions(design, Length.ZERO);
    }

    /** The same, cut shorter by so much at each end: what the rails need beyond the usual gap. */
    List<Question<?>> questions(Design design, Length shorter) {
        Length width =
                widthAsCut == null ? opening.across().plus(opening.groove().depth()) : widthAsCut;
        PanelFit fit = new PanelFit(name, panel, opening, hold, width, design.setting());
        List<Question<?>> all = new ArrayList<>();
        all.add(widthAsCut == null ? new PanelWidth(fit.opening(shortened(shorter))) : fit);
        if (figure.isOdd()) {
            Length along = opening.along();
            if (along != null && Opening.ACROSS.allow(along.metres())) {
                PanelFit turned = fit.panel(panel.pinned(false)).opening(opening.across(along));
                all.add(new PanelLength(new PanelWidth(turned)));
            }
            all.add(figure.flatness(name));
        } else {
            warp.ifPresent(held -> all.addAll(held.questions(design)));
        }
        return List.copyOf(all);
    }

    private Opening shortened(Length atEachEnd) {
        Length along = opening.along();
        return along == null
                ? opening
                : new Opening(opening.across(), along.minus(atEachEnd.times(2)), opening.groove());
    }

    @Override
    public List<Piece> pieces(Design design) {
        return pieces(questions(design));
    }

    /** The panel at the width to cut; nothing if it is cut already, or if no width will do. */
    List<Piece> pieces(List<Question<?>> asked) {
        return asked.stream()
                .filter(PanelWidth.class::isInstance)
                .flatMap(question -> ((PanelWidth) question).cut().stream())
                .map(cut -> new Piece(
                        name,
                        "panel",
                        1,
                        panel.board().wood().name(),
                        false,
                        figure.isOdd() ? Optional.empty() : cut.lengthToCut(),
                        cut.width(),
                        panel.board().thickness(),
                        "on the day of cutting; the grain runs along the stiles"))
                .toList();
    }
}
