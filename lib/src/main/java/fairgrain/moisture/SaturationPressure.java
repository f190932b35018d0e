package fairgrain.moisture;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Pressure of water vapour over ice or water: the most that air can hold.
 *
 * <p>ice: ln p = C₁/T + C₂ + C₃ T + C₄ T² + C₅ T³ + C₆ T⁴ + C₇ ln T
 *
 * <p>water: ln p = C₈/T + C₉ + C₁₀ T + C₁₁ T² + C₁₂ T³ + C₁₃ ln T
 *
 * <p><b>Source</b> {@code ashrae-f2017}, chapter 1, equations 5 and 6 (Hyland and Wexler); read in program sources that
 * quote them.
 *
 * <p><b>Holds for</b> −100 to 0 °C over ice and 0 to 200 °C over water. Many weather services state humidity over water
 * below freezing too: see {@link SaturationOverWater}.
 */
public final class SaturationPressure {
    public static final Citation SOURCE =
            Citation.of("ashrae-f2017", "chapter 1, equations 5 and 6", Basis.SECOND_HAND);

    private static final double ICE_TO_WATER = Celsius.toKelvin(0.01);

    private SaturationPressure() {}

    /**
     * Saturation vapour pressure, over ice below 0.01 °C.
     *
     * @param temperature T [K]
     * @return p [Pa]
     */
    public static double pressure(double temperature) {
        double t = Require.between("temperature", temperature, 173.15, 473.15, "K");
        return Math.exp(t < ICE_TO_WATER ? logOverIce(t) : logOverWater(t));
    }

    private static double logOverIce(double t) {
        return -5674.5359 / t
                + 6.3925247
                - 9.677843e-3 * t
                + 6.2215701e-7 * t * t
                + 2.0747825e-9 * t * t * t
                - 9.484024e-13 * t * t * t * t
                + 4.1635019 * Math.log(t);
    }

    private static double logOverWater(double t) {
        return -5800.2206 / t
                + 1.3914993
                - 4.8640239e-2 * t
                + 4.1764768e-5 * t * t
                - 1.4452093e-8 * t * t * t
                + 6.5459673 * Math.log(t);
    }
}
