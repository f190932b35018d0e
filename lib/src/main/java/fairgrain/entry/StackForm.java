package fairgrain.entry;

import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.material.SpecificGravity;
import fairgrain.material.Wood;
import fairgrain.place.DayMoisture;
import fairgrain.place.IndoorClimate;
import fairgrain.place.Stack;
import fairgrain.place.StackAir;
import fairgrain.place.StockState;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import java.util.Optional;

/** Where the stock has lain on stickers, and for how long. */
final class StackForm extends Form<DayMoisture> {
    private final Field<StockState> from;
    private final Field<Optional<IndoorClimate>> climate;
    private final Field<Optional<IndoorClimate.Air>> air =
            block("air", new PlaceForm.AirForm(), "the air there, as measured").optional();
    private final Field<Amount> time = amount("time", Dimension.TIME, Stack.TIME, "how long it has lain there")
            .example("12 weeks");
    private final Field<Wood> wood;
    private final Field<Length> thickness =
            length("thickness", Stack.THICKNESS, "of a board, or of a square").example("2 in");
    private final Field<Boolean> square =
            yesNo("square", "as wide as it is thick, such as turning stock").orElse(false);
    private final Field<Optional<Length>> openEnds = length(
                    "length", Stack.LENGTH, "along the grain, if its ends are not sealed; left out, it counts as long")
            .example("2 ft")
            .optional();
    private final Field<Boolean> stickered = yesNo("on stickers", "air passes both faces of every piece");

    StackForm(Catalog catalog) {
        super("stack", "Stock that has lain on stickers for a while.");
        from = named("from", catalog.stockFinder(), "what it was when it was laid there")
                .example("air-dried");
        climate = named("climate", catalog.climateFinder(), "a place like it, at any time of its year")
                .example("basement")
                .optional();
        wood = named("wood", catalog.woodFinder(), "what it is").example("white oak");
    }

    @Override
    protected DayMoisture build(Entries e) {
        if (!e.get(stickered)) {
            throw new IllegalArgumentException(
                    "cannot be reckoned in a close pile, which dries at its outside only: sticker it, or measure it");
        }
        if (e.get(climate).isPresent() == e.get(air).isPresent()) {
            throw new IllegalArgumentException("needs either 'climate' or 'air'");
        }
        SpecificGravity gravity = e.get(wood).gravity();
        if (gravity == null || gravity.atTwelve().isEmpty()) {
            throw new IllegalArgumentException(
                    "cannot be reckoned for " + e.get(wood).name() + ", whose density is not known: measure it");
        }
        StackAir there = e.get(climate)
                .map(StackAir::of)
                .orElseGet(() -> StackAir.measured(e.get(air).orElseThrow()));
        return new Stack(
                        e.get(from).asDay(),
                        there,
                        e.get(time),
                        e.get(thickness),
                        e.get(square),
                        e.get(openEnds).orElse(Stack.SEALED),
                        gravity.atTwelve().getAsDouble())
                .now();
    }
}
