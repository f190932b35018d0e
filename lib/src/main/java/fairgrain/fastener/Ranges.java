package fairgrain.fastener;

import fairgrain.quantity.Require;

/** The ranges that the formulas of this package share: what a workshop could mean, narrow enough to catch a wrong unit. */
final class Ranges {
    private Ranges() {}

    static double gravity(double value) {
        return Require.between("specific gravity", value, 0.2, 1.3, "(ratio)");
    }

    static double diameter(String name, double value) {
        return Require.between(name, value, 0.001, 0.05, "m");
    }

    /** A length that may be nothing, such as a gap or the thread in a member. */
    static double length(String name, double value) {
        return Require.between(name, value, 0, 1, "m");
    }

    static double thickness(String name, double value) {
        return Require.between(name, value, 0.0002, 0.5, "m");
    }

    /** A distance on a wall or a case. */
    static double distance(String name, double value) {
        return Require.between(name, value, 0.0005, 20, "m");
    }

    static double force(String name, double value) {
        return Require.between(name, value, 0, 1e6, "N");
    }

    /** What something holds; without any of it there is no ratio to work out. */
    static double capacity(String name, double value) {
        Require.positive(name, value, "N");
        return Require.between(name, value, 0, 1e8, "N");
    }

    static double strength(String name, double value) {
        return Require.between(name, value, 1e4, 3e9, "Pa");
    }

    static double angle(String name, double value) {
        return Require.between(name, value, 0, Math.PI / 2, "rad");
    }
}
