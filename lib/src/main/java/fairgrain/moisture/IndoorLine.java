package fairgrain.moisture;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * Indoor temperature and humidity from the outdoor temperature alone, in a heated house that is not cooled.
 *
 * <p>T_i = 20 + 0.5 (T_e − 10) kept within 20 and 25 °C; h = 45 + T_e kept within 35 and 65 %, five points less or more
 * with low or high occupancy; T_e in °C, the mean of a day or a month
 *
 * <p><b>Source</b> {@code iso13788}, Annex A.1, continental climate; read in a program that follows it, not in the
 * standard. With low occupancy it is the normal line of {@code en15026}, Annex C.
 *
 * <p><b>Holds for</b> continental climates. It is meant for damage by damp, so it lies on the damp side in winter: for
 * the dry end of the year of a well-aired or cold-climate house use {@link MoistureExcess}. Left out: cooling, see
 * {@link HumidityCeiling}.
 */
public final class IndoorLine {
    public static final Citation SOURCE = Citation.of("iso13788", "Annex A.1", Basis.SECOND_HAND);

    private IndoorLine() {}

    /**
     * Indoor temperature.
     *
     * @param outdoorTemperature T_e, mean of a day or a month [K]
     * @return T_i [K]
     */
    public static double temperature(double outdoorTemperature) {
        double te = OutdoorTemperature.celsius(outdoorTemperature);
        return Celsius.toKelvin(within(20, 20 + 0.5 * (te - 10), 25));
    }

    /**
     * Indoor relative humidity.
     *
     * @param outdoorTemperature T_e, mean of a day or a month [K]
     * @param occupancy how much moisture the people bring [-]
     * @return h, as a fraction [-]
     */
    public static double relativeHumidity(double outdoorTemperature, Occupancy occupancy) {
        double te = OutdoorTemperature.celsius(outdoorTemperature);
        return within(35, 45 + te, 65) / 100 + occupancy.humidityStep();
    }

    private static double within(double least, double value, double most) {
        return Math.max(least, Math.min(value, most));
    }
}
