package fairgrain.hanging;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * How screws under a stiff cabinet share a load in the plane of the wall.
 *
 * <p>C = V (x_V − x̄) + H (y_H − ȳ), J = Σ((x_i − x̄)² + (y_i − ȳ)²); V_i = V/n + C (x_i − x̄)/J, H_i = H/n + C (y_i − ȳ)/J
 *
 * <p><b>Source</b> {@code own}, elastic group of like screws.
 *
 * <p><b>Holds for</b> a case much stiffer than its screws, screws alike, holes that fit. x to the right, y up; V down, H to the
 * right; a screw answers with V_i up and H_i to the left. A share below zero is real: a lever lifts there. Screws that all sit
 * in one place cannot keep a cabinet level and are refused.
 */
public final class ScrewGroup {
    public static final Citation SOURCE = Citation.of("own", "elastic group of like screws", Basis.DERIVED);

    private ScrewGroup() {}

    /** Up and to the left on one screw [N]. */
    public record Force(double up, double left) {
        /** Along the wall, whichever way [N]. */
        public double size() {
            return Math.hypot(up, left);
        }
    }

    /**
     * The force on each screw.
     *
     * @param x of each screw [m]
     * @param y of each screw [m]
     * @param weight V [N]
     * @param weightAt x_V [m]
     * @param level H, to the right [N]
     * @param levelAt y_H [m]
     * @return the force on each [N]
     */
    public static Force[] forces(double[] x, double[] y, double weight, double weightAt, double level, double levelAt) {
        int n = x.length;
        if (n == 0 || y.length != n) {
            throw new IllegalArgumentException(
                    "each screw must have two places, but there were " + n + " and " + y.length);
        }
        Require.between("weight", weight, 0, 1e6, "N");
        Require.between("place of the weight", weightAt, -20, 20, "m");
        Require.between("level force", level, -1e6, 1e6, "N");
        Require.between("height of the level force", levelAt, -20, 20, "m");
        double xm = mean(x);
        double ym = mean(y);
        double polar = polar(x, y);
        if (!(polar > 0)) {
            throw new IllegalArgumentException("screws in one place cannot keep a cabinet level");
        }
        double turning = weight * (weightAt - xm) + level * (levelAt - ym);
        Force[] forces = new Force[n];
        for (int i = 0; i < n; i++) {
            forces[i] =
                    new Force(weight / n + turning * (x[i] - xm) / polar, level / n + turning * (y[i] - ym) / polar);
        }
        return forces;
    }

    /**
     * What the group turns against.
     *
     * @param x of each screw [m]
     * @param y of each screw [m]
     * @return J [m²]
     */
    public static double polar(double[] x, double[] y) {
        double xm = mean(x);
        double ym = mean(y);
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            sum += (x[i] - xm) * (x[i] - xm) + (y[i] - ym) * (y[i] - ym);
        }
        return sum < 1e-12 ? 0 : sum;
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }
}
