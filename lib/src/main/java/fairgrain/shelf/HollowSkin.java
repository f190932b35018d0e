package fairgrain.shelf;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Require;

/**
 * The two skins of a hollow or cored shelf, alike.
 *
 * @param stock what they are made of
 * @param thickness of each
 * @param elasticityAcross modulus of elasticity across the span [Pa]
 */
public record HollowSkin(ShelfStock stock, Length thickness, double elasticityAcross) {
    public static final Limits THICKNESS = new Limits("thickness of a skin", 0.001, 0.04, "m");

    public HollowSkin {
        THICKNESS.check(thickness);
        Require.between("modulus of elasticity across the span", elasticityAcross, 1e7, 1e11, "Pa");
    }
}
