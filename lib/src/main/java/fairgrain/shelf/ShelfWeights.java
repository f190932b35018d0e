package fairgrain.shelf;

import fairgrain.bending.PlateLoad;
import fairgrain.quantity.Force;
import java.util.List;

/** What presses on a shelf, as loads on a plate. x counts from the left end of the board. */
final class ShelfWeights {
    private static final double HAND = 0.02; // m, side of the patch under a hand

    private final ShelfSag shelf;
    private final double left;

    ShelfWeights(ShelfSag shelf) {
        this.shelf = shelf;
        left = shelf.supports().left().metres();
    }

    /** The shelf itself, its strips spread over all of it. */
    List<PlateLoad> own() {
        return List.of(even(0, shelf.supports().length(), ownPerLength()));
    }

    /** Mass of a metre of the shelf itself [kg/m]. */
    double ownPerLength() {
        return shelf.section().massPerLength(shelf.stock());
    }

    /** So much along the filled part [kg/m]. */
    List<PlateLoad> spread(double perLength) {
        Loads.Filled filled = shelf.loads().filled();
        PlateLoad all = filled == null
                ? even(0, shelf.supports().length(), perLength)
                : even(left + filled.from().metres(), left + filled.to().metres(), perLength);
        Row row = shelf.loads().row();
        double depth = shelf.depth().metres();
        return List.of(
                row == null
                        ? all
                        : new PlateLoad(
                                all.x(),
                                all.length(),
                                row.middle(depth),
                                row.depth().metres(),
                                all.force()));
    }

    /** The single things, so many times as heavy as was said. */
    List<PlateLoad> things(double times) {
        return shelf.loads().things().stream()
                .map(thing -> PlateLoad.patch(
                        left + thing.at().metres(),
                        thing.fromFront().metres(),
                        thing.size().metres(),
                        times * thing.mass().weight().newtons()))
                .toList();
    }

    /** A hand on the front edge, in the middle of the longest bay. */
    PlateLoad hand(double force) {
        double at = left;
        double before = 0;
        for (double stand : shelf.supports().stands()) {
            if (stand - before >= shelf.bay()) {
                at = left + (before + stand) / 2;
                break;
            }
            before = stand;
        }
        return PlateLoad.patch(at, HAND / 2, HAND, force);
    }

    private PlateLoad even(double from, double to, double perLength) {
        double depth = shelf.depth().metres();
        return new PlateLoad(
                (from + to) / 2, to - from, depth / 2, depth, perLength * Force.STANDARD_GRAVITY * (to - from));
    }
}
