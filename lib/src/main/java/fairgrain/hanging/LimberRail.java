package fairgrain.hanging;

import fairgrain.bending.BeamLoad;
import fairgrain.bending.BeamStretch;
import fairgrain.bending.BeamSupport;
import fairgrain.bending.GeneralBeam;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;
import java.util.Arrays;
import java.util.List;

/**
 * How studs share a load when the rail, not the cabinet, carries it from stud to stud: a beam over all studs, its ends free past
 * the outer ones.
 *
 * <p>Three studs with like overhangs a: R_end = w (3L/8 + a + 0.75 a²/L); an overhang at one end only: 0.625 in place of 0.75 at
 * that end
 *
 * <p><b>Source</b> {@code own}, continuous beam on supports that do not give.
 *
 * <p><b>Holds for</b> two studs and more. Screws slip, so the inner studs get less than here (of 62.5 % on the middle of three
 * studs, 40 to 55 % are left): this is the bound beside the stiff cabinet. The load is tried along the whole cabinet and between
 * the outer studs alone, which loads the inner ones more.
 */
public final class LimberRail {
    public static final Citation SOURCE =
            Citation.of("own", "continuous beam on supports that do not give", Basis.DERIVED);

    private static final double STIFFNESS = 1000; // N·m²; any will do, since no support gives

    private LimberRail() {}

    /**
     * Part of a load that is spread evenly on each stud.
     *
     * @param studs from the left end of the rail [m]
     * @param width of the rail [m]
     * @param from where the load begins, from the left end [m]
     * @param to where it ends [m]
     * @return part on each stud, with its sign, summing to 1 [-]
     */
    public static double[] even(double[] studs, double width, double from, double to) {
        double length = Require.between("length of the load", to - from, 0.001, width, "m, no more than the rail");
        return reactions(studs, width, BeamLoad.Line.uniform(from, to, 1 / length));
    }

    /**
     * Forces on the studs by a load that leans to one side: its sum nothing, its moment about the middle one newton metre.
     *
     * @param studs from the left end of the rail [m]
     * @param width of the rail [m]
     * @return force on each stud, with its sign [N]
     */
    public static double[] leaning(double[] studs, double width) {
        double end = 6 / (width * width);
        return reactions(studs, width, new BeamLoad.Line(0, width, -end, end));
    }

    /**
     * Part of a load at one place on each stud.
     *
     * @param studs from the left end of the rail [m]
     * @param width of the rail [m]
     * @param at place of the load, from the left end [m]
     * @return part on each stud, with its sign, summing to 1 [-]
     */
    public static double[] point(double[] studs, double width, double at) {
        return reactions(studs, width, new BeamLoad.Point(at, 1));
    }

    private static double[] reactions(double[] studs, double width, BeamLoad load) {
        List<BeamSupport> supports =
                Arrays.stream(studs).mapToObj(BeamSupport::pin).toList();
        return GeneralBeam.solve(List.of(BeamStretch.withoutShear(width, STIFFNESS)), supports, List.of(load))
                .reactions()
                .stream()
                .mapToDouble(r -> r.force())
                .toArray();
    }
}
