package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * A hanging rail between the sides of a case that takes the pull of the wall when the back is not counted on.
 *
 * <p>σ = (T L/4) / (d t²/6) + (V L/4) / (t d²/6); at each end √(T² + V²) / 2
 *
 * <p><b>Source</b> {@code own}, simple beam with wall screws at mid-length.
 *
 * <p><b>Holds for</b> a rail whose ends are held by the sides alone. One stud at mid-length is the worst place for both
 * loads; more studs give less. A screw through the side into the end of the rail is loaded sideways by both, in end
 * grain ({@link EndGrain#lateral}). A back screwed on from behind must carry T in withdrawal within the height of the
 * rail instead.
 */
public final class RailBetweenSides {
    public static final Citation SOURCE =
            Citation.of("own", "simple beam with wall screws at mid-length", Basis.DERIVED);

    private RailBetweenSides() {}

    /**
     * Bending along the rail, both ways at once.
     *
     * @param pull T, of the wall screws [N]
     * @param shear V, whole weight [N]
     * @param span L, between the sides [m]
     * @param depth d, upright [m]
     * @param thickness t, from the wall [m]
     * @return greatest stress [Pa]
     */
    public static double bendingStress(double pull, double shear, double span, double depth, double thickness) {
        double t = Ranges.thickness("thickness of the rail", thickness);
        double d = Ranges.thickness("depth of the rail", depth);
        double l = Ranges.distance("span between the sides", span);
        double level = Ranges.force("pull", pull) * l / 4 / (d * t * t / 6);
        double upright = Ranges.force("weight", shear) * l / 4 / (t * d * d / 6);
        return level + upright;
    }

    /**
     * Force on the joint at each end.
     *
     * @param pull T, of the wall screws [N]
     * @param shear V, whole weight [N]
     * @return resultant of T/2 and V/2 [N]
     */
    public static double endForce(double pull, double shear) {
        return Math.hypot(Ranges.force("pull", pull), Ranges.force("weight", shear)) / 2;
    }
}
