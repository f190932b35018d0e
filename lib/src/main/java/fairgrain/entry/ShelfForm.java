package fairgrain.entry;

import fairgrain.design.Material;
import fairgrain.design.Shelf;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.material.SheetGood;
import fairgrain.material.Strength;
import fairgrain.material.Wood;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.shelf.BackEdge;
import fairgrain.shelf.Bearing;
import fairgrain.shelf.Bracket;
import fairgrain.shelf.Loads;
import fairgrain.shelf.Row;
import fairgrain.shelf.SagLimit;
import fairgrain.shelf.Section;
import fairgrain.shelf.ShelfLoad;
import fairgrain.shelf.ShelfPinSet;
import fairgrain.shelf.ShelfSag;
import fairgrain.shelf.ShelfStock;
import fairgrain.shelf.Support;
import fairgrain.shelf.Supports;
import fairgrain.shelf.Taper;
import fairgrain.shelf.Thing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Shelves that are alike. What they are worth depends on how damp the place is, so the place is told last. */
final class ShelfForm extends Form<Entered> {
    private static final Limits PLAY = new Limits("play at each end", 0, 0.01, "m");
    private static final Limits FILLED = new Limits("end of the filled part", -1, 4, "m");

    private final Field<String> name = name("name", "what you call it").example("shelf");
    private final Field<Integer> count =
            count("count", 1, 50, "how many are alike").orElse(1);
    private final Field<Material> material;
    private final Field<Boolean> straightGrain = yesNo(
                    "clear straight grain", "you have looked: no knots, no slanting grain")
            .or("no", "not looked at, so the strength is taken at 0.65");
    private final Field<Length> span =
            length("span", ShelfSag.SPAN, "between its end supports").example("30 in");
    private final Field<Optional<Length>> clearWidth = length(
                    "clear width", ShelfSag.SPAN, "between the sides, to say how long it is cut")
            .optional();
    private final Field<Length> play = length("play", PLAY, "at each end, with 'clear width'; 1/16 in if not said")
            .orElse(Length.inches(1 / 16.0));
    private final Field<Integer> boards = count(
                    "glued from",
                    1,
                    20,
                    "boards side by side that it is glued up from, one if not said; more of them scatter less")
            .orElse(1);
    private final Field<Length> depth =
            length("depth", ShelfSag.DEPTH, "front to back").example("10 in");
    private final Field<Length> thickness =
            length("thickness", ShelfSag.THICKNESS, "as measured").example("7/8 in");
    private final Field<Optional<StripForm.Told>> front;
    private final Field<Optional<StripForm.Told>> back;
    private final Field<Optional<Taper>> taper = block(
                    "tapered front", new TaperForm(), "a front edge planed thinner from below")
            .optional();
    private final Field<Support> supports = choice(
                    "supports", List.of(Support.values()), Support::word, "how its ends are held")
            .or("pins", "the loosest");
    private final Field<Optional<Length>> pinsIn = length(
                    "pins in", ShelfPinSet.IN, "from the front edge to the front pins; as far in at the back")
            .optional();
    private final Field<Optional<Length>> bearing = length(
                    "bearing", Bearing.ALONG, "how far each end lies on its support, along the span")
            .optional();
    private final Field<Optional<Length>> pin = length(
                    "pin diameter", ShelfPinSet.DIAMETER, "of the pins, with 'bearing'")
            .optional();
    private final Field<BackEdge> backEdge = choice(
                    "back edge", List.of(BackEdge.values()), BackEdge::word, "what holds its back edge")
            .orElse(BackEdge.FREE);
    private final Field<List<Length>> middle = list(
            "middle supports at",
            Kinds.length(Supports.PLACE),
            "supports under its whole depth, from the left end support");
    private final Field<List<Bracket>> brackets = list("brackets", new BracketForm(), "supports under single spots");
    private final Field<Length> left = length("overhang left", Supports.OVERHANG, "beyond the left end support")
            .orElse(Length.ZERO);
    private final Field<Length> right = length("overhang right", Supports.OVERHANG, "beyond the right end support")
            .orElse(Length.ZERO);
    private final Field<Function<Sized, ShelfLoad>> load;
    private final Field<Optional<Length>> from =
            length("filled from", FILLED, "from the left end support").optional();
    private final Field<Optional<Length>> to =
            length("filled to", FILLED, "from the left end support").optional();
    private final Field<Optional<Length>> rowDepth = length(
                    "row depth", Row.DEPTH, "how deep the row is, if it stands flush with an edge, as books do")
            .optional();
    private final Field<Row.Edge> rowAt = choice(
                    "row at",
                    List.of(Row.Edge.values()),
                    Row.Edge::word,
                    "the edge it stands flush with, with 'row depth'; the front edge if not said")
            .orElse(Row.Edge.FRONT);
    private final Field<List<Thing>> things = list("things", new ThingForm(), "single heavy things besides the load");
    private final Field<Optional<Force>> hand = force(
                    "hand on front edge", Loads.HAND, "a force at mid-span on the front edge, for minutes")
            .optional();
    private final Field<Boolean> behindDoors =
            yesNo("behind doors", "hidden, so it may sag more").or("no", "in the open, the stricter");
    private final Field<Optional<SagLimit>> limit = choice(
                    "sag limit",
                    List.of(SagLimit.values()),
                    SagLimit::word,
                    "how far it may sag, instead of 'behind doors'")
            .optional();
    private final Catalog catalog;

    /** What a load by contents or by weight is spread over. */
    record Sized(Length span, Length depth) {}

    ShelfForm(Catalog catalog) {
        super("shelf", "Solid shelves, alike.");
        this.catalog = catalog;
        material = field("material", new MaterialKind(catalog), "a wood or a sheet")
                .example("white ash");
        front = block("front strip", new StripForm("front strip", catalog), "a strip along its front edge")
                .optional();
        back = block("back strip", new StripForm("back strip", catalog), "a strip along its back edge")
                .optional();
        load = field("load", new LoadKind(catalog), "contents by kind, or a weight such as 60 lb or 20 lb/ft")
                .example("books");
    }

    @Override
    protected Entered build(Entries e) {
        Material of = e.get(material);
        Length thick = e.get(thickness);
        SheetThickness.require(of, thick, e.rule());
        if (e.get(from).isPresent() != e.get(to).isPresent()) {
            throw new IllegalArgumentException("'filled from' and 'filled to' go together; enter both or neither");
        }
        if (e.get(pin).isPresent() && (e.get(bearing).isEmpty() || e.get(supports) != Support.PINS)) {
            throw new IllegalArgumentException("'pin diameter' goes with 'bearing' and with pins as supports");
        }
        if (of.sheet() != null && e.get(boards) > 1) {
            throw new IllegalArgumentException("'glued from' goes with solid wood; a sheet is one piece");
        }
        if (e.get(bearing).isPresent() && e.get(pin).isEmpty() && e.get(supports) == Support.PINS) {
            throw new IllegalArgumentException("a shelf on pins needs 'pin diameter' with 'bearing'");
        }
        Supports held = held(e);
        Loads loads = loads(e, held);
        Section whole = new Section(
                e.get(depth),
                thick,
                e.get(front).map(told -> strip(e, told, false, 0).piece()).orElse(null),
                e.get(back).map(told -> strip(e, told, false, 0).piece()).orElse(null),
                e.get(taper).orElse(null));
        ShelfSag.require(whole, held, loads);
        Section board = new Section(whole.depth(), thick, null, null, whole.taper());
        Optional<Length> cut = cut(e, held);
        SagLimit may = SagLimitChoice.of(e.get(behindDoors), e.get(limit));
        return (setting, box) -> {
            boolean damp = DampPlace.is(setting);
            double moisture = setting.year().damp().expected();
            return new Shelf(
                    e.get(name),
                    e.get(count),
                    stock(of, e.get(straightGrain), damp, moisture).gluedFrom(e.get(boards)),
                    board,
                    e.get(front).map(told -> strip(e, told, damp, moisture)),
                    e.get(back).map(told -> strip(e, told, damp, moisture)),
                    held,
                    loads,
                    may,
                    cut,
                    () -> others(e.get(straightGrain), damp, moisture, e.get(boards)));
        };
    }

    private Shelf.Strip strip(Entries e, StripForm.Told told, boolean damp, double moisture) {
        SheetThickness.require(told.material(), told.thickness(), e.rule());
        return new Shelf.Strip(
                stock(told.material(), e.get(straightGrain), damp, moisture),
                told.width(),
                told.height(),
                told.place(),
                told.glued());
    }

    /** The tables hold for wood at 12 %; in a damp place it is softer and weaker. */
    private ShelfStock stock(Material of, boolean straight, boolean damp, double moisture) {
        SheetGood sheet = of.sheet();
        if (sheet != null) {
            return catalog.longTerm().of(sheet, damp);
        }
        ShelfStock dry = catalog.longTerm().of(of.solid(), straight, damp);
        return damp ? dry.damp(moisture) : dry;
    }

    /** American woods and all sheets, as far as enough is known of them. */
    private List<ShelfStock> others(boolean straight, boolean damp, double moisture, int boards) {
        List<ShelfStock> all = new ArrayList<>();
        for (Wood wood : catalog.woods().all()) {
            Strength known = wood.strength();
            boolean traded = wood.origin() == Wood.Origin.US_HARDWOOD || wood.origin() == Wood.Origin.US_SOFTWOOD;
            if (traded && known != null && known.elasticity() != null && wood.gravity() != null) {
                all.add(stock(new Material(wood, null), straight, damp, moisture)
                        .gluedFrom(boards));
            }
        }
        for (SheetGood sheet : catalog.sheets()) {
            all.add(stock(new Material(null, sheet), straight, damp, moisture));
        }
        return all;
    }

    /** The clear width less the play at both ends, rounded down. */
    private Optional<Length> cut(Entries e, Supports held) {
        if (e.get(clearWidth).isEmpty()) {
            return Optional.empty();
        }
        Length room = e.get(clearWidth).get().minus(e.get(play).times(2));
        if (held.length() > held.span().metres() || room.compareTo(held.span()) < 0) {
            throw new IllegalArgumentException("'clear width' less its play must reach from one end support to the"
                    + " other, and goes with a shelf between two sides, without overhangs");
        }
        return Optional.of(e.rule().down(room));
    }

    private Supports held(Entries e) {
        Bearing lies = e.get(bearing)
                .map(along -> new Bearing(along, e.get(pin).orElse(null)))
                .orElse(null);
        return new Supports(
                e.get(supports),
                e.get(span),
                e.get(pinsIn).orElse(null),
                e.get(backEdge),
                e.get(middle),
                e.get(brackets),
                e.get(left),
                e.get(right),
                lies);
    }

    /** A weight in all lies on the filled part, or on the whole board. */
    private Loads loads(Entries e, Supports held) {
        Loads.Filled filled = null;
        Length on = new Length(held.length());
        if (e.get(from).isPresent() && e.get(to).isPresent()) {
            filled = new Loads.Filled(e.get(from).get(), e.get(to).get());
            on = filled.to().minus(filled.from());
        }
        Row row = e.get(rowDepth).map(deep -> new Row(e.get(rowAt), deep)).orElse(null);
        ShelfLoad even = e.get(load).apply(new Sized(on, e.get(depth)));
        return new Loads(even, filled, row, e.get(things), e.get(hand).orElse(null));
    }
}
