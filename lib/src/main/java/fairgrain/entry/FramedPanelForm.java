package fairgrain.entry;

import fairgrain.design.FramedPanel;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.part.Groove;
import fairgrain.part.Opening;
import fairgrain.quantity.Length;
import java.util.Optional;

/** A panel and the frame it floats in, where nothing else is asked of the frame. */
final class FramedPanelForm extends Form<FramedPanel> {
    private final Field<String> name = name("name", "what you call it").example("left panel");
    private final Field<Length> across = length(
                    "between stiles", Opening.ACROSS, "between the frame members, across the grain of the panel")
            .example("10 3/4 in");
    private final Field<Optional<Length>> along = length("between rails", Opening.ALONG, "the same along the grain")
            .example("25 1/2 in")
            .optional();
    private final Field<Groove> groove = block("groove", new GrooveForm(), "in the frame, all round");
    private final Field<PanelForm.Loose> panel;

    FramedPanelForm(Catalog catalog) {
        super("framed panel", "A panel and the opening it floats in.");
        panel = block("panel", new PanelForm(catalog), "the panel itself");
    }

    @Override
    protected FramedPanel build(Entries e) {
        return e.get(panel).in(e.get(name), e.get(across), e.get(along), e.get(groove));
    }
}
