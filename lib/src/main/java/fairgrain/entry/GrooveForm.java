package fairgrain.entry;

import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.part.Groove;
import fairgrain.quantity.Length;

/** The groove along the inner edges of a frame. */
final class GrooveForm extends Form<Groove> {
    private final Field<Length> depth =
            length("depth", Groove.DEPTH, "how deep it is cut").example("3/8 in");
    private final Field<Length> width =
            length("width", Groove.WIDTH, "how wide it is cut").example("1/4 in");

    GrooveForm() {
        super("groove", "The groove along the inner edges of a frame.");
    }

    @Override
    protected Groove build(Entries e) {
        return new Groove(e.get(depth), e.get(width));
    }
}
