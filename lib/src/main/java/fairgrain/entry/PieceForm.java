package fairgrain.entry;

import fairgrain.design.Piece;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.material.Wood;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.quantity.Length;

/** A piece of wood of which only what it is and how thick matters, and sometimes how wide. */
final class PieceForm extends Form<PieceForm.Piece> {
    private final Field<Wood> wood;
    private final Field<RingAngle> sawn;
    private final Field<Length> width =
            length("width", Board.WIDTH, "across the grain").example("2 1/4 in");
    private final Field<Length> thickness =
            length("thickness", Board.THICKNESS, "as measured").example("7/8 in");

    /** A board and its width. */
    record Piece(Board board, Length width) {}

    PieceForm(String name, String help, Catalog catalog) {
        super(name, help);
        wood = named("wood", catalog.woodFinder(), "what it is made of").example("white oak");
        sawn = field("sawn", Kinds.text().to(RingAngle::read), "how the rings lie, seen at the end of the board")
                .example("flat")
                .or("unknown", "nothing moves more than flatsawn");
    }

    @Override
    protected Piece build(Entries e) {
        return new Piece(Board.of(e.get(wood), e.get(sawn), e.get(thickness)), e.get(width));
    }
}
