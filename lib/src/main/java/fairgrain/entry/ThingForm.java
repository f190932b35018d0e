package fairgrain.entry;

import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Mass;
import fairgrain.shelf.ShelfSag;
import fairgrain.shelf.Thing;

/** A single thing on a shelf. */
final class ThingForm extends Form<Thing> {
    private static final Limits AT = new Limits("place of the thing", -1, ShelfSag.SPAN.most() + 1, "m");

    private final Field<String> name = name("name", "what it is").example("stack of atlases");
    private final Field<Mass> mass = mass("weight", Thing.MASS, "of it").example("20 lb");
    private final Field<Length> at =
            length("at", AT, "its middle, from the left end support").example("15 in");
    private final Field<Length> fromFront = length("from front", ShelfSag.DEPTH, "its middle, from the front edge")
            .example("5 in");
    private final Field<Length> size =
            length("size", Thing.SIZE, "side of the square it stands on").example("8 in");

    ThingForm() {
        super("thing", "A single heavy thing, besides what is spread along the shelf.");
    }

    @Override
    protected Thing build(Entries e) {
        return new Thing(e.get(name), e.get(mass), e.get(at), e.get(fromFront), e.get(size));
    }
}
