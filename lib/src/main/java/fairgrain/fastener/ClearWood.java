package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * What a board whose grain nobody has looked at may carry along its grain under a load that stays.
 *
 * <p>bending: f (1 − 1.645 · 0.16) · 0.65 · 0.9 / 2.3; shear: τ (1 − 1.645 · 0.14) · 0.65 · 0.9 / 2.3
 *
 * <p><b>Source</b> {@code astm-d245}, divisors of the 5 % strengths.
 *
 * <p><b>Holds for</b> mean strengths f and τ of small clear pieces. 2.3 is the divisor of hardwoods, the larger one; 0.9 is for a
 * load that stays; 0.65 stands for knots and sloping grain that were not looked for. Short cross grain is not in it.
 */
public final class ClearWood {
    public static final Citation SOURCE = Citation.of("astm-d245", "divisors of the 5 % strengths", Basis.MEMORY);
    public static final Citation STRENGTH_RATIO =
            Citation.of("own", "0.65 where clear straight grain is not stated", Basis.JUDGEMENT);

    private static final double FIVE_PER_CENT = 1.645; // standard deviations
    private static final double BENDING_VARIATION = 0.16;
    private static final double SHEAR_VARIATION = 0.14;
    private static final double UNSEEN_GRAIN = 0.65;
    private static final double PERMANENT = 0.9;
    private static final double DIVISOR = 2.3;

    private ClearWood() {}

    /**
     * Bending along the grain.
     *
     * @param rupture f, mean modulus of rupture [Pa]
     * @return allowable stress for good [Pa]
     */
    public static double bending(double rupture) {
        double mean = Require.between("modulus of rupture", rupture, 1e7, 4e8, "Pa");
        return mean * (1 - FIVE_PER_CENT * BENDING_VARIATION) * UNSEEN_GRAIN * PERMANENT / DIVISOR;
    }

    /**
     * Shear along the grain.
     *
     * @param shear τ, mean strength [Pa]
     * @return allowable stress for good [Pa]
     */
    public static double shear(double shear) {
        double mean = Require.between("shear strength along the grain", shear, 5e5, 5e7, "Pa");
        return mean * (1 - FIVE_PER_CENT * SHEAR_VARIATION) * UNSEEN_GRAIN * PERMANENT / DIVISOR;
    }
}
