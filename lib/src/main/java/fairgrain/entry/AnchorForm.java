package fairgrain.entry;

import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.hanging.DeclaredAnchor;
import fairgrain.hanging.DeclaredScrew;
import fairgrain.hanging.Layer;
import fairgrain.hanging.Masonry;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** An anchor in masonry or concrete, by its maker's values. Board alone is no masonry, whatever is declared for it. */
final class AnchorForm extends Form<DeclaredAnchor> {
    private final Field<String> name = name("name", "what its maker calls it").example("sleeve anchor");
    private final Field<Length> diameter =
            length("diameter", DeclaredAnchor.DIAMETER, "of its bolt or screw").example("1/4 in");
    private final Field<Length> washer = length("washer", DeclaredAnchor.WASHER, "under the head, on the rail")
            .example("3/4 in");
    private final Field<Force> tension = force("tension", DeclaredScrew.VALUE, "pull that one holds in such a wall")
            .example("400 lb");
    private final Field<Force> shear = force("shear", DeclaredScrew.VALUE, "load along the wall that one holds")
            .example("400 lb");
    private final Field<DeclaredScrew.Given> given = choice(
                    "values",
                    List.of(DeclaredScrew.Given.values()),
                    DeclaredScrew.Given::word,
                    "whether they are ultimate, allowable or characteristic")
            .example("allowable");
    private final Field<Boolean> plastic =
            yesNo("plastic", "a plug of plastic, which creeps under a pull").example("no");
    private final Field<Optional<Amount>> factor = amount(
                    "factor",
                    Dimension.RATIO,
                    DeclaredAnchor.FACTOR,
                    "what to divide them by, if more than the least for such values")
            .example("8")
            .optional();
    private final Field<Masonry.Kind> in = choice(
                    "declared for", List.of(Masonry.Kind.values()), Masonry.Kind::word, "the wall of these values")
            .example("solid masonry");
    private final Field<Length> embedment = length(
                    "embedment", DeclaredAnchor.EMBEDMENT, "least depth in the wall itself, behind any lining")
            .example("2 in");
    private final Field<Length> apart =
            length("apart", DeclaredAnchor.APART, "least distance between two").example("3 in");
    private final Field<Length> gap = length(
                    "across a gap up to", Layer.THICKNESS, "of so much between rail and wall the shear holds")
            .orElse(Length.ZERO);

    AnchorForm() {
        super("anchor", "An anchor in masonry or concrete, with what its maker declares for one in such a wall.");
    }

    @Override
    protected DeclaredAnchor build(Entries e) {
        String called = e.get(name).toLowerCase(Locale.ROOT);
        if (called.matches(".*(drywall|gypsum|plasterboard|board|toggle|molly).*")) {
            throw new IllegalArgumentException(
                    "must not be an anchor for board: board alone holds no cabinet, whatever is declared for it");
        }
        return new DeclaredAnchor(
                e.get(name),
                e.get(diameter),
                e.get(washer),
                e.get(tension),
                e.get(shear),
                e.get(given),
                e.get(plastic),
                e.get(factor).map(Amount::si).orElse(DeclaredAnchor.divisor(e.get(given), e.get(plastic))),
                e.get(in),
                e.get(embedment),
                e.get(apart),
                e.get(gap));
    }
}
