package fairgrain.entry;

import fairgrain.design.HungBy;
import fairgrain.design.Material;
import fairgrain.design.ScrewsInto;
import fairgrain.design.Wall;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kind;
import fairgrain.form.Kinds;
import fairgrain.hanging.Backing;
import fairgrain.hanging.DeclaredAnchor;
import fairgrain.hanging.Fixing;
import fairgrain.hanging.Hangers;
import fairgrain.hanging.HangingScrew;
import fairgrain.hanging.Layer;
import fairgrain.hanging.Lift;
import fairgrain.hanging.LoadCase;
import fairgrain.hanging.LoadCases;
import fairgrain.hanging.Rail;
import fairgrain.hanging.Row;
import fairgrain.hanging.Stud;
import fairgrain.hanging.StudPattern;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Temperature;
import fairgrain.shelf.ShelfLoad;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** How the case hangs. Whatever holds it may be left out; it is then asked for, never assumed. */
final class WallForm extends Form<Entered> {
    private static final Limits PLACE = new Limits("place of a stud", 0, 5, "m");
    private static final Limits CARRIES = new Limits("what the backing carries", 50, 50_000, "N");
    private static final Limits FACE = new Limits("height of the blocking", 0.02, 0.4, "m");
    private static final ShelfLoad NOTHING =
            new ShelfLoad("nothing", 0, 0, 0, Evidence.of(Citation.of("maker", "what stands there", Basis.ENTERED)));

    private static final ShelfForm.Sized NO_CASE = new ShelfForm.Sized(Length.mm(800), Length.mm(300)); // not judged

    private final Field<Optional<Stud>> stud;
    private final Field<List<Length>> studs =
            list("studs at", Kinds.length(PLACE), "centres of the studs, from the left end of the case");
    private final Field<List<Length>> anchorsAt =
            list("anchors at", Kinds.length(PLACE), "in masonry: places of the anchors, from the left end of the case");
    private final Field<Optional<Length>> firstStud = length(
                    "first stud at", PLACE, "centre of the leftmost stud behind the case, from its left end")
            .example("8 in")
            .optional();
    private final Field<Optional<Length>> studsEvery = length(
                    "studs every",
                    StudPattern.SPACING,
                    "from centre to centre, in place of a list; only assumed, so not judged until each stud is proven")
            .example("16 in")
            .optional();
    private final Field<ScrewsInto> into = field(
                    "screws go into", new IntoKind(), "studs, blocking, a plywood backing, or a kind of masonry")
            .orElse(ScrewsInto.STUDS);
    private final Field<Optional<Wall.Behind>> behind = block(
                    "backing", new BehindForm(), "the blocking or backing that they go into")
            .optional();
    private final Field<Optional<List<Layer>>> layers;
    private final Field<Optional<HangingScrew>> screw;
    private final Field<Optional<DeclaredAnchor>> anchor =
            block("anchor", new AnchorForm(), "in masonry, in place of a screw").optional();
    private final Field<Optional<Length>> screwLength = length("screw length", Fixing.LENGTH, "from under the head")
            .example("3 in")
            .optional();
    private final Field<Optional<Integer>> perStud = count("screws in each stud", 1, 12, "one above the other")
            .example("2")
            .optional();
    private final Field<Optional<Length>> height = length(
                    "screws above lower edge", Row.HEIGHT, "the lowest of them, above the lower edge of the case")
            .example("34 in")
            .optional();
    private final Field<Optional<Length>> apart = length(
                    "screws apart", Row.APART, "between two of them in a stud, one above the other")
            .example("2 in")
            .optional();
    private final Field<List<Row>> moreRows =
            list("more rows", new RowForm(), "further rows, such as one at the bottom");
    private final Field<Optional<Wall.RailSaid>> rail;
    private final Field<Optional<HungBy.Bevelled>> bevelled;
    private final Field<Optional<HungBy.LedgerSaid>> ledger;
    private final Field<Optional<Hangers>> hangers = block(
                    "hangers", new HangersForm(), "plates, hooks or brackets on the case, which hook on the rail")
            .optional();
    private final Field<Function<ShelfForm.Sized, ShelfLoad>> bottom;
    private final Field<Function<ShelfForm.Sized, ShelfLoad>> top;
    private final Field<List<LoadCase>> people = list(
            "cases",
            Kinds.choice(
                    Arrays.stream(LoadCase.values()).filter(LoadCase::hasPerson).toList(), LoadCase::word),
            "people to judge it for");
    private final Field<Amount> peopleFactor = amount(
                    "people factor", Dimension.RATIO, LoadCases.FACTOR, "what the weight of people is multiplied by")
            .orElse(Amount.ratio(LoadCases.PEOPLE_FACTOR));
    private final Field<Optional<Amount>> earthquake = amount(
                    "earthquake coefficient",
                    Dimension.RATIO,
                    LoadCases.COEFFICIENT,
                    "part of the weight that an earthquake pulls with, by your code")
            .example("0.5")
            .optional();
    private final Field<Optional<Temperature>> warmest = temperature(
                    "warmest", Temperature.LIMITS, "how warm the wood gets there")
            .example("90 F")
            .optional();
    private final Field<Length> aboveFloor = length(
                    "lower edge above floor", Lift.ABOVE_FLOOR, "of the case, once it hangs")
            .or("54 in", "as wall cabinets mostly hang; it tells how heavy it is to lift");

    WallForm(Catalog catalog) {
        super("wall", "How the case hangs. What holds it is asked for if it is left out, never assumed.");
        stud = named("stud", catalog.studFinder(), "what the studs are, by the stamp on them")
                .example("spruce-pine-fir")
                .optional();
        layers = field("wall board", new LayersKind(catalog), "what lies between rail and stud, 0 if nothing")
                .example("1/2 in")
                .optional();
        screw = field("screw", new ScrewKind(catalog), "which")
                .example("No. 10 wood screw")
                .optional();
        rail = block("rail", new RailForm(catalog), "the wood under the screw heads")
                .optional();
        bevelled = block(
                        "bevelled rails",
                        new BevelledForm(catalog),
                        "two bevelled strips; the one on the wall is the rail, its screws those of the wall")
                .optional();
        ledger = block("ledger", new LedgerForm(catalog), "a strip that stays under the case, which rests on it")
                .optional();
        Kind<Function<ShelfForm.Sized, ShelfLoad>> nothing =
                Kinds.wordOr("nothing", sized -> NOTHING, new LoadKind(catalog));
        bottom = field("on the bottom", nothing, "what stands on the bottom of the case")
                .example("books")
                .or("books", "a case is filled");
        top = field("on top", nothing, "what stands on top of the case")
                .example("nothing")
                .or("books", "things get put there");
    }

    @Override
    protected Entered build(Entries e) {
        if (!e.get(studs).isEmpty()
                && (e.get(firstStud).isPresent() || e.get(studsEvery).isPresent())) {
            throw new IllegalArgumentException(
                    "say where the studs stand once: by 'studs at', or by 'first stud at' and 'studs every'");
        }
        if (e.get(firstStud).isPresent() != e.get(studsEvery).isPresent()) {
            throw new IllegalArgumentException("'first stud at' and 'studs every' go together");
        }
        if (e.get(screw).isPresent() && e.get(anchor).isPresent()) {
            throw new IllegalArgumentException("say what holds it to the wall once: by 'screw' or by 'anchor'");
        }
        boolean masonry = e.get(into).masonry().isPresent();
        if (!masonry && (e.get(anchor).isPresent() || !e.get(anchorsAt).isEmpty())) {
            throw new IllegalArgumentException(
                    "'anchor' and 'anchors at' go with masonry: enter 'screws go into' as concrete, solid masonry or"
                            + " hollow masonry");
        }
        if (masonry && (!e.get(studs).isEmpty() || e.get(firstStud).isPresent())) {
            throw new IllegalArgumentException("masonry has no studs: enter 'anchors at'");
        }
        if (e.get(bevelled).isPresent()
                && (e.get(ledger).isPresent() || e.get(hangers).isPresent())) {
            throw new IllegalArgumentException(
                    "bevelled rails are judged alone: leave 'ledger' and 'hangers' away beside them");
        }
        return (setting, box) -> wall(
                e,
                box.map(b -> new ShelfForm.Sized(b.width().minus(b.thickness().times(2)), b.depth()))
                        .orElse(NO_CASE),
                box.map(b -> new ShelfForm.Sized(b.width(), b.depth())).orElse(NO_CASE));
    }

    private Wall wall(Entries e, ShelfForm.Sized inside, ShelfForm.Sized outside) {
        boolean masonry = e.get(into).masonry().isPresent();
        return new Wall(
                e.get(stud),
                new Wall.Places(masonry ? e.get(anchorsAt) : e.get(studs), e.get(firstStud), e.get(studsEvery)),
                e.get(into),
                e.get(behind),
                e.get(layers),
                e.get(anchor).<HangingScrew>map(each -> each).or(() -> e.get(screw)),
                e.get(screwLength),
                new Wall.Rows(
                        masonry ? e.get(perStud).or(() -> Optional.of(1)) : e.get(perStud),
                        e.get(height),
                        e.get(apart),
                        e.get(moreRows)),
                e.get(rail),
                e.get(bottom).apply(inside),
                e.get(top).apply(outside),
                new LoadCases(
                        e.get(people),
                        e.get(peopleFactor).si(),
                        e.get(earthquake)
                                .map(each -> OptionalDouble.of(each.si()))
                                .orElse(OptionalDouble.empty())),
                e.get(warmest),
                e.get(aboveFloor),
                new HungBy(e.get(bevelled), e.get(ledger), e.get(hangers)));
    }

    private static final class RailForm extends Form<Wall.RailSaid> {
        private final Field<Material> wood;
        private final Field<Length> thickness =
                length("thickness", Rail.THICKNESS, "under the heads").example("3/4 in");
        private final Field<Optional<Length>> depth =
                length("depth", Rail.DEPTH, "upright").example("3 1/2 in").optional();
        private final Field<Optional<Length>> screwsUp = length(
                        "screws above its lower edge",
                        new Limits("screws above the rail's lower edge", 0.003, 0.6, "m"),
                        "the middle of them; left out, the middle of the rail")
                .example("1 3/4 in")
                .optional();
        private final Field<Rail.Held> held = choice(
                        "held", List.of(Rail.Held.values()), Rail.Held::word, "along which edges the case holds it")
                .or("top edge", "it rolls then, and pulls its screws harder");

        RailForm(Catalog catalog) {
            super("rail", "The wood under the screw heads.");
            wood = field("wood", new MaterialKind(catalog), "what it is made of, a wood or a sheet")
                    .example("yellow-poplar");
        }

        @Override
        protected Wall.RailSaid build(Entries e) {
            Optional<Length> deep = e.get(depth);
            Optional<Length> up = e.get(screwsUp);
            if (up.isPresent() && (deep.isEmpty() || up.get().compareTo(deep.get()) >= 0)) {
                throw new IllegalArgumentException("the screws must sit within the depth of the rail: enter 'depth'");
            }
            return new Wall.RailSaid(e.get(wood), e.get(thickness), deep, up, e.get(held));
        }
    }

    private static final class RowForm extends Form<Row> {
        private final Field<Length> height = length(
                        "above lower edge", Row.HEIGHT, "the lowest of its screws, above the lower edge of the case")
                .example("2 in");
        private final Field<Integer> perStud =
                count("screws in each stud", 1, 12, "one above the other").example("1");
        private final Field<Optional<Length>> apart = length("screws apart", Row.APART, "between two in a stud")
                .example("2 in")
                .optional();

        RowForm() {
            super("row", "A further row of the same screws, through a rail like the first.");
        }

        @Override
        protected Row build(Entries e) {
            return new Row(e.get(height), e.get(perStud), e.get(apart));
        }
    }

    private static final class BehindForm extends Form<Wall.Behind> {
        private final Field<Length> thickness = length("thickness", Backing.THICKNESS, "from the lining into the wall")
                .example("1 1/2 in");
        private final Field<Length> face =
                length("height", FACE, "of its face toward the room").example("5 1/2 in");
        private final Field<Optional<Force>> carries = force(
                        "carries", CARRIES, "what its own fixing to the studs may carry, by whoever put it in")
                .example("300 lb")
                .optional();

        BehindForm() {
            super("backing", "Blocking between studs, or a plywood backing, put in to screw to.");
        }

        @Override
        protected Wall.Behind build(Entries e) {
            return new Wall.Behind(e.get(thickness), e.get(face), e.get(carries));
        }
    }
}
