package fairgrain.entry;

import fairgrain.design.Material;
import fairgrain.design.RodShelves;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.hanging.Stud;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.shelf.Metal;
import fairgrain.shelf.RodShelf;
import fairgrain.shelf.ShelfLoad;
import fairgrain.shelf.SteelRods;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** A floating shelf on hidden rods. What holds them is asked for if it is left out, never assumed. */
final class RodShelfForm extends Form<RodShelves> {
    private static final double LEAST_MASS = 0.05; // kg

    private final Field<String> name = name("name", "what you call it").example("floating shelf");
    private final Field<Material> material;
    private final Field<Length> length =
            length("length", RodShelf.LENGTH, "along the wall").example("36 in");
    private final Field<Length> depth =
            length("depth", RodShelf.DEPTH, "from the wall to the front edge").example("9 in");
    private final Field<Length> thickness =
            length("thickness", RodShelf.THICKNESS, "as measured").example("1 3/4 in");
    private final Field<Integer> count =
            count("rods", (int) SteelRods.COUNT.least(), (int) SteelRods.COUNT.most(), "how many");
    private final Field<Length> diameter = length(
                    "rod diameter",
                    SteelRods.DIAMETER,
                    "at their thinnest: of a threaded rod, at the bottom of the thread")
            .example("1/2 in");
    private final Field<Length> inShelf = length("in shelf", SteelRods.IN_SHELF, "how deep they go into the shelf")
            .example("6 in");
    private final Field<Length> inWall = length(
                    "in wall", SteelRods.IN_WALL, "how deep they go into the stud or blocking, the wall board left out")
            .example("3 in");
    private final Field<Length> gap = length(
                    "gap", SteelRods.GAP, "between the back of the shelf and the stud or blocking: the wall board")
            .example("1/2 in");
    private final Field<Optional<Metal>> rodsOf = field(
                    "rods of",
                    Kinds.wordOr(
                            "unknown",
                            Optional.<Metal>empty(),
                            Kinds.choice(List.of(Metal.values()), Metal::word).<Optional<Metal>>to(Optional::of)),
                    "what they are made of")
            .example("steel")
            .orElse(Optional.empty());
    private final Field<Optional<Stud>> into;
    private final Field<Function<ShelfForm.Sized, ShelfLoad>> load;
    private final Field<Force> push = force("push at front edge", RodShelf.PUSH, "of a hand, over one rod")
            .or("100 N", "what the test of a shelf pushes with");

    RodShelfForm(Catalog catalog) {
        super("rod shelf", "A floating shelf on hidden rods in its back edge.");
        material = field("material", new MaterialKind(catalog), "a wood or a sheet")
                .example("black walnut");
        into = field(
                        "into",
                        Kinds.named("stud", catalog.studFinder()),
                        "the stud or blocking that each rod is bored into")
                .example("spruce-pine-fir")
                .optional();
        load = field("load", new LoadKind(catalog), "contents by kind, or a weight such as 20 lb or 10 lb/ft")
                .example("20 lb");
    }

    @Override
    protected RodShelves build(Entries e) {
        SheetThickness.require(e.get(material), e.get(thickness), e.rule());
        if (e.get(inShelf).compareTo(e.get(depth)) >= 0) {
            throw new IllegalArgumentException("the rods must go less deep into the shelf than it is deep");
        }
        PressedWood wood = PressedWood.of(e.get(material));
        SteelRods rods = new SteelRods(
                e.get(count),
                e.get(diameter),
                e.get(inShelf),
                e.get(inWall),
                e.get(gap),
                e.get(rodsOf),
                e.get(into).map(Stud::gravity).orElse(OptionalDouble.empty()));
        RodShelves shelf = new RodShelves(
                e.get(name),
                wood.name(),
                wood.gravity(),
                e.get(into).map(s -> wood.evidence().and(s.evidence())).orElse(wood.evidence()),
                wood.density(),
                e.get(length),
                e.get(depth),
                e.get(thickness),
                rods,
                e.get(load).apply(new ShelfForm.Sized(e.get(length), e.get(depth))),
                e.get(push));
        if (shelf.mass() < LEAST_MASS) {
            throw new IllegalArgumentException("the shelf weighs next to nothing: check its sizes");
        }
        return shelf;
    }
}
