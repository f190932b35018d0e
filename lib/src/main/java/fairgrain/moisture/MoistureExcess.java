package fairgrain.moisture;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * What people, cooking and washing add to the air of a house, and the humidity that follows.
 *
 * <p>Δv = G/(n V); p_i = p_e + Δv R_v (T_i + T_e)/2
 *
 * <p><b>Source</b> {@code iso13788}, vapour pressure excess; the form was read, the standard was not. The line of
 * measured houses is from {@code kalamees-2006}.
 *
 * <p><b>Holds for</b> air that is exchanged with outdoors at equal vapour pressure. Balancing the mass of vapour in a
 * cubic metre instead gives up to 2.2 points more humidity in winter; equal pressure is what ventilation keeps. Left
 * out: moisture that walls and furniture take up and give back.
 */
public final class MoistureExcess {
    public static final Citation SOURCE = Citation.of("iso13788", "vapour pressure excess", Basis.SECOND_HAND);
    public static final Citation MEASURED_HOUSES =
            Citation.of("kalamees-2006", "101 Finnish and 27 Estonian houses, upper 10 % level", Basis.READ);
    public static final Citation MEAN_OF_HOUSES =
            Citation.of("own", "half of the upper 10 % level of the measured houses", Basis.JUDGEMENT);

    /** R_v, gas constant of water vapour, J/(kg K). */
    private static final double VAPOUR_GAS_CONSTANT = 461.5;

    private static final double KG_PER_GRAM = 1e-3;

    /** A mean house has about half the moisture excess of the dampest one in ten. */
    private static final double MEAN_SHARE = 0.5;

    private MoistureExcess() {}

    /**
     * Moisture excess from what a household gives off.
     *
     * @param production G, of vapour [kg/s]
     * @param airChanges n, changes of air in a second [1/s]
     * @param volume V, of the house or room [m³]
     * @return Δv [kg/m³]
     */
    public static double fromProduction(double production, double airChanges, double volume) {
        double g = Require.between("moisture production", production, 0, 0.01, "kg/s");
        double n = Require.between("air changes", airChanges, 1e-6, 0.01, "1/s");
        double v = Require.between("volume", volume, 1, 1e5, "m^3");
        return g / (n * v);
    }

    /**
     * Moisture excess that one house in ten goes beyond: 4 g/m³ up to 5 °C outdoors, 1.5 g/m³ from 15 °C, straight
     * between.
     *
     * @param outdoorTemperature T_e, mean of a day or a month [K]
     * @return Δv [kg/m³]
     */
    public static double dampestTenth(double outdoorTemperature) {
        double te = OutdoorTemperature.celsius(outdoorTemperature);
        return OutdoorTemperature.line(te, 5, 4.0, 15, 1.5) * KG_PER_GRAM;
    }

    /**
     * Moisture excess of an ordinary house: half of {@link #dampestTenth}.
     *
     * @param outdoorTemperature T_e, mean of a day or a month [K]
     * @return Δv [kg/m³]
     */
    public static double ordinary(double outdoorTemperature) {
        return MEAN_SHARE * dampestTenth(outdoorTemperature);
    }

    /**
     * What a moisture excess adds to the vapour pressure.
     *
     * @param excess Δv [kg/m³]
     * @param outdoorTemperature T_e [K]
     * @param indoorTemperature T_i [K]
     * @return p_i − p_e [Pa]
     */
    public static double pressureExcess(double excess, double outdoorTemperature, double indoorTemperature) {
        double dv = Require.between("moisture excess", excess, 0, 0.03, "kg/m^3");
        Require.between("outdoor temperature", outdoorTemperature, 213.15, 333.15, "K");
        Require.between("indoor temperature", indoorTemperature, 243.15, 333.15, "K");
        return dv * VAPOUR_GAS_CONSTANT * (indoorTemperature + outdoorTemperature) / 2;
    }

    /**
     * Indoor humidity.
     *
     * @param outdoorTemperature T_e [K]
     * @param outdoorHumidity h_e, as a fraction [-]
     * @param indoorTemperature T_i [K]
     * @param excess Δv [kg/m³]
     * @return h_i, as a fraction; 1 where water would condense [-]
     */
    public static double relativeHumidity(
            double outdoorTemperature, double outdoorHumidity, double indoorTemperature, double excess) {
        double p = HumidAir.vapourPressure(outdoorTemperature, outdoorHumidity)
                + pressureExcess(excess, outdoorTemperature, indoorTemperature);
        return HumidAir.relativeHumidity(indoorTemperature, p);
    }
}
