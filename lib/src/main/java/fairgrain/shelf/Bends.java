package fairgrain.shelf;

import fairgrain.bending.PlateLoad;
import java.util.List;

/**
 * How a shelf bends, by the simplest model that holds for it. Sags are those of the table's stiffness, with the factor of the model;
 * those of two sets of loads add up. x counts from the left end of the board.
 */
interface Bends {
    Sags under(List<PlateLoad> loads);

    Strains strains(List<PlateLoad> loads);

    /** Both, for models that are solved once for them. */
    default Bent bent(List<PlateLoad> loads) {
        return new Bent(under(loads), strains(loads));
    }

    /** How far and how hard a shelf is bent by one set of loads. */
    record Bent(Sags sags, Strains strains) {}

    /** The model for this shelf. */
    static Bends of(ShelfSag shelf) {
        boolean even = shelf.loads().isEven();
        if (twists(shelf)) {
            return new TwistingShelf(shelf);
        }
        return even && shelf.supports().isPlain() ? new EvenBeam(shelf) : new AnyBeam(shelf);
    }

    /** Whether the section bends and twists across, so that front and back sag differently. */
    static boolean twists(ShelfSag shelf) {
        Supports supports = shelf.supports();
        boolean held = shelf.section().isPlain() && supports.back() == BackEdge.FREE;
        boolean oneBay = supports.middle().isEmpty() && supports.overhang() == 0;
        return !held
                || !supports.brackets().isEmpty()
                || shelf.loads().row() != null
                || (!shelf.loads().things().isEmpty() && oneBay && shelf.isFlat());
    }
}
