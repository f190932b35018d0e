package fairgrain.design;

import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.material.Wood;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.Optional;

/** A solid board or glued-up panel whose movement is asked for. */
final class BoardForm extends Form<SolidBoard> {
    private static final Limits ROOM = new Limits("room to swell into", 0, 0.1, "m");

    private final Field<String> name = name("name", "what you call it").example("top");
    private final Field<Wood> wood;
    private final Field<RingAngle> sawn;
    private final Field<Length> width =
            length("width", Board.WIDTH, "across the grain").example("11 1/2 in");
    private final Field<Length> thickness =
            length("thickness", Board.THICKNESS, "as measured").example("7/8 in");
    private final Field<Optional<Length>> room =
            length("room", ROOM, "what it has to swell into").example("1/8 in").optional();

    BoardForm(Catalog catalog) {
        super("board", "A solid board or glued-up panel whose movement is asked for.");
        wood = named("wood", catalog.woodFinder(), "what it is made of").example("white oak");
        sawn = field("sawn", Kinds.text().to(RingAngle::read), "how the rings lie, seen at the end of the board")
                .example("flat")
                .or("unknown", "nothing moves more than flatsawn");
    }

    @Override
    protected SolidBoard build(Entries e) {
        Board board = Board.of(e.get(wood), e.get(sawn), e.get(thickness));
        return new SolidBoard(e.get(name), board, e.get(width), e.get(room).orElse(null));
    }
}
