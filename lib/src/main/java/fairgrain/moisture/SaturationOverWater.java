package fairgrain.moisture;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Vapour pressure over water, also below freezing, for weather reports that state humidity over water all the year.
 *
 * <p>p = 610.94 exp(17.625 T/(T + 243.04)), T in °C
 *
 * <p><b>Source</b> {@code alduchov-1996}, Magnus form over water.
 *
 * <p><b>Holds for</b> −40 to 50 °C, about 0.2 % low at 20 °C. Not for ice: at −10 °C it stands 10 % above the pressure
 * over ice.
 */
public final class SaturationOverWater {
    public static final Citation SOURCE = Citation.of("alduchov-1996", "Magnus form over water", Basis.READ);

    private SaturationOverWater() {}

    /**
     * Saturation vapour pressure over water.
     *
     * @param temperature T [K]
     * @return p [Pa]
     */
    public static double pressure(double temperature) {
        Require.between("temperature", temperature, 233.15, 323.15, "K");
        double t = Celsius.of(temperature); // the fit takes °C
        return 610.94 * Math.exp(17.625 * t / (t + 243.04));
    }

    /**
     * Vapour pressure of outdoor air from a report that states humidity over water.
     *
     * @param temperature T [K]
     * @param reportedHumidity h, over water, as a fraction [-]
     * @return p [Pa]
     */
    public static double vapourPressure(double temperature, double reportedHumidity) {
        double h = Require.between("relative humidity", reportedHumidity, 0, 1, "(fraction; 45 % is 0.45)");
        return h * pressure(temperature);
    }
}
