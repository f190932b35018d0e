package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * Pull that the root section of a screw may carry.
 *
 * <p>T = 0.5 F_yb π D_r² / 4
 *
 * <p><b>Source</b> {@code own}, half of the bending yield strength on the root section.
 *
 * <p><b>Holds for</b> the screw steels of {@link BendingYield}. The timber code asks for this check and leaves the
 * strength to metal practice. The bending yield strength lies between yield and breaking strength, so half of it keeps
 * a factor of about two on breaking. It does not grow with short loads. Left out: hardened drywall screws, which are
 * brittle, stainless and brass screws, unless their own F_yb is entered.
 */
public final class ScrewSteel {
    public static final Citation SOURCE =
            Citation.of("own", "half of the bending yield strength on the root section", Basis.JUDGEMENT);

    private static final double SHARE_OF_YIELD = 0.5;

    private ScrewSteel() {}

    /**
     * The allowable pull.
     *
     * @param rootDiameter D_r [m]
     * @param bendingYield F_yb, bending yield strength of the steel [Pa]
     * @return T [N]
     */
    public static double tension(double rootDiameter, double bendingYield) {
        double d = Ranges.diameter("root diameter", rootDiameter);
        double f = Ranges.strength("bending yield strength", bendingYield);
        return SHARE_OF_YIELD * f * Math.PI * d * d / 4;
    }
}
