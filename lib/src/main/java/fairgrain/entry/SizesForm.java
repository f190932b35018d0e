package fairgrain.entry;

import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;

/** An opening, measured on the day. */
final class SizesForm extends Form<SizesForm.Sizes> {
    private final Field<Length> width;
    private final Field<Length> height;

    /** Width and height. */
    record Sizes(Length width, Length height) {}

    SizesForm(String name, Limits wide, Limits high, String exampleWidth, String exampleHeight) {
        super(name, "An opening, measured inside.");
        width = length("width", wide, "at its narrowest").example(exampleWidth);
        height = length("height", high, "at its lowest").example(exampleHeight);
    }

    @Override
    protected Sizes build(Entries e) {
        return new Sizes(e.get(width), e.get(height));
    }
}
