package fairgrain.moisture;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * How far one depth of a slab has gone on its way after the air around it changed at once.
 *
 * <p>θ = 1 − Σ C_n cos(β_n x/a) exp(−β_n² Fo)
 *
 * <p><b>Source</b> {@code crank1975}, pp. 47-60; the series was read in the manual of a program that quotes it.
 *
 * <p><b>Holds for</b> a slab that starts even, with constant D. x is 0 in the middle (or at the sealed face) and a at
 * the face.
 */
public final class SlabProfile {
    public static final Citation SOURCE = Citation.of("crank1975", "pp. 47-60", Basis.SECOND_HAND);

    private static final double NEGLIGIBLE = 1e-17;

    private SlabProfile() {}

    /**
     * Share of the change made at one depth.
     *
     * @param position x/a, 0 in the middle, 1 at the face [-]
     * @param fourier Fo; shorter times need more terms than are worth while [-]
     * @param biot Bi; may be infinite [-]
     * @return θ, 0 at the start, 1 in the end [-]
     */
    public static double change(double position, double fourier, double biot) {
        double x = Require.between("position", position, 0, 1, "(0 middle, 1 face)");
        double fo = Require.between("Fourier number", fourier, 1e-4, 1e6, "(D t/a^2)");
        double rest = 0;
        for (int n = 0; ; n++) {
            double b = SlabRoots.root(n, biot);
            double decay = Math.exp(-b * b * fo);
            rest += SlabRoots.weight(b) * Math.cos(b * x) * decay;
            if (decay < NEGLIGIBLE) {
                return 1 - rest;
            }
        }
    }
}
