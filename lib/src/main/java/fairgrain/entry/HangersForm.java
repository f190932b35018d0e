package fairgrain.entry;

import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.hanging.DeclaredScrew;
import fairgrain.hanging.Hangers;
import fairgrain.hanging.Row;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.List;
import java.util.Optional;

/** Plates, hooks or brackets on the case, by their maker's values. */
final class HangersForm extends Form<Hangers> {
    private final Field<String> name =
            name("name", "what their maker calls them").example("keyhole plates");
    private final Field<List<Length>> at = some(
            "at",
            Kinds.length(new Limits("place of a hanger", 0, 5, "m")),
            "their places from the left end of the case");
    private final Field<Length> height =
            length("above lower edge", Row.HEIGHT, "of the case").example("28 in");
    private final Field<Force> down =
            force("down", DeclaredScrew.VALUE, "what one carries downward").example("200 lb");
    private final Field<Optional<Force>> out = force("out", DeclaredScrew.VALUE, "what one carries away from the wall")
            .example("100 lb")
            .optional();
    private final Field<DeclaredScrew.Given> given = choice(
                    "values",
                    List.of(DeclaredScrew.Given.values()),
                    DeclaredScrew.Given::word,
                    "whether they are ultimate, allowable or characteristic")
            .example("allowable");
    private final Field<Optional<Amount>> factor = amount(
                    "factor",
                    Dimension.RATIO,
                    Hangers.FACTOR,
                    "what to divide them by, if more than the least for such values")
            .example("5")
            .optional();

    HangersForm() {
        super("hangers", "Keyhole plates, hooks or brackets on the case, with what their maker declares for one.");
    }

    @Override
    protected Hangers build(Entries e) {
        return new Hangers(
                e.get(name),
                e.get(at),
                e.get(height),
                e.get(down),
                e.get(out),
                e.get(given),
                e.get(factor).map(Amount::si).orElse(Hangers.divisor(e.get(given))));
    }
}
