package fairgrain.design;

import fairgrain.finding.Question;
import fairgrain.quantity.Length;
import fairgrain.shelf.ShelfLoad;
import java.util.Optional;

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

    /** The same with so many times as much on each. */
    Weighs loaded(double times);

    @Override
    default Optional<Carries> carries(Question<?> question) {
        return Optional.of(new Carries(Stage.SHELF, name()));
    }
}
