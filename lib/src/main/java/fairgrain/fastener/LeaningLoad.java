package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * How hard a load that stands to one side presses at the end of a long contact that can only push.
 *
 * <p>e ≤ L/6: 1 + 6 e/L; else 2/(3 (1/2 − e/L)), times the mean load per length
 *
 * <p><b>Source</b> {@code own}, straight-line pressure under a stiff case.
 *
 * <p><b>Holds for</b> a case and a strip much stiffer than what lies between them. Beyond L/6 part of the contact opens; at L/2 the
 * case tips.
 */
public final class LeaningLoad {
    public static final Citation SOURCE =
            Citation.of("own", "straight-line pressure under a stiff case", Basis.DERIVED);

    /** Farther out than this part of the length the case is as good as tipping. */
    public static final double TIPS = 0.48;

    private LeaningLoad() {}

    /**
     * Load per length at the end towards which it leans, against its mean.
     *
     * @param offset e, of the load from the middle [m]
     * @param length L, of the contact [m]
     * @return 1 or more [-]
     */
    public static double peak(double offset, double length) {
        double l = Ranges.distance("length of the contact", length);
        double e = Require.between("offset of the load", offset, 0, TIPS * l, "m, or the case tips");
        return e <= l / 6 ? 1 + 6 * e / l : 2 / (3 * (0.5 - e / l));
    }
}
