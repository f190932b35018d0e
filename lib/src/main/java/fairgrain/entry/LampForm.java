package fairgrain.entry;

import fairgrain.clearance.LampInCase;
import fairgrain.design.Lamp;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Mass;

/** Lamps in the case. */
final class LampForm extends Form<Lamp> {
    private static final Limits WEIGHT = new Limits("weight of the lamps", 0, 50, "kg");

    private final Field<String> name = name("name", "what you call them").example("strip light");
    private final Field<Amount> watts = amount(
                    "watts", Dimension.COUNT, LampInCase.WATTS, "all of them, as they stay on for hours")
            .example("5");
    private final Field<Mass> weight =
            mass("weight", WEIGHT, "with wires and transformer").example("1 lb");
    private final Field<Length> hole =
            length("cable hole", LampInCase.HOLE, "its diameter").example("3/8 in");
    private final Field<Length> fromEdge = length(
                    "hole from edge", LampInCase.FROM_EDGE, "from its middle to the nearest edge")
            .example("1 in");

    LampForm() {
        super("lamps", "Lamps in the case, their wiring and what they weigh.");
    }

    @Override
    protected Lamp build(Entries e) {
        return new Lamp(e.get(name), e.get(watts).si(), e.get(weight), e.get(hole), e.get(fromEdge));
    }
}
