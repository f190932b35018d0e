package fairgrain.movement;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Shrinkage along a line that lies between the tangential and the radial direction.
 *
 * <p>S = S<sub>T</sub> cos² θ + S<sub>R</sub> sin² θ, θ between the growth rings and the line: 0 for a flatsawn width, a
 * right angle for a quartersawn one.
 *
 * <p><b>Source</b> {@code own}, rotation of small strains: the normal strain of the rotated axes.
 *
 * <p><b>Holds for</b> small strains and rings that run straight through the board. The curve of the rings is left out (it cups the
 * board), and so is the slant that a board with rings at half a right angle takes.
 */
public final class RingDirection {
    public static final Citation SOURCE = Citation.of("own", "rotation of small strains", Basis.DERIVED);

    private RingDirection() {}

    /**
     * Shrinkage along the line.
     *
     * @param tangential S_T [fraction]
     * @param radial S_R [fraction]
     * @param angle θ, between rings and line [rad]
     * @return S [fraction]
     */
    public static double shrinkage(double tangential, double radial, double angle) {
        return between(tangential, radial, radialShare(angle));
    }

    /**
     * How much of the radial shrinkage is in the shrinkage along the line.
     *
     * @param angle θ, between rings and line [rad]
     * @return sin² θ [fraction]
     */
    public static double radialShare(double angle) {
        double sin = Math.sin(Require.between("ring angle", angle, 0, Math.PI / 2, "rad"));
        return sin * sin;
    }

    /**
     * Shrinkage along the line, for one angle and many shrinkages.
     *
     * @param tangential S_T [fraction]
     * @param radial S_R [fraction]
     * @param radialShare sin² θ [fraction]
     * @return S [fraction]
     */
    public static double between(double tangential, double radial, double radialShare) {
        double t = Require.finite("tangential shrinkage", tangential, "(a fraction)");
        double r = Require.finite("radial shrinkage", radial, "(a fraction)");
        return t + (r - t) * Require.between("share of the radial shrinkage", radialShare, 0, 1, "(a fraction)");
    }
}
