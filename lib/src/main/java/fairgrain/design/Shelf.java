package fairgrain.design;

import fairgrain.finding.Caution;
import fairgrain.finding.Missing;
import fairgrain.finding.Question;
import fairgrain.finding.Unasked;
import fairgrain.quantity.Length;
import fairgrain.shelf.SagLimit;
import fairgrain.shelf.ShelfLoad;
import fairgrain.shelf.ShelfSag;
import fairgrain.shelf.ShelfStock;
import fairgrain.shelf.Support;
import java.util.List;
import java.util.Set;

/** Shelves that are alike. */
public record Shelf(
        String name,
        int count,
        ShelfStock stock,
        Length span,
        Length depth,
        Length thickness,
        Support support,
        ShelfLoad load,
        boolean behindDoors)
        implements Part {
    @Override
    public List<Question<?>> questions(Design design) {
        if (stock.creep() == null) {
            return List.of(new Unasked(
                    name,
                    "will it sag",
                    List.of(new Missing(
                            "how " + stock.name() + " creeps in a place that is damp for months",
                            "use solid wood, plywood or a board declared for damp places")),
                    stock.evidence(),
                    Set.of(Caution.ASSUMED_CONTENTS, Caution.SHELF_IN_USE)));
        }
        return List.of(new ShelfSag(
                name,
                stock,
                span,
                depth,
                thickness,
                support,
                load,
                behindDoors ? SagLimit.BEHIND_DOORS : SagLimit.OPEN,
                design.setting()));
    }

    /** Mass of one shelf, empty [kg]. */
    public double mass() {
        return stock.density() * span.metres() * depth.metres() * thickness.metres();
    }
}
