package fairgrain.entry;

import fairgrain.clearance.Figure;
import fairgrain.design.SolidBoard;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.List;
import java.util.Optional;

/** A solid board or glued-up panel whose movement is asked for. */
final class BoardForm extends Form<SolidBoard> {
    private static final Limits ROOM = new Limits("room to swell into", 0, 0.1, "m");
    private static final double OFF = 0.02; // of the width: what is planed off the edges

    private final Field<String> name = name("name", "what you call it").example("top");
    private final Field<Stock> wood;
    private final Field<RingAngle> sawn;
    private final Field<Figure> figure = choice("figure", List.of(Figure.values()), Figure::word, "how its grain runs")
            .orElse(Figure.STRAIGHT);
    private final Field<Length> width =
            length("width", Board.WIDTH, "across the grain").example("11 1/2 in");
    private final Field<Length> thickness =
            length("thickness", Board.THICKNESS, "as measured").example("7/8 in");
    private final Field<Optional<Length>> room =
            length("room", ROOM, "what it has to swell into").example("1/8 in").optional();
    private final Field<Optional<Length>> length = length(
                    "length", Board.LENGTH, "along the grain, to have that movement reckoned too")
            .optional();
    private final Field<Optional<Length>> roomInLength = length(
                    "room in length", ROOM, "what it has to grow into along the grain")
            .optional();
    private final Field<Optional<Length>> roomInThickness = length(
                    "room in thickness", ROOM, "its play in the groove or housing that holds it")
            .optional();

    BoardForm(Catalog catalog) {
        super("board", "A solid board or glued-up panel whose movement is asked for.");
        wood = field("wood", Stock.kind(catalog), "what it is made of, or the boards it is glued up from")
                .example("white oak");
        sawn = field("sawn", Kinds.text().to(RingAngle::read), "how the rings lie, seen at the end of the board")
                .example("flat")
                .or("unknown", "nothing moves more than flatsawn");
    }

    @Override
    protected SolidBoard build(Entries e) {
        Length wide = e.get(width);
        if (e.get(wood) instanceof Stock.Strips strips
                && Math.abs(strips.width().minus(wide).metres()) > OFF * wide.metres()) {
            throw new IllegalArgumentException("the boards it is glued up from are "
                    + e.rule().text(strips.width()) + " wide together, but its width is "
                    + e.rule().text(wide));
        }
        if (e.get(roomInLength).isPresent() && e.get(length).isEmpty()) {
            throw new IllegalArgumentException("needs 'length' beside 'room in length'");
        }
        Board board = e.get(wood).board(e.get(sawn), e.get(thickness), e.get(figure));
        return new SolidBoard(
                e.get(name),
                board,
                wide,
                e.get(room).orElse(null),
                e.get(figure),
                e.get(length),
                e.get(roomInLength),
                e.get(roomInThickness));
    }
}
