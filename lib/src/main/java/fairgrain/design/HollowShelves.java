package fairgrain.design;

import fairgrain.finding.Caution;
import fairgrain.finding.Missing;
import fairgrain.finding.Question;
import fairgrain.finding.Unasked;
import fairgrain.quantity.Length;
import fairgrain.shelf.HollowShelf;
import fairgrain.shelf.HollowSkin;
import fairgrain.shelf.Inside;
import fairgrain.shelf.SagLimit;
import fairgrain.shelf.ShelfLoad;
import fairgrain.shelf.ShelfStock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Hollow or cored shelves that are alike, as far as was said.
 *
 * @param inside empty if it was not said, or not enough of it
 * @param missing what was not said of it
 */
public record HollowShelves(
        String name,
        int count,
        HollowSkin skin,
        Optional<Inside> inside,
        Length height,
        Length span,
        Length depth,
        ShelfLoad load,
        SagLimit limit,
        List<Missing> missing)
        implements Weighs {
    private static final double HEAVY_CORE = 700; // kg/m3, where nothing is known of it: heavy is safe for hanging

    public HollowShelves {
        missing = List.copyOf(missing);
    }

    @Override
    public List<Question<?>> questions(Design design) {
        List<Missing> all = new ArrayList<>(missing);
        creeps(all, skin.stock());
        if (inside.orElse(null) instanceof Inside.Ribs ribs) {
            creeps(all, ribs.stock());
        }
        if (inside.isEmpty() || !all.isEmpty()) {
            return List.of(new Unasked(
                    name,
                    "will it sag",
                    all,
                    skin.stock().evidence(),
                    Set.of(Caution.ASSUMED_CONTENTS, Caution.SHELF_IN_USE)));
        }
        return List.of(asked(design, inside.get()));
    }

    private static void creeps(List<Missing> all, ShelfStock stock) {
        if (stock.creep() == null) {
            all.add(new Missing(
                    "how " + stock.name() + " creeps in a place that is damp for months",
                    "use solid wood, plywood or a board declared for damp places"));
        }
    }

    private HollowShelf asked(Design design, Inside of) {
        return new HollowShelf(name, skin, of, height, span, depth, load, limit, design.setting());
    }

    @Override
    public HollowShelves loaded(double times) {
        return new HollowShelves(name, count, skin, inside, height, span, depth, load.times(times), limit, missing);
    }

    @Override
    public double mass() {
        double core = height.metres() - 2 * skin.thickness().metres();
        double skins = 2 * skin.thickness().metres() * skin.stock().density();
        double area = span.metres() * depth.metres();
        if (inside.orElse(null) instanceof Inside.Core known) {
            return area * (skins + core * known.density());
        }
        if (inside.orElse(null) instanceof Inside.Ribs ribs) {
            double rib = ribs.width().metres() * core * ribs.stock().density();
            return area * skins + rib * (ribs.count() * span.metres() + 2 * depth.metres());
        }
        return area * (skins + core * HEAVY_CORE);
    }
}
