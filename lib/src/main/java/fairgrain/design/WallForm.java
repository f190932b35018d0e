package fairgrain.design;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kind;
import fairgrain.form.Kinds;
import fairgrain.hanging.Fixing;
import fairgrain.hanging.Screw;
import fairgrain.hanging.Stud;
import fairgrain.material.Wood;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.shelf.ShelfLoad;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** How the case hangs. Whatever holds it may be left out; it is then asked for, never assumed. */
final class WallForm extends Form<Entered> {
    private static final Limits PLACE = new Limits("place of a stud", 0, 5, "m");
    private static final ShelfLoad NOTHING =
            new ShelfLoad("nothing", 0, 0, 0, Evidence.of(Citation.of("maker", "what stands there", Basis.ENTERED)));

    private static final ShelfForm.Sized NO_CASE = new ShelfForm.Sized(Length.mm(800), Length.mm(300)); // not judged

    private final Field<Optional<Stud>> stud;
    private final Field<List<Length>> studs =
            list("studs at", Kinds.length(PLACE), "centres of the studs, from the left end of the case");
    private final Field<Optional<Length>> gap;
    private final Field<Optional<Screw>> screw;
    private final Field<Optional<Length>> screwLength = length("screw length", Fixing.LENGTH, "from under the head")
            .example("3 in")
            .optional();
    private final Field<Optional<Integer>> perStud = count("screws in each stud", 1, 12, "one above the other")
            .example("2")
            .optional();
    private final Field<Optional<Length>> height = length(
                    "screws above lower edge", Fixing.HEIGHT, "the lowest of them, above the lower edge of the case")
            .example("34 in")
            .optional();
    private final Field<Optional<Rail>> rail;
    private final Field<Function<ShelfForm.Sized, ShelfLoad>> bottom;
    private final Field<Function<ShelfForm.Sized, ShelfLoad>> top;

    private record Rail(Wood wood, Length thickness) {}

    WallForm(Catalog catalog) {
        super("wall", "How the case hangs. What holds it is asked for if it is left out, never assumed.");
        stud = named("stud", catalog.studFinder(), "what the studs are, by the stamp on them")
                .example("spruce-pine-fir")
                .optional();
        gap = field("wall board", new GapKind(catalog), "what lies between rail and stud: its thickness, 0 if nothing")
                .example("1/2 in")
                .optional();
        screw = named("screw", catalog.screwFinder(), "which")
                .example("No. 10 wood screw")
                .optional();
        rail = block("rail", new RailForm(catalog), "the wood under the screw heads")
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
        return (setting, box) ->
                wall(e, box.map(b -> new ShelfForm.Sized(b.width(), b.depth())).orElse(NO_CASE));
    }

    private Wall wall(Entries e, ShelfForm.Sized sized) {
        return new Wall(
                e.get(stud),
                e.get(studs),
                e.get(gap),
                e.get(screw),
                e.get(screwLength),
                e.get(perStud),
                e.get(height),
                e.get(rail).map(Rail::wood),
                e.get(rail).map(Rail::thickness),
                e.get(bottom).apply(sized),
                e.get(top).apply(sized));
    }

    private static final class RailForm extends Form<Rail> {
        private final Field<Wood> wood;
        private final Field<Length> thickness =
                length("thickness", Fixing.RAIL, "under the heads").example("3/4 in");

        RailForm(Catalog catalog) {
            super("rail", "The wood under the screw heads.");
            wood = named("wood", catalog.woodFinder(), "what it is made of").example("yellow-poplar");
        }

        @Override
        protected Rail build(Entries e) {
            return new Rail(e.get(wood), e.get(thickness));
        }
    }
}
