package fairgrain.bending;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * What years add to a first sag.
 *
 * <p>w_fin = w_G (1 + k) + w_Q (1 + ψ₂ k)
 *
 * <p>k(t) = k (t / 10 a)^0.22 from one month to ten years, constant outside
 *
 * <p><b>Source</b> {@code en1995}, equations 2.2 to 2.4.
 *
 * <p><b>Source</b> {@code own}, course of creep over time.
 *
 * <p><b>Holds for</b> ordinary stress and a steady room. The course is for display only: in half a year it gives half of k, where a test on
 * panels found nearly all of it. A verdict takes the whole of k. For books ψ₂ is 1.
 */
public final class CreepFactor {
    public static final Citation SOURCE = Citation.of("en1995", "equations 2.2 to 2.4", Basis.SECOND_HAND);
    public static final Citation COURSE_SOURCE = Citation.of("own", "course of creep over time", Basis.JUDGEMENT);

    private static final double YEAR = 365.25 * 86_400;
    private static final double FROM = YEAR / 12;
    private static final double TO = 10 * YEAR;

    private CreepFactor() {}

    /**
     * Sag after years.
     *
     * @param permanent w_G, first sag under what always stays, own weight among it [m]
     * @param variable w_Q, first sag under what comes and goes [m]
     * @param creep k, creep by first sag after years [-]
     * @param share ψ₂, how much of the time the variable load is there [-]
     * @return w_fin [m]
     */
    public static double finalSag(double permanent, double variable, double creep, double share) {
        double g = Require.between("sag under permanent load", permanent, -10, 10, "m");
        double q = Require.between("sag under variable load", variable, -10, 10, "m");
        double k = creep(creep);
        double psi = Require.between("lasting share of the variable load", share, 0, 1, "(ratio)");
        return g * (1 + k) + q * (1 + psi * k);
    }

    /**
     * Creep by first sag at a time, for display.
     *
     * @param creep k, after ten years and more [-]
     * @param time t, since the load was put on [s]
     * @return k(t) [-]
     */
    public static double at(double creep, double time) {
        double t = Require.between("time under load", time, 0, 1e10, "s");
        return creep(creep) * Math.pow(Math.min(Math.max(t, FROM), TO) / TO, 0.22);
    }

    private static double creep(double creep) {
        return Require.between("creep by first sag", creep, 0, 10, "(ratio)");
    }
}
