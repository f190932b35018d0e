package fairgrain.shelf;

import fairgrain.finding.Check;
import fairgrain.finding.Draw;
import fairgrain.finding.Model;
import fairgrain.finding.Reliability;
import fairgrain.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/** The likely worst cases of one shelf, kept, so that shelves much like it can be guessed at cheaply. */
final class PlannedShelf {
    private final List<Draw> worst = new ArrayList<>();

    PlannedShelf(ShelfSag shelf) {
        Model<ShelfSag.Sag> model = shelf.model();
        List<Check> checks = model.at(Draw.AS_PLANNED).checks();
        for (int check = 0; check < checks.size(); check++) {
            worst.add(
                    checks.get(check).dimension() == Dimension.LENGTH
                            ? Reliability.worst(
                                    model, shelf.spreads(), check, shelf.in().deviations())
                            : Draw.AS_PLANNED);
        }
    }

    /** Whether a shelf much like it holds in the same worst cases. */
    boolean likely(ShelfSag other) {
        Model<ShelfSag.Sag> model = other.model();
        List<Check> expected = model.at(Draw.AS_PLANNED).checks();
        for (int check = 0; check < expected.size(); check++) {
            Check planned = expected.get(check);
            if (check < worst.size() && planned.dimension() == Dimension.LENGTH) {
                planned = model.at(worst.get(check)).checks().get(check);
            }
            if (!planned.holds()) {
                return false;
            }
        }
        return true;
    }
}
