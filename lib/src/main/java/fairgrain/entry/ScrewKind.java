package fairgrain.entry;

import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kind;
import fairgrain.form.Kinds;
import fairgrain.form.Node;
import fairgrain.form.Reading;
import fairgrain.hanging.DeclaredScrew;
import fairgrain.hanging.HangingScrew;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A screw of the table by its name, or a block with its maker's values. What must not hang a cabinet is refused with the reason. */
final class ScrewKind implements Kind<HangingScrew> {
    private static final String INSTEAD =
            "; use wood screws, lag screws, or structural screws with their maker's values, in studs or blocking";

    private final Kind<HangingScrew> kind;

    ScrewKind(Catalog catalog) {
        kind = Kinds.either(Kinds.named("screw", catalog.screwFinder()), new DeclaredForm());
    }

    @Override
    public @Nullable HangingScrew read(Node node, Reading in) {
        if (node instanceof Node.Scalar scalar) {
            String refused = refused(scalar.text().toLowerCase(Locale.ROOT));
            if (refused != null) {
                in.refuse(node, refused);
                return null;
            }
        }
        return kind.read(node, in);
    }

    /** Why such a thing never hangs a cabinet; null if nothing speaks against it. */
    static @Nullable String refused(String text) {
        if (text.contains("drywall") || text.contains("plasterboard")) {
            return "must not be drywall screws: they are hard and brittle and snap" + INSTEAD;
        }
        if (text.matches(".*\\b(nails?|brads?|pins?|staples?|tacks?)\\b.*")) {
            return "must not be nails, brads or staples: they draw out under a pull that stays" + INSTEAD;
        }
        if (text.matches(".*(anchor|toggle|plug|molly).*")) {
            return "must not be anchors in board: board alone holds no cabinet, whatever is declared for it" + INSTEAD;
        }
        return null;
    }

    @Override
    public String says() {
        return "the name of a screw, or a block with its maker's values";
    }

    @Override
    public Map<String, Object> schema() {
        return kind.schema();
    }

    @Override
    public String example() {
        return "No. 10 wood screw";
    }

    @Override
    public List<Kind<?>> inner() {
        return kind.inner();
    }

    /** A screw whose maker declares what it holds. */
    private static final class DeclaredForm extends Form<HangingScrew> {
        private final Field<String> name =
                name("name", "what its maker calls it").example("structural screw");
        private final Field<Length> diameter =
                length("diameter", DeclaredScrew.DIAMETER, "nominal").example("1/4 in");
        private final Field<Force> withdrawal = force(
                        "withdrawal", DeclaredScrew.VALUE, "pull that one holds by its thread, as deep as it goes here")
                .example("300 lb");
        private final Field<Force> sideways = force(
                        "sideways", DeclaredScrew.VALUE, "load along the wall that one holds in such a joint")
                .example("200 lb");
        private final Field<Optional<Force>> pullThrough = force(
                        "pull through", DeclaredScrew.VALUE, "pull at which its head goes through such a rail")
                .example("250 lb")
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
                        DeclaredScrew.FACTOR,
                        "what to divide them by, if more than the least for such values")
                .example("6")
                .optional();
        private final Field<Amount> gravity = amount(
                        "wood from",
                        Dimension.RATIO,
                        new Limits("least specific gravity", 0.2, 1, "(a ratio)"),
                        "least specific gravity of the wood in the wall that they hold for")
                .example("0.42");
        private final Field<Optional<Length>> edge = length(
                        "edge distance",
                        DeclaredScrew.EDGE,
                        "least, from the edge of a stud; 2.5 diameters if left out")
                .example("1/2 in")
                .optional();
        private final Field<Length> gap = length(
                        "across a gap up to",
                        new Limits("gap of the sideways value", 0, 0.1, "m"),
                        "of so much between rail and stud the sideways value holds")
                .orElse(Length.ZERO);

        DeclaredForm() {
            super("declared screw", "A screw whose maker declares what one of it holds.");
        }

        @Override
        protected HangingScrew build(Entries e) {
            String refused = refused(e.get(name).toLowerCase(Locale.ROOT));
            if (refused != null) {
                throw new IllegalArgumentException(refused);
            }
            return new DeclaredScrew(
                    e.get(name),
                    e.get(diameter),
                    e.get(withdrawal),
                    e.get(sideways),
                    e.get(pullThrough),
                    e.get(given),
                    e.get(factor).map(Amount::si).orElse(e.get(given).divisor()),
                    e.get(gravity).si(),
                    e.get(edge),
                    e.get(gap));
        }
    }
}
