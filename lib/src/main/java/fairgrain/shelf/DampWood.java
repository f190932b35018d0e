package fairgrain.shelf;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * What moisture takes from the figures of a wood that was tested at 12 %.
 *
 * <p>P = P_12 (P_12/P_g)^((12 − M)/(M_p − 12)), M in percent
 *
 * <p><b>Source</b> {@code gtr190}, equation 5-3.
 *
 * <p><b>Source</b> {@code own}, median of dry over green in 49 woods, with M_p 25 for all.
 *
 * <p><b>Holds for</b> clear wood between 12 % and M_p. Below 12 % the figure of 12 % is kept, which is the low one. Left out: that woods
 * differ in M_p, from 21 to 28 %. Not for sheets.
 */
public final class DampWood {
    public static final Citation SOURCE = Citation.of("gtr190", "equation 5-3", Basis.MEMORY);
    public static final Citation RATIOS =
            Citation.of("own", "median of dry over green in 49 woods, with M_p 25 for all", Basis.MEMORY);

    /** P_12/P_g of the modulus of elasticity. */
    public static final double ELASTICITY = 1.25;

    /** P_12/P_g of the bending strength. */
    public static final double RUPTURE = 1.67;

    /** P_12/P_g of the shear strength along the grain. */
    public static final double SHEAR = 1.51;

    /** P_12/P_g of the stress across the grain at the proportional limit. */
    public static final double BEARING = 2.03;

    private static final double TESTED = 0.12;
    private static final double GREEN = 0.25;

    private DampWood() {}

    /**
     * What is left of a figure.
     *
     * @param dryByGreen P_12/P_g [-]
     * @param moisture M, at the damp end of the year [fraction]
     * @return P/P_12, at most 1 [-]
     */
    public static double share(double dryByGreen, double moisture) {
        double r = Require.between("dry by green", dryByGreen, 1, 4, "(ratio)");
        double m = Require.between("moisture content", moisture, 0, 0.4, "(a fraction; 12 % is 0.12)");
        double within = Math.min(Math.max(m, TESTED), GREEN);
        return Math.pow(r, (TESTED - within) / (GREEN - TESTED));
    }
}
