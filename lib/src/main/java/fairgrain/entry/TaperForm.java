package fairgrain.entry;

import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.quantity.Length;
import fairgrain.shelf.Taper;

/** A front edge planed thinner from below. */
final class TaperForm extends Form<Taper> {
    private final Field<Length> width = length("width", Taper.WIDTH, "from the front edge to where the board is whole")
            .example("2 in");
    private final Field<Length> edge =
            length("edge", Taper.EDGE, "thickness left at the front edge").example("1/2 in");

    TaperForm() {
        super("taper", "A front edge planed thinner from below.");
    }

    @Override
    protected Taper build(Entries e) {
        return new Taper(e.get(width), e.get(edge));
    }
}
