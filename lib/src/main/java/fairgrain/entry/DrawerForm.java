package fairgrain.entry;

import fairgrain.clearance.DrawerFit;
import fairgrain.clearance.Reveal;
import fairgrain.design.Drawer;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.material.Wood;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.quantity.Length;
import java.util.Optional;

/** A drawer of solid wood and the opening it runs in. */
final class DrawerForm extends Form<Drawer> {
    private final Field<String> name = name("name", "what you call it").example("drawer");
    private final Field<Integer> count =
            count("count", 1, 50, "how many are alike").orElse(1);
    private final Field<SizesForm.Sizes> opening = block(
            "opening",
            new SizesForm("drawer opening", DrawerFit.WIDTH, DrawerFit.HEIGHT, "12 in", "4 in"),
            "what it runs in");
    private final Field<Optional<Board>> front;
    private final Field<Optional<Board>> sides;
    private final Field<Optional<Reveal>> reveal = block(
                    "reveal",
                    new RevealForm(),
                    "wanted all year around the front; left out, half a millimetre to 1/8 in")
            .optional();

    DrawerForm(Catalog catalog) {
        super("drawer", "A drawer of solid wood and the opening it runs in.");
        front = block("front", new SlabForm("front", catalog), "a front inside the opening, its grain across")
                .optional();
        sides = block("sides", new SlabForm("sides", catalog), "its sides, of solid wood")
                .optional();
    }

    @Override
    protected Drawer build(Entries e) {
        if (e.get(front).isEmpty() && e.get(sides).isEmpty()) {
            throw new IllegalArgumentException("needs 'front' or 'sides': nothing else of a drawer moves");
        }
        SizesForm.Sizes sizes = e.get(opening);
        return new Drawer(
                e.get(name),
                e.get(count),
                sizes.width(),
                sizes.height(),
                e.get(front),
                e.get(sides),
                e.get(reveal).orElse(Reveal.USUAL));
    }

    /** A piece whose height follows from the opening. */
    private static final class SlabForm extends Form<Board> {
        private final Field<Wood> wood;
        private final Field<RingAngle> sawn;
        private final Field<Length> thickness =
                length("thickness", Board.THICKNESS, "as measured").example("3/4 in");

        SlabForm(String name, Catalog catalog) {
            super(name, "A piece of a drawer, its grain lying along it.");
            wood = named("wood", catalog.woodFinder(), "what it is made of").example("hard maple");
            sawn = field("sawn", Kinds.text().to(RingAngle::read), "how the rings lie, seen at the end of the board")
                    .example("flat")
                    .or("unknown", "nothing moves more than flatsawn");
        }

        @Override
        protected Board build(Entries e) {
            return Board.of(e.get(wood), e.get(sawn), e.get(thickness));
        }
    }
}
