package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * A hanging rail between the sides of a case that takes the pull of the wall when the back is not counted on.
 *
 * <p>σ = (T L/4) / (d t²/6) + (V L/4) / (t d²/6); at each end √(T² + V²) / 2
 *
 * <p><b>Source</b> {@code own}, simple beam with wall screws at mid-length.
 *
 * <p><b>Holds for</b> a rail whose ends are held by the sides alone. One stud at mid-length is the worst place for both
 * loads; more studs give less, see {@link #moment}. A screw through the side into the end of the rail is loaded sideways by both, in end
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
        return stress(Ranges.force("pull", pull) * l / 4, Ranges.force("weight", shear) * l / 4, d, t);
    }

    /**
     * Greatest moment in a rail that only its ends hold, by forces at the studs.
     *
     * @param places of the studs from one end of the rail [m]
     * @param forces at the studs, all one way [N]
     * @param span L, between the sides [m]
     * @return M [N·m]
     */
    public static double moment(double[] places, double[] forces, double span) {
        double l = Ranges.distance("span between the sides", span);
        if (places.length != forces.length) {
            throw new IllegalArgumentException(
                    "each stud must have a force, but there were " + places.length + " and " + forces.length);
        }
        double greatest = 0;
        for (double x : places) {
            double here = 0;
            for (int i = 0; i < places.length; i++) {
                double a = Require.between("place of a stud", places[i], 0, l, "m, between the sides");
                double p = Ranges.force("force at a stud", forces[i]);
                here += p * Math.min(x, a) * (l - Math.max(x, a)) / l;
            }
            greatest = Math.max(greatest, here);
        }
        return greatest;
    }

    /**
     * Bending along the rail by two moments at once.
     *
     * @param levelMoment of the pull [N·m]
     * @param uprightMoment of the weight [N·m]
     * @param depth d, upright [m]
     * @param thickness t, from the wall [m]
     * @return greatest stress [Pa]
     */
    public static double stress(double levelMoment, double uprightMoment, double depth, double thickness) {
        double t = Ranges.thickness("thickness of the rail", thickness);
        double d = Ranges.thickness("depth of the rail", depth);
        return Require.between("moment of the pull", levelMoment, 0, 1e6, "N·m") / (d * t * t / 6)
                + Require.between("moment of the weight", uprightMoment, 0, 1e6, "N·m") / (t * d * d / 6);
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
