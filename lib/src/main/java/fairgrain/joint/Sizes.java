package fairgrain.joint;

import fairgrain.quantity.Require;

/** What the formulas of joints take for good. */
final class Sizes {
    private Sizes() {}

    static double length(String name, double value) {
        return Require.between(name, value, 0.0005, 1, "m");
    }

    static double stress(String name, double value) {
        return Require.between(name, value, 1e5, 1e8, "Pa");
    }

    static double force(String name, double value) {
        return Require.between(name, value, 0, 1e6, "N");
    }
}
