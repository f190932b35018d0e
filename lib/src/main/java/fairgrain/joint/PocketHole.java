package fairgrain.joint;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * Where a pocket screw goes that leaves the end of the rail in the middle of its thickness.
 *
 * <p>in the stile L − a along the screw, (L − a) cos 15° across the stile; point from the face T/2 − (L − a) sin 15° − D/2
 *
 * <p><b>Source</b> {@code own}, a screw at 15° through the middle of the end.
 *
 * <p><b>Holds for</b> rail and stile of the same thickness, flush. a is the wood between the floor of the pocket and the end of the
 * rail, along the screw.
 */
public final class PocketHole {
    public static final Citation SOURCE =
            Citation.of("own", "a screw at 15° through the middle of the end", Basis.DERIVED);

    private PocketHole() {}

    /**
     * How deep the point is in the stile, square to its edge.
     *
     * @param length L, of the screw from under its head [m]
     * @param wood a, under the head [m]
     * @return depth [m]
     */
    public static double depth(double length, double wood) {
        return along(length, wood) * Math.cos(PocketScrewCorner.SLANT);
    }

    /**
     * Wood between the point and the face of the stile.
     *
     * @param thickness T, of rail and stile [m]
     * @param length L, of the screw from under its head [m]
     * @param wood a, under the head [m]
     * @param diameter D, of the screw [m]
     * @return what is left; below zero it comes through [m]
     */
    public static double left(double thickness, double length, double wood, double diameter) {
        return Sizes.length("thickness of the rail", thickness) / 2
                - along(length, wood) * Math.sin(PocketScrewCorner.SLANT)
                - Sizes.length("diameter of the screw", diameter) / 2;
    }

    /**
     * Longest screw that leaves so much wood before the face of the stile.
     *
     * @param thickness T, of rail and stile [m]
     * @param wood a, under the head [m]
     * @param diameter D, of the screw [m]
     * @param leave wood to leave [m]
     * @return L [m]
     */
    public static double longest(double thickness, double wood, double diameter, double leave) {
        return Sizes.length("wood under the head", wood)
                + (Sizes.length("thickness of the rail", thickness) / 2
                                - Sizes.length("diameter of the screw", diameter) / 2
                                - Sizes.length("wood to leave", leave))
                        / Math.sin(PocketScrewCorner.SLANT);
    }

    private static double along(double length, double wood) {
        return Math.max(0, Sizes.length("length of the screw", length) - Sizes.length("wood under the head", wood));
    }
}
