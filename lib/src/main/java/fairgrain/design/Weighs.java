package fairgrain.design;

import fairgrain.quantity.Length;
import fairgrain.shelf.ShelfLoad;

/** Shelves that are alike and lie in the case: what its wall and their pins need to know of them. */
public interface Weighs extends Part {
    int count();

    /** Mass of one, empty [kg]. */
    double mass();

    /** From support to support. */
    Length span();

    /** Front to back. */
    Length depth();

    /** What stands on each. */
    ShelfLoad load();
}
