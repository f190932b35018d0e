package fairgrain.bending;

import fairgrain.quantity.Require;

/**
 * How a shelf is held in height. Distances are from the front edge.
 *
 * @param onPins whether the two ends rest on points and not on lines across the depth [-]
 * @param backHeld whether a line along the back holds the shelf, down as well as up [-]
 * @param front where the front pins are; 0 if there are none [m]
 * @param rear where the rear pins or the line along the back are; 0 if there are none [m]
 */
public record ShelfSupports(boolean onPins, boolean backHeld, double front, double rear) {
    public ShelfSupports {
        Require.between("place of the front pins", front, 0, 3, "m");
        Require.between("place of the rear pins or the back cleat", rear, 0, 3, "m");
        if (onPins && !(rear > front)) {
            throw new IllegalArgumentException(
                    "the rear pins must be behind the front pins, but are at " + rear + " m and " + front + " m");
        }
    }

    /** Cleats or housings across the full depth at both ends. */
    public static ShelfSupports endCleats() {
        return new ShelfSupports(false, false, 0, 0);
    }

    /** Two pins at each end. */
    public static ShelfSupports fourPins(double front, double rear) {
        return new ShelfSupports(true, false, front, rear);
    }

    /** Cleats across the ends and one along the back, to which the shelf is fastened. */
    public static ShelfSupports endAndBackCleats(double back) {
        return new ShelfSupports(false, true, 0, back);
    }

    /** A pin at each front corner and a cleat along the back, to which the shelf is fastened. */
    public static ShelfSupports frontPinsAndBackCleat(double front, double back) {
        return new ShelfSupports(true, true, front, back);
    }
}
