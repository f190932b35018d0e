package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;
import java.util.Arrays;

/**
 * How studs side by side share the load of a stiff case whose centre lies between or beyond them.
 *
 * <p>share_j = 1/n + (x_c − x_m)(x_j − x_m) / Σ (x_k − x_m)²; one stud: horizontal couple V e / d_y
 *
 * <p><b>Source</b> {@code own}, rigid case on studs side by side.
 *
 * <p><b>Holds for</b> a case stiffer than its screws. A share of the weight below zero is real (a lever lifts there)
 * and keeps its sign, so shares always add up to one and balance about x_c. A pull below zero is not: the wall pushes
 * instead, and the bearing at the lower edge moves along to balance; so that stud is dropped and the rest are shared
 * anew. Two studs at least; a single stud needs two screws one above the other ({@link #coupleOnOneStud}), and one
 * screw alone is not judged. A limber rail loads the inner studs more: see {@link RailOnThreeStuds}.
 */
public final class StudShares {
    public static final Citation SOURCE = Citation.of("own", "rigid case on studs side by side", Basis.DERIVED);

    private StudShares() {}

    /**
     * Shares of the weight, with their sign.
     *
     * @param studs x, of each stud along the wall [m]
     * @param loadCentre x_c, of the load [m]
     * @return part of the load on each stud, summing to 1 [-]
     */
    public static double[] ofWeight(double[] studs, double loadCentre) {
        boolean[] all = new boolean[studs.length];
        Arrays.fill(all, true);
        checkStuds(studs);
        return shares(studs, all, Require.between("centre of the load", loadCentre, -20, 20, "m"));
    }

    /**
     * Shares of the pull: studs that would be pushed are dropped.
     *
     * @param studs x, of each stud along the wall [m]
     * @param loadCentre x_c, of the load [m]
     * @return part of the pull on each stud, none below 0, summing to 1 [-]
     */
    public static double[] ofPull(double[] studs, double loadCentre) {
        checkStuds(studs);
        double centre = Require.between("centre of the load", loadCentre, -20, 20, "m");
        boolean[] used = new boolean[studs.length];
        Arrays.fill(used, true);
        while (true) {
            double[] shares = shares(studs, used, centre);
            int lowest = 0;
            for (int i = 1; i < shares.length; i++) {
                if (shares[i] < shares[lowest]) {
                    lowest = i;
                }
            }
            if (shares[lowest] >= 0) {
                return shares;
            }
            used[lowest] = false;
        }
    }

    /**
     * One stud: horizontal force on each of two screws, in the plane of the wall, that keeps the case level.
     *
     * @param shear V, whole weight [N]
     * @param offset e, of the load's centre from the stud along the wall [m]
     * @param screwDistance d_y, of the two screws, one above the other [m]
     * @return horizontal force, beside V shared by the screws [N]
     */
    public static double coupleOnOneStud(double shear, double offset, double screwDistance) {
        double e = Require.between("distance of the load from the stud", offset, -5, 5, "m");
        double dy = Require.between("distance between the screws", screwDistance, 0.01, 5, "m");
        return Ranges.force("weight", shear) * Math.abs(e) / dy;
    }

    private static double[] shares(double[] studs, boolean[] used, double centre) {
        int n = 0;
        double sum = 0;
        for (int i = 0; i < studs.length; i++) {
            if (used[i]) {
                n++;
                sum += studs[i];
            }
        }
        double mean = sum / n;
        double spread = 0;
        for (int i = 0; i < studs.length; i++) {
            if (used[i]) {
                spread += (studs[i] - mean) * (studs[i] - mean);
            }
        }
        double[] shares = new double[studs.length];
        for (int i = 0; i < studs.length; i++) {
            if (used[i]) {
                shares[i] = n == 1 ? 1 : 1.0 / n + (centre - mean) * (studs[i] - mean) / spread;
            }
        }
        return shares;
    }

    private static void checkStuds(double[] studs) {
        if (studs.length < 2) {
            throw new IllegalArgumentException("sharing needs at least two studs, but there were " + studs.length
                    + "; one stud takes a couple on two screws");
        }
        for (int i = 0; i < studs.length; i++) {
            Require.between("place of a stud", studs[i], -20, 20, "m");
            for (int j = 0; j < i; j++) {
                if (Math.abs(studs[i] - studs[j]) < 0.01) {
                    throw new IllegalArgumentException("studs must be at least 0.01 m apart, but two were at "
                            + studs[j] + " and " + studs[i] + " m");
                }
            }
        }
    }
}
