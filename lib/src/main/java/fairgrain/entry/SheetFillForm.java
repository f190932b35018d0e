package fairgrain.entry;

import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.material.SheetGood;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;

/** A sheet in the grooves of a door. */
final class SheetFillForm extends Form<SheetFillForm.Told> {
    private static final Limits THICKNESS = new Limits("thickness of the sheet", 0.002, 0.03, "m");

    /** As it was told, the groove elsewhere. */
    record Told(SheetGood sheet, Length thickness, boolean glued) {}

    private final Field<SheetGood> sheet;
    private final Field<Length> thickness =
            length("thickness", THICKNESS, "as measured").example("1/4 in");
    private final Field<Boolean> glued = yesNo(
                    "glued in", "glued in its grooves all round, which keeps the frame square")
            .orElse(false);

    SheetFillForm(Catalog catalog) {
        super("sheet", "A sheet in the grooves of a door, in the place of a panel.");
        sheet = named("of", catalog.sheetFinder(), "which").example("birch plywood 6 5 mm along");
    }

    @Override
    protected Told build(Entries e) {
        return new Told(e.get(sheet), e.get(thickness), e.get(glued));
    }
}
