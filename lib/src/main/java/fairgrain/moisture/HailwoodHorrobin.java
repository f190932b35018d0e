package fairgrain.moisture;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Equilibrium moisture content: what wood settles at when the air stays as it is.
 *
 * <p>M = (1800/W) [K h/(1 − K h) + (K₁ K h + 2 K₁ K₂ K² h²)/(1 + K₁ K h + K₁ K₂ K² h²)], M in %, with W, K, K₁ and K₂
 * quadratics in the temperature in °C
 *
 * <p><b>Source</b> {@code gtr190}, equation 4-5. The Celsius coefficients were lost from the copy that was read and
 * come second-hand through {@code fpl-rn-0268}; all 344 cells of Table 4-2 that were read follow from them.
 *
 * <p><b>Holds for</b> wood of any species for most practical purposes, give or take 1 % moisture content from wood to
 * wood; oily tropical woods lie lower. Table 4-2 starts at −1.1 °C: see {@link #extrapolates}. Left out: hysteresis.
 * Wood that is drying sits higher than wood that is wetting, and a swing within a year follows a flatter line, so a
 * range found here is a little too wide.
 */
public final class HailwoodHorrobin {
    public static final Citation SOURCE = Citation.of("gtr190", "equation 4-5", Basis.READ);
    public static final Citation COEFFICIENTS =
            Citation.of("fpl-rn-0268", "coefficients for degrees Celsius", Basis.SECOND_HAND);

    /** What one wood differs from another at the same air, as a fraction. */
    public static final double WOOD_TO_WOOD = 0.01;

    public static final Citation WOOD_TO_WOOD_SOURCE = Citation.of("own", "wood-to-wood spread", Basis.MEMORY);

    /** −30 °C; below it K₂ nears zero and the fit loses its sense. */
    private static final double COLDEST = 243.15;

    /** 100 °C. */
    private static final double HOTTEST = 373.15;

    private static final double TABLE_STARTS = Celsius.toKelvin(-1.1);

    private HailwoodHorrobin() {}

    /**
     * Equilibrium moisture content.
     *
     * @param temperature T, of the air [K]
     * @param relativeHumidity h, as a fraction [-]
     * @return M, fraction of the oven-dry mass [-]
     */
    public static double moisture(double temperature, double relativeHumidity) {
        Hydrates fit = Hydrates.at(temperature);
        double kh = fit.k * relativeHumidity(relativeHumidity);
        double dissolved = kh / (1 - kh);
        double hydrated = (fit.k1 * kh + 2 * fit.k1 * fit.k2 * kh * kh) / (1 + fit.k1 * kh + fit.k1 * fit.k2 * kh * kh);
        return 1800 / fit.w * (dissolved + hydrated) / 100;
    }

    /**
     * Slope of the sorption curve.
     *
     * @param temperature T, of the air [K]
     * @param relativeHumidity h, as a fraction [-]
     * @return dM/dh, fraction of moisture for a humidity of 1 [-]
     */
    public static double slope(double temperature, double relativeHumidity) {
        Hydrates fit = Hydrates.at(temperature);
        double kh = fit.k * relativeHumidity(relativeHumidity);
        double divisor = 1 + fit.k1 * kh + fit.k1 * fit.k2 * kh * kh;
        double dissolved = fit.k / ((1 - kh) * (1 - kh));
        double hydrated = fit.k * fit.k1 * (1 + 4 * fit.k2 * kh + fit.k1 * fit.k2 * kh * kh) / (divisor * divisor);
        return 1800 / fit.w * (dissolved + hydrated) / 100;
    }

    /**
     * The humidity at which wood neither gains nor loses.
     *
     * @param temperature T, of the air [K]
     * @param moisture M, fraction of the oven-dry mass [-]
     * @return h, as a fraction [-]
     */
    public static double relativeHumidity(double temperature, double moisture) {
        double wettest = moisture(temperature, 1);
        double m = Require.between("moisture content", moisture, 0, wettest, "(fraction; 8 % is 0.08)");
        // M rises strictly with h, so the humidities 0 and 1 always bracket the answer
        return new BrentSolver(1e-15, 1e-14, 1e-17).solve(200, h -> moisture(temperature, h) - m, 0, 1);
    }

    /**
     * Whether the printed table does not reach this far down.
     *
     * @param temperature T, of the air [K]
     * @return true below −1.1 °C [-]
     */
    public static boolean extrapolates(double temperature) {
        return temperature(temperature) < TABLE_STARTS - 1e-9;
    }

    private static double temperature(double temperature) {
        return Require.between("temperature", temperature, COLDEST, HOTTEST, "K");
    }

    private static double relativeHumidity(double relativeHumidity) {
        return Require.between("relative humidity", relativeHumidity, 0, 1, "(fraction; 45 % is 0.45)");
    }

    /** The four quadratics; T in °C. */
    private record Hydrates(double w, double k, double k1, double k2) {
        static Hydrates at(double temperature) {
            double t = Celsius.of(temperature(temperature));
            return new Hydrates(
                    349 + 1.29 * t + 0.0135 * t * t,
                    0.805 + 0.000736 * t - 0.00000273 * t * t,
                    6.27 - 0.00938 * t - 0.000303 * t * t,
                    1.91 + 0.0407 * t - 0.000293 * t * t);
        }
    }
}
