package fairgrain.clearance;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * How far the back of a door's closing edge swings out beyond its front when the door turns on a pin at its front face.
 *
 * <p>c = t² / (2 w), which is never less than √(w² + t²) − w.
 *
 * <p><b>Source</b> {@code own}, arc of the closing edge: the back arris turns on the diagonal of width and thickness.
 *
 * <p><b>Holds for</b> an inset door on butt hinges, its edge square. A pin that stands proud of the face adds to the thickness. Left out:
 * concealed hinges, which carry the door outwards as it opens.
 */
public final class SwingArc {
    public static final Citation SOURCE = Citation.of("own", "arc of the closing edge", Basis.DERIVED);

    private SwingArc() {}

    /**
     * Clearance that a square closing edge needs.
     *
     * @param thickness t, of the door, and what the pin stands proud of its face [m]
     * @param width w, from the pin to the closing edge [m]
     * @return c, on the safe side [m]
     */
    public static double clearance(double thickness, double width) {
        double t = Require.between("thickness of the door", thickness, 0.002, 0.2, "m");
        double w = Require.between("width of the door", width, 0.05, 3, "m");
        return t * t / (2 * w);
    }
}
