package fairgrain.entry;

import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.quantity.Length;
import fairgrain.shelf.Bracket;
import fairgrain.shelf.ShelfSag;
import fairgrain.shelf.Supports;

/** A support under one spot of a shelf. */
final class BracketForm extends Form<Bracket> {
    private final Field<Length> at =
            length("at", Supports.PLACE, "from the left end support").example("15 in");
    private final Field<Length> fromFront = length(
                    "from front", ShelfSag.DEPTH, "from the front edge to where it bears")
            .example("9 in");

    BracketForm() {
        super("bracket", "A support under one spot of the shelf, such as a bracket on the back.");
    }

    @Override
    protected Bracket build(Entries e) {
        return new Bracket(e.get(at), e.get(fromFront));
    }
}
