package fairgrain.entry;

import fairgrain.clearance.GlassInRebate;
import fairgrain.clearance.Pane;
import fairgrain.design.Glazing;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.quantity.Length;
import fairgrain.quantity.Mass;
import java.util.List;
import java.util.Optional;

/** A pane of glass and the rebate or groove it lies in. */
final class GlazingForm extends Form<Glazing> {
    private final Field<Length> thickness =
            length("thickness", Pane.THICKNESS, "of the glass").example("1/8 in");
    private final Field<Pane.Safety> safety = choice(
                    "safety", List.of(Pane.Safety.values()), Pane.Safety::word, "what the mark on the glass says it is")
            .example("toughened")
            .or("not declared", "then it is not judged whether it is safe");
    private final Field<Length> rebate = length(
                    "rebate", GlassInRebate.REBATE, "how far rebate or groove reaches behind the sight line")
            .example("3/8 in");
    private final Field<Pane.Held> held = choice(
                    "held by", List.of(Pane.Held.values()), Pane.Held::word, "stops that come off, or a groove")
            .orElse(Pane.Held.STOPS);
    private final Field<Length> edging = length(
                    "edging", Pane.EDGING, "foil, lead or rubber around the glass, how thick on each side")
            .orElse(Length.ZERO);
    private final Field<Optional<Length>> clearance = length(
                    "clearance", Pane.CLEARANCE, "between glass and frame on each side; left out, from 1/16 in up")
            .optional();
    private final Field<Length> cover = length("cover", GlassInRebate.COVER, "how much of each edge must stay hidden")
            .orElse(GlassInRebate.USUAL_COVER);

    private final Field<Optional<Mass>> weighs = mass(
                    "weighs", Glazing.WEIGHS, "a made-up pane, such as leaded glass, as it was weighed")
            .example("9 lb")
            .optional();

    GlazingForm() {
        super("glass", "A pane of glass in a rebate behind stops, or in a groove.");
    }

    @Override
    protected Glazing build(Entries e) {
        if (e.get(cover).compareTo(e.get(rebate)) >= 0) {
            throw new IllegalArgumentException("the cover wanted must be less than the rebate is deep");
        }
        Length clear = e.get(clearance).orElse(Pane.USUAL_CLEARANCE);
        if (clear.plus(e.get(edging)).compareTo(e.get(rebate)) >= 0) {
            throw new IllegalArgumentException("clearance and edging must be less than the rebate is deep");
        }
        Pane pane = new Pane(e.get(thickness), e.get(safety), e.get(held), e.get(edging), clear);
        return new Glazing(pane, e.get(clearance).isEmpty(), e.get(rebate), e.get(cover), e.get(weighs));
    }
}
