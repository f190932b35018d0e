package fairgrain.movement;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * How far a free board cups: because one face is damper than the other, or because its rings are curved.
 *
 * <p>Faces: κ = Δε/t, δ = κ w²/8. Rings: δ = c (1 − s<sub>R</sub>) (cos kθ/cos θ − 1), k = (1 − s<sub>T</sub>)/(1 − s<sub>R</sub>), θ = atan(w/2c); for a
 * narrow board δ = (s<sub>T</sub> − s<sub>R</sub>) w²/(4 c)
 *
 * <p><b>Source</b> {@code own}, free cup of a board: a strip bent by the strain of its faces, and rings that shrink by a polar map.
 *
 * <p><b>Holds for</b> a board that nothing holds flat. In drying the bark side goes hollow, whatever the thickness. Left out: what sets in time, and
 * boards whose pith lies off the middle of the width.
 */
public final class Cup {
    public static final Citation SOURCE = Citation.of("own", "free cup of a board", Basis.DERIVED);

    private Cup() {}

    /**
     * Curvature from what one face has swollen more than the other.
     *
     * @param strain Δε, difference of the two faces' change in width over the width [ratio]
     * @param thickness t [m]
     * @return κ [1/m]
     */
    public static double curvature(double strain, double thickness) {
        double e = Require.between("difference in swelling", strain, 0, 0.2, "(a ratio)");
        double t = Require.between("thickness", thickness, 0.001, 0.2, "m");
        return e / t;
    }

    /**
     * Height of the bow in the middle.
     *
     * @param curvature κ [1/m]
     * @param width w, across the board [m]
     * @return δ [m]
     */
    public static double height(double curvature, double width) {
        double k = Require.between("curvature", curvature, 0, 20, "1/m");
        double w = width(width);
        return k * w * w / 8;
    }

    /**
     * Cup of a flatsawn board, its pith below the middle of its width.
     *
     * @param tangential s_T, shrinkage along the rings between the two moistures [ratio]
     * @param radial s_R, the same across the rings [ratio]
     * @param pithDistance c, from the pith to the face that is looked at [m]
     * @param width w [m]
     * @return δ, above zero where the bark side goes hollow [m]
     */
    public static double ofRings(double tangential, double radial, double pithDistance, double width) {
        double sT = shrinkage("tangential shrinkage", tangential);
        double sR = shrinkage("radial shrinkage", radial);
        double c = Require.between("distance from the pith", pithDistance, 0.005, 2, "m");
        double theta = Math.atan(width(width) / (2 * c));
        double k = (1 - sT) / (1 - sR);
        return c * (1 - sR) * (Math.cos(k * theta) / Math.cos(theta) - 1);
    }

    /**
     * The same for a board that is narrow beside its distance from the pith.
     *
     * @param tangential s_T, shrinkage along the rings between the two moistures [ratio]
     * @param radial s_R, the same across the rings [ratio]
     * @param pithDistance c, from the pith to the face that is looked at [m]
     * @param width w [m]
     * @return δ; a sixth too high at w/c 1.5 [m]
     */
    public static double ofRingsNarrow(double tangential, double radial, double pithDistance, double width) {
        double sT = shrinkage("tangential shrinkage", tangential);
        double sR = shrinkage("radial shrinkage", radial);
        double c = Require.between("distance from the pith", pithDistance, 0.005, 2, "m");
        double w = width(width);
        return (sT - sR) * w * w / (4 * c);
    }

    private static double width(double width) {
        return Require.between("width", width, 0.005, 3, "m");
    }

    private static double shrinkage(String name, double shrinkage) {
        return Require.between(name, shrinkage, -0.25, 0.25, "(a fraction; 8 % is 0.08)");
    }
}
