package fairgrain.shelf;

import fairgrain.bending.PlateLoad;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A shelf whose board is solved once: under its own weight, under a kilogram a metre of what is spread along it, and under the single things. */
final class SolvedShelf {
    private static final double HEAVY_THINGS = 1 + Thing.CV;

    private final ShelfSag shelf;
    private final Bends bends;
    private final ShelfWeights weights;
    private final Sags perKilogram;
    private final Sags own;
    private final Sags things;
    private final @Nullable Strains evenly; // under a kilogram a metre, where there is nothing but an even load

    SolvedShelf(ShelfSag shelf) {
        this.shelf = shelf;
        bends = Bends.of(shelf);
        weights = new ShelfWeights(shelf);
        boolean even = shelf.loads().isPlain();
        List<PlateLoad> kilogram = weights.spread(1);
        Bends.Bent bent = even ? bends.bent(kilogram) : null;
        perKilogram = bent == null ? bends.under(kilogram) : bent.sags();
        own = even ? perKilogram.times(weights.ownPerLength()) : bends.under(weights.own());
        things = shelf.loads().things().isEmpty() ? Sags.NONE : bends.under(weights.things(1));
        evenly = bent == null ? null : bent.strains();
    }

    private SolvedShelf(ShelfSag other, SolvedShelf solved) {
        shelf = other;
        bends = solved.bends;
        weights = solved.weights;
        perKilogram = solved.perKilogram;
        own = solved.own;
        things = solved.things;
        evenly = solved.evenly;
    }

    /** The same with more or less of what is spread along it. */
    SolvedShelf load(ShelfLoad other) {
        return new SolvedShelf(shelf.load(other), this);
    }

    ShelfSag shelf() {
        return shelf;
    }

    /** First sags under a kilogram a metre along it. */
    Sags perKilogram() {
        return perKilogram;
    }

    /** First sags under its own weight. */
    Sags own() {
        return own;
    }

    /** First sags under what is expected along it, its own weight left out. */
    Sags spread() {
        return perKilogram.times(shelf.load().expected());
    }

    /** First sags under the single things. */
    Sags things() {
        return things;
    }

    /** Under all of it at its heaviest. */
    Strains heavy() {
        return evenly == null
                ? bends.strains(heavyLoads())
                : evenly.times(weights.ownPerLength() + shelf.load().heavy());
    }

    List<PlateLoad> heavyLoads() {
        List<PlateLoad> all = new ArrayList<>(weights.own());
        all.addAll(weights.spread(shelf.load().heavy()));
        all.addAll(weights.things(HEAVY_THINGS));
        return all;
    }
}
