package fairgrain.entry;

import fairgrain.design.Material;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.quantity.Length;
import fairgrain.shelf.EdgePiece;
import java.util.List;

/** A strip along an edge of a shelf. */
final class StripForm extends Form<StripForm.Told> {
    private final Field<Material> material;
    private final Field<Length> width =
            length("width", EdgePiece.WIDTH, "front to back").example("3/4 in");
    private final Field<Length> height =
            length("height", EdgePiece.HEIGHT, "from top to bottom").example("1 1/2 in");
    private final Field<EdgePiece.Place> place = choice(
                    "place",
                    List.of(EdgePiece.Place.values()),
                    EdgePiece.Place::word,
                    "on the edge, within the depth of the shelf, or under the board")
            .or("on the edge", "the usual place");
    private final Field<Boolean> glued = yesNo(
                    "glued", "glued all along; one that is only screwed slips and helps little")
            .or("no", "not said, so it counts as screwed only");

    /** What was said of it. */
    record Told(Material material, Length width, Length height, EdgePiece.Place place, boolean glued) {
        /** Of the sheet that it is cut from: its smaller side. */
        Length thickness() {
            return width.compareTo(height) <= 0 ? width : height;
        }
    }

    StripForm(String name, Catalog catalog) {
        super(name, "A strip along an edge of the shelf, grain along the shelf, as long as the shelf.");
        material = field("material", new MaterialKind(catalog), "a wood or a sheet")
                .example("white ash");
    }

    @Override
    protected Told build(Entries e) {
        return new Told(e.get(material), e.get(width), e.get(height), e.get(place), e.get(glued));
    }
}
