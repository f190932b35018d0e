package fairgrain.entry;

import fairgrain.clearance.PanelFit;
import fairgrain.clearance.SheetFit;
import fairgrain.design.SheetInFrame;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.material.SheetGood;
import fairgrain.part.Groove;
import fairgrain.quantity.Length;
import java.util.Optional;

/** A sheet in the grooves of a frame, or let in as a back. */
final class SheetInFrameForm extends Form<SheetInFrame> {
    private final Catalog catalog;
    private final Field<String> name = name("name", "what you call it").example("plywood panel");
    private final Field<SheetGood> sheet;
    private final Field<Length> across = length(
                    "between frame", SheetFit.SIZE, "from inner edge to inner edge, the longer way")
            .example("24 in");
    private final Field<Length> deep = length("groove depth", Groove.DEPTH, "of the groove or rebate at each end")
            .example("3/8 in");
    private final Field<Length> hold = length("hold", PanelFit.WANTED, "what must stay in it at each end, all year")
            .orElse(PanelFit.USUAL_HOLD);
    private final Field<Optional<Length>> asCut = length(
                    "as cut", SheetFit.SIZE, "its size that way, if it is cut already")
            .optional();

    SheetInFrameForm(Catalog catalog) {
        super("sheet in a frame", "A sheet in the grooves of a frame, or let in as a back.");
        this.catalog = catalog;
        sheet = named("sheet", catalog.sheetFinder(), "which").example("birch plywood 6 5 mm along");
    }

    @Override
    protected SheetInFrame build(Entries e) {
        return new SheetInFrame(
                e.get(name),
                e.get(sheet).name(),
                Optional.ofNullable(catalog.sheetMovement(e.get(sheet))),
                e.get(across),
                e.get(deep),
                e.get(hold),
                e.get(asCut));
    }
}
