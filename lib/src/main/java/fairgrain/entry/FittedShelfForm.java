package fairgrain.entry;

import fairgrain.clearance.ShelfDepthRoom;
import fairgrain.design.FittedShelf;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.quantity.Length;

/** A solid shelf between closed doors and a back: has it room to grow? */
final class FittedShelfForm extends Form<FittedShelf> {
    private final Field<String> name = name("name", "what you call it").example("shelf behind doors");
    private final Field<PieceForm.Piece> shelf;
    private final Field<Length> inFront = length(
                    "room in front", ShelfDepthRoom.ROOM, "from its front edge to the closed doors")
            .example("1/4 in");
    private final Field<Length> behind = length("room behind", ShelfDepthRoom.ROOM, "from its back edge to the back")
            .example("0")
            .or("0", "it touches the back or is fixed there");

    FittedShelfForm(Catalog catalog) {
        super("fitted shelf", "A solid shelf between closed doors and a back.");
        shelf = block(
                "shelf", new PieceForm("solid shelf", "A solid shelf; its width is its depth.", catalog), "the shelf");
    }

    @Override
    protected FittedShelf build(Entries e) {
        return new FittedShelf(e.get(name), e.get(shelf).board(), e.get(shelf).width(), e.get(inFront), e.get(behind));
    }
}
