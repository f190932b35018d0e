package fairgrain.entry;

import fairgrain.design.HeldFlat;
import fairgrain.fixing.Flat;
import fairgrain.fixing.Member;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.material.Wood;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.quantity.Length;
import java.util.Optional;

/** A flatsawn board that cups, free or held flat by its frame. */
final class HeldFlatForm extends Form<HeldFlat> {
    private final Catalog catalog;
    private final Field<String> name = name("name", "what you call it").example("wide panel");
    private final Field<Wood> wood;
    private final Field<Length> width =
            length("width", Board.WIDTH, "of one board, across the grain").example("8 in");
    private final Field<Length> thickness =
            length("thickness", Board.THICKNESS, "as measured").example("1/2 in");
    private final Field<Length> pith = length(
                    "from pith",
                    Flat.PITH,
                    "from the middle of the rings to its face, seen at the end; as near as it may be")
            .or("2 in", "near the pith, where boards cup most");
    private final Field<Optional<Length>> mayCup = length(
                    "may cup",
                    Flat.CUP,
                    "how hollow it may get where nothing holds it; left out, a frame holds it flat")
            .example("1/32 in")
            .optional();
    private final Field<Length> hollow = length(
                    "hollow", Flat.HOLLOW, "how hollow it is already, on whichever side; left out, it is planed flat")
            .orElse(Length.ZERO);

    HeldFlatForm(Catalog catalog) {
        super("held flat", "A flatsawn board that cups, free or held flat by its frame.");
        this.catalog = catalog;
        wood = named("wood", catalog.woodFinder(), "what it is cut from").example("black cherry");
    }

    @Override
    protected HeldFlat build(Entries e) {
        Board board = Board.of(e.get(wood), RingAngle.FLATSAWN, e.get(thickness));
        return new HeldFlat(
                e.get(name),
                new Member.Across(board, catalog.elasticRatio(e.get(wood))),
                e.get(width),
                e.get(pith),
                e.get(mayCup),
                e.get(hollow));
    }
}
