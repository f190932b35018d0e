package fairgrain.moisture;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Humid air: its vapour pressure, its humidity ratio, and what becomes of its humidity when it is warmed.
 *
 * <p>p = h p_s(T), W = 0.621945 p/(P − p); warmed with no moisture gained, p and W stay: h_i = h_e p_s(T_e)/p_s(T_i)
 *
 * <p><b>Source</b> {@code ashrae-f2017}, chapter 1, humidity ratio; read in program sources that quote it.
 *
 * <p><b>Holds for</b> air as an ideal gas: the saturated humidity ratio comes out 0.4 % below the printed table. Below
 * freezing, humidity is over ice. What air cannot hold condenses, so no humidity here is above 1.
 */
public final class HumidAir {
    public static final Citation SOURCE = Citation.of("ashrae-f2017", "chapter 1, humidity ratio", Basis.SECOND_HAND);

    /** Mass of a mole of water over that of a mole of dry air. */
    private static final double MASS_RATIO = 0.621945;

    private HumidAir() {}

    /**
     * Pressure of the water vapour in the air.
     *
     * @param temperature T, of the air [K]
     * @param relativeHumidity h, as a fraction [-]
     * @return p [Pa]
     */
    public static double vapourPressure(double temperature, double relativeHumidity) {
        double h = Require.between("relative humidity", relativeHumidity, 0, 1, "(fraction; 45 % is 0.45)");
        return h * SaturationPressure.pressure(temperature);
    }

    /**
     * Relative humidity from the vapour pressure.
     *
     * @param temperature T, of the air [K]
     * @param vapourPressure p [Pa]
     * @return h, as a fraction; 1 where water would condense [-]
     */
    public static double relativeHumidity(double temperature, double vapourPressure) {
        double p = Require.between("vapour pressure", vapourPressure, 0, 1e5, "Pa");
        return Math.min(1, p / SaturationPressure.pressure(temperature));
    }

    /**
     * Humidity of outdoor air once it has taken the indoor temperature and gained no moisture.
     *
     * @param outdoorTemperature T_e [K]
     * @param outdoorHumidity h_e, as a fraction [-]
     * @param indoorTemperature T_i [K]
     * @return h_i, as a fraction; 1 where water would condense [-]
     */
    public static double broughtIn(double outdoorTemperature, double outdoorHumidity, double indoorTemperature) {
        return relativeHumidity(indoorTemperature, vapourPressure(outdoorTemperature, outdoorHumidity));
    }

    /**
     * Mass of vapour carried by a mass of dry air.
     *
     * @param vapourPressure p [Pa]
     * @param airPressure P, of the whole air [Pa]
     * @return W [kg/kg]
     */
    public static double humidityRatio(double vapourPressure, double airPressure) {
        double total = airPressure(airPressure);
        double p = Require.between("vapour pressure", vapourPressure, 0, total / 2, "Pa");
        return MASS_RATIO * p / (total - p);
    }

    /**
     * Vapour pressure from the humidity ratio.
     *
     * @param humidityRatio W [kg/kg]
     * @param airPressure P, of the whole air [Pa]
     * @return p [Pa]
     */
    public static double vapourPressureOf(double humidityRatio, double airPressure) {
        double w = Require.between("humidity ratio", humidityRatio, 0, 0.6, "kg/kg");
        return airPressure(airPressure) * w / (MASS_RATIO + w);
    }

    private static double airPressure(double airPressure) {
        return Require.between("air pressure", airPressure, 3e4, 1.2e5, "Pa");
    }
}
