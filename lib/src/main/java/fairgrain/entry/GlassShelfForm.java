package fairgrain.entry;

import fairgrain.design.GlassShelves;
import fairgrain.finding.Missing;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.material.Glass;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Mass;
import fairgrain.shelf.GlassRest;
import fairgrain.shelf.GlassShelf;
import fairgrain.shelf.GlassSupport;
import fairgrain.shelf.GlassUse;
import fairgrain.shelf.SagLimit;
import fairgrain.shelf.ShelfLoad;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Glass shelves that are alike. What they are made of is asked for if it is left out, never assumed. */
final class GlassShelfForm extends Form<GlassShelves> {
    private final Field<String> name = name("name", "what you call it").example("glass shelf");
    private final Field<Integer> count =
            count("count", 1, 50, "how many are alike").orElse(1);
    private final Field<Optional<Glass.Kind>> kind = field(
                    "glass",
                    Kinds.wordOr(
                            "unknown",
                            Optional.<Glass.Kind>empty(),
                            Kinds.choice(List.of(Glass.Kind.values()), Glass.Kind::word)
                                    .<Optional<Glass.Kind>>to(Optional::of)),
                    "what kind; the maker's stamp in a corner says if it is toughened")
            .example("toughened")
            .orElse(Optional.empty());
    private final Field<Optional<Glass.Edge>> edges = field(
                    "edges",
                    Kinds.wordOr(
                            "unknown",
                            Optional.<Glass.Edge>empty(),
                            Kinds.choice(List.of(Glass.Edge.values()), Glass.Edge::word)
                                    .<Optional<Glass.Edge>>to(Optional::of)),
                    "how they are worked; arrissed: as cut, the sharp corners taken off")
            .example("polished")
            .orElse(Optional.empty());
    private final Field<Length> thickness = length(
                    "thickness", GlassShelf.THICKNESS, "as it is sold; of laminated glass, of one of its sheets")
            .example("3/8 in");
    private final Field<Length> span = length(
                    "span", GlassRest.SPAN, "from the middle of one support to the middle of the other")
            .example("24 in");
    private final Field<Length> depth =
            length("depth", GlassRest.DEPTH, "front to back").example("10 in");
    private final Field<GlassSupport> supports = choice(
            "supports",
            List.of(GlassSupport.values()),
            GlassSupport::word,
            "what it lies on; three edges: held down in a groove along both ends and the back");
    private final Field<Optional<Length>> pinsIn = length(
                    "pins in", GlassRest.PINS_IN, "from the front edge to the front pins; as far at the back")
            .example("1 1/2 in")
            .optional();
    private final Field<Optional<Length>> bearing = length(
                    "bearing", GlassRest.BEARING, "how far it lies on each support, along the span")
            .example("1/2 in")
            .optional();
    private final Field<Function<ShelfForm.Sized, ShelfLoad>> load;
    private final Field<Mass> thing = mass(
                    "heavy thing at front edge", GlassUse.HEAVY_THING, "one thing that stays there, beside the load")
            .orElse(Mass.kilograms(0));
    private final Field<Force> push = force("push at front edge", GlassUse.PUSH, "of a hand, for half a minute")
            .or("100 N", "what the test of a shelf pushes with");
    private final Field<Boolean> cut = yesNo("holes or notches", "in the glass").or("no", "plain glass");
    private final Field<Boolean> peopleNear = yesNo(
                    "people below or children near", "people sit or sleep below it, or children reach it")
            .or("no", "not said; annealed glass is not judged where it is so");
    private final Field<Boolean> behindDoors =
            yesNo("behind doors", "hidden, so it may sag more").or("no", "in the open, the stricter");
    private final Field<Optional<SagLimit>> limit = choice(
                    "sag limit",
                    List.of(SagLimit.values()),
                    SagLimit::word,
                    "how far it may sag, instead of 'behind doors'")
            .optional();
    private final List<Glass> table;

    GlassShelfForm(Catalog catalog) {
        super("glass shelf", "Glass shelves, alike, evenly loaded.");
        table = catalog.glass();
        load = field("load", new LoadKind(catalog), "contents by kind, or a weight such as 20 lb or 10 lb/ft")
                .example("glasses");
    }

    @Override
    protected GlassShelves build(Entries e) {
        Optional<Glass> glass = glass(e.get(kind), e.get(edges));
        glass.ifPresent(known -> GlassShelf.requireMade(known, e.get(thickness)));
        return new GlassShelves(
                e.get(name),
                e.get(count),
                glass,
                e.get(thickness),
                e.get(span),
                e.get(depth),
                rest(e),
                new GlassUse(
                        e.get(load).apply(new ShelfForm.Sized(e.get(span), e.get(depth))),
                        e.get(thing),
                        e.get(push),
                        SagLimitChoice.of(e.get(behindDoors), e.get(limit)),
                        e.get(peopleNear)),
                e.get(cut),
                missing(e));
    }

    private Optional<Glass> glass(Optional<Glass.Kind> of, Optional<Glass.Edge> worked) {
        return table.stream()
                .filter(row -> of.filter(row.kind()::equals).isPresent()
                        && worked.filter(row.edge()::equals).isPresent())
                .findFirst();
    }

    private Optional<GlassRest> rest(Entries e) {
        boolean onPins = e.get(supports) == GlassSupport.PINS;
        if (e.get(bearing).isEmpty() || (onPins && e.get(pinsIn).isEmpty())) {
            return Optional.empty();
        }
        Length in = onPins ? e.get(pinsIn).orElseThrow() : new Length(GlassRest.PINS_IN.least());
        return Optional.of(new GlassRest(
                e.get(supports), e.get(span), e.get(depth), in, e.get(bearing).orElseThrow()));
    }

    private List<Missing> missing(Entries e) {
        List<Missing> all = new ArrayList<>();
        if (e.get(kind).isEmpty()) {
            all.add(new Missing(
                    "what kind of glass it is",
                    "look for the stamp of toughened glass, ask the glazier, and enter it as 'glass'"));
        }
        if (e.get(edges).isEmpty()) {
            all.add(new Missing("how its edges are worked", "have them polished, and enter 'edges: polished'"));
        }
        if (e.get(bearing).isEmpty()) {
            all.add(new Missing("how far it lies on its supports", "measure it, and enter it as 'bearing'"));
        }
        if (e.get(supports) == GlassSupport.PINS && e.get(pinsIn).isEmpty()) {
            all.add(new Missing("where the pins are", "measure from the front edge, and enter it as 'pins in'"));
        }
        return all;
    }
}
