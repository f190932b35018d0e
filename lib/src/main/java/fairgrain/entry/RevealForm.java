package fairgrain.entry;

import fairgrain.clearance.Reveal;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.quantity.Length;

/** The gap wanted all year around a door or a drawer front. */
final class RevealForm extends Form<Reveal> {
    private final Field<Length> least =
            length("least", Reveal.LEAST, "at the damp end").or("0.5 mm", "so that nothing touches");
    private final Field<Length> most =
            length("most", Reveal.MOST, "at the dry end").or("1/8 in", "the widest that the trade leaves");

    RevealForm() {
        super("reveal", "The gap wanted all year around a door or a drawer front.");
    }

    @Override
    protected Reveal build(Entries e) {
        return Reveal.entered(e.get(least), e.get(most));
    }
}
