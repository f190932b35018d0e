package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * From a reference value to what a screw may carry here: z′ = z C_D C_M C_t C_g C_Δ C_eg, (w p)′ = w p C_D C_M C_t,
 * W_H′ = W_H C_D C_M C_t.
 *
 * <p><b>Source</b> {@code nds2018}, clause 11.3 and Table 11.3.3. From memory.
 *
 * <p><b>Holds for</b> wood up to 19 % moisture content in service (C_M = 1) or wetter; wood that is driven wet and
 * dries later is left out. C_t = 1 up to 38 °C; warmer places are refused, since no figure was at hand. C_g is 1 below
 * 1/4 in ({@link GroupAction} otherwise); C_Δ is 1 where {@link EdgeAndSpacing} is kept; C_eg is {@link EndGrain}. C_D
 * is {@link LoadDuration}.
 */
public final class Adjustment {
    public static final Citation SOURCE = Citation.of("nds2018", "clause 11.3 and Table 11.3.3", Basis.MEMORY);

    /** Up to here wood counts as dry in service. [fraction] */
    public static final double DRY_UP_TO = 0.19;

    private static final double WET_LATERAL = 0.7;
    private static final double WET_WITHDRAWAL = 0.7;
    private static final double WET_NAIL_WITHDRAWAL = 0.25;
    private static final double WARMEST_K = 38 + 273.15; // 100 °F

    private Adjustment() {}

    /**
     * z′.
     *
     * @param reference z [N]
     * @param duration C_D [-]
     * @param wetService C_M for sideways loads [-]
     * @param temperature C_t [-]
     * @param group C_g; 1 below a quarter inch [-]
     * @param geometry C_Δ; 1 where edge, end and spacing are kept [-]
     * @param endGrain C_eg; 1 in side grain [-]
     * @return z′ [N]
     */
    public static double lateral(
            double reference,
            LoadDuration duration,
            double wetService,
            double temperature,
            double group,
            double geometry,
            double endGrain) {
        return Ranges.force("reference lateral value", reference)
                * duration.factor()
                * factor("wet service factor", wetService)
                * factor("temperature factor", temperature)
                * factor("group factor", group)
                * factor("geometry factor", geometry)
                * factor("end grain factor", endGrain);
    }

    /**
     * (w p)′ or W_H′.
     *
     * @param reference w p, or W_H [N]
     * @param duration C_D [-]
     * @param wetService C_M for withdrawal [-]
     * @param temperature C_t [-]
     * @return the adjusted value [N]
     */
    public static double axial(double reference, LoadDuration duration, double wetService, double temperature) {
        return Ranges.force("reference axial value", reference)
                * duration.factor()
                * factor("wet service factor", wetService)
                * factor("temperature factor", temperature);
    }

    /**
     * C_M for sideways loads.
     *
     * @param moistureContent highest in service [fraction]
     * @return C_M [-]
     */
    public static double wetServiceLateral(double moistureContent) {
        return isDry(moistureContent) ? 1 : WET_LATERAL;
    }

    /**
     * C_M for withdrawal of screws, and here for heads pulled through as well.
     *
     * @param moistureContent highest in service [fraction]
     * @return C_M [-]
     */
    public static double wetServiceWithdrawal(double moistureContent) {
        return isDry(moistureContent) ? 1 : WET_WITHDRAWAL;
    }

    /**
     * C_M for withdrawal of nails.
     *
     * @param moistureContent highest in service [fraction]
     * @return C_M [-]
     */
    public static double wetServiceNailWithdrawal(double moistureContent) {
        return isDry(moistureContent) ? 1 : WET_NAIL_WITHDRAWAL;
    }

    /**
     * C_t: 1, or a refusal above 38 °C.
     *
     * @param temperature of the wood in service [K]
     * @return C_t [-]
     */
    public static double temperature(double temperature) {
        Require.between("temperature of the wood", temperature, 200, WARMEST_K, "K");
        return 1;
    }

    private static boolean isDry(double moistureContent) {
        return Require.between("moisture content in service", moistureContent, 0, 1.5, "(fraction; 12 % is 0.12)")
                <= DRY_UP_TO;
    }

    private static double factor(String name, double value) {
        return Require.between(name, value, 0, 1, "(ratio)");
    }
}
