package fairgrain.design;

import fairgrain.material.SheetGood;
import fairgrain.material.Wood;
import org.jspecify.annotations.Nullable;

/** A wood or a sheet: one of the two is null. */
record Material(@Nullable Wood wood, @Nullable SheetGood sheet) {
    Wood solid() {
        if (wood == null) {
            throw new IllegalStateException("this material is a sheet");
        }
        return wood;
    }

    /** Mass over volume; a wood without density counts as a heavy one [kg/m³]. */
    double density() {
        if (sheet != null) {
            return sheet.density();
        }
        return Door.density(solid());
    }
}
