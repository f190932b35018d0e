package fairgrain.design;

import fairgrain.material.SheetGood;
import fairgrain.material.Wood;
import org.jspecify.annotations.Nullable;

/** A wood or a sheet: one of the two is null. */
public record Material(@Nullable Wood wood, @Nullable SheetGood sheet) {
    public boolean isSheet() {
        return sheet != null;
    }

    public String name() {
        return sheet == null ? solid().name() : sheet.name();
    }

    public Wood solid() {
        if (wood == null) {
            throw new IllegalStateException("this material is a sheet");
        }
        return wood;
    }

    /** Mass over volume; a wood without density counts as a heavy one [kg/m³]. */
    public double density() {
        if (sheet != null) {
            return sheet.density();
        }
        return Door.density(solid());
    }
}
