package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * How much the screws of one row carry together, as part of their sum.
 *
 * <p>u = 1 + γ (s/2) (1/E_mA_m + 1/E_sA_s), m = u − √(u² − 1), C_g = [m (1 − m^2n) / (n ((1 + q m^n)(1 + m) − 1 +
 * m^2n))] (1 + q)/(1 − m)
 *
 * <p><b>Source</b> {@code nds2018}, equation 11.3-1.
 *
 * <p><b>Holds for</b> rows of screws of 1/4 in and more, one behind the other along the load. Below 1/4 in C_g is 1. γ
 * is 180 000 D^1.5 lb/in wood to wood and 270 000 D^1.5 wood to metal.
 */
public final class GroupAction {
    public static final Citation SOURCE = Citation.of("nds2018", "equation 11.3-1", Basis.MEMORY);

    private static final double WOOD_TO_WOOD = 180_000; // lb/in, in
    private static final double WOOD_TO_METAL = 270_000; // lb/in, in

    private GroupAction() {}

    /**
     * C_g.
     *
     * @param screws n, in the row [-]
     * @param spacing s, between them [m]
     * @param mainStiffness E_m A_m, modulus times section of the wall member [N]
     * @param sideStiffness E_s A_s, modulus times section of the member under the head [N]
     * @param slipModulus γ, load per slip of one screw [N/m]
     * @return C_g [-]
     */
    public static double factor(
            int screws, double spacing, double mainStiffness, double sideStiffness, double slipModulus) {
        double n = Require.between("screws in a row", screws, 1, 100, "(count)");
        double s = Ranges.distance("spacing", spacing);
        double main = Require.between("E A of the wall member", mainStiffness, 1e4, 1e11, "N");
        double side = Require.between("E A of the member under the head", sideStiffness, 1e4, 1e11, "N");
        double gamma = Require.between("slip modulus", slipModulus, 1e4, 1e10, "N/m");
        double q = Math.min(main / side, side / main);
        double u = 1 + gamma * s / 2 * (1 / main + 1 / side);
        double m = u - Math.sqrt(u * u - 1);
        double mn = Math.pow(m, n);
        double m2n = mn * mn;
        return m * (1 - m2n) / (n * ((1 + q * mn) * (1 + m) - 1 + m2n)) * (1 + q) / (1 - m);
    }

    /**
     * γ, wood to wood.
     *
     * @param diameter D, nominal [m]
     * @return γ [N/m]
     */
    public static double slipWoodToWood(double diameter) {
        return slip(WOOD_TO_WOOD, diameter);
    }

    /**
     * γ, wood to metal.
     *
     * @param diameter D, nominal [m]
     * @return γ [N/m]
     */
    public static double slipWoodToMetal(double diameter) {
        return slip(WOOD_TO_METAL, diameter);
    }

    private static double slip(double poundsPerInch, double diameter) {
        double d = Ranges.diameter("screw diameter", diameter) / InchPound.METRES_PER_INCH;
        return poundsPerInch * Math.pow(d, 1.5) * InchPound.NEWTONS_PER_METRE_PER_POUND_PER_INCH;
    }
}
