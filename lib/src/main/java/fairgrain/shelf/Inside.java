package fairgrain.shelf;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Require;

/** What keeps the skins of a shelf apart. */
public sealed interface Inside {
    /**
     * Ribs along the span, one on each edge, the box closed at its ends by ribs of the same.
     *
     * @param count those on the edges counted
     * @param shearModulus in the plane of a rib [Pa]
     */
    record Ribs(ShelfStock stock, int count, Length width, double shearModulus) implements Inside {
        public static final Limits WIDTH = new Limits("width of a rib", 0.003, 0.1, "m");

        public Ribs {
            Require.between("number of ribs", count, 2, 30, "(one on each edge)");
            WIDTH.check(width);
            SHEAR_MODULUS.check(shearModulus);
        }
    }

    /**
     * A light core all over, glued to both skins; its figures as its maker declares them.
     *
     * @param said what it is
     * @param shearModulus along the span [Pa]
     * @param shearStrength short-time, along the span [Pa]
     * @param creep growth of its slip in shear
     * @param density [kg/m³]
     */
    record Core(String said, double shearModulus, double shearStrength, Creep creep, double density) implements Inside {
        public static final Limits SHEAR_STRENGTH = new Limits("shear strength of the core", 1e4, 2e7, "Pa");
        public static final Limits DENSITY = new Limits("density of the core", 5, 1000, "kg/m3");

        public Core {
            SHEAR_MODULUS.check(shearModulus);
            SHEAR_STRENGTH.check(shearStrength);
            DENSITY.check(density);
        }
    }

    /** Of rib or core. */
    Limits SHEAR_MODULUS = new Limits("shear modulus", 1e5, 5e9, "Pa");
}
