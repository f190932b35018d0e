package fairgrain.entry;

import fairgrain.design.Material;
import fairgrain.material.SheetGood;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;

/** A sheet is known for the thicknesses of its row only. */
final class SheetThickness {
    private static final double TOLERANCE = 0.0005; // m

    private SheetThickness() {}

    /** Refuses a sheet of another thickness than the table knows it in; a wood may have any. */
    static void require(Material material, Length thickness, ShopRule rule) {
        SheetGood sheet = material.sheet();
        if (sheet != null
                && (thickness.metres() < sheet.leastThickness() - TOLERANCE
                        || thickness.metres() > sheet.mostThickness() + TOLERANCE)) {
            throw new IllegalArgumentException(
                    sheet.name() + " is in the table from " + rule.text(new Length(sheet.leastThickness())) + " to "
                            + rule.text(new Length(sheet.mostThickness())) + " thick, but was " + rule.text(thickness));
        }
    }
}
