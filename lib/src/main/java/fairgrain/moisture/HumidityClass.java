package fairgrain.moisture;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * The most that vapour pressure indoors lies above that outdoors, by humidity class 1 (dry stores) to 5 (laundries,
 * pools).
 *
 * <p>p_i − p_e is level up to 0 °C outdoors, falls straight to 20 °C, and is level from there
 *
 * <p><b>Source</b> {@code iso13788}, Annex A.2, maritime climate; read in a program that follows it, not in the
 * standard. The cold value of class 2 is from memory: the program has 640 Pa, which breaks the even steps of the
 * others.
 *
 * <p><b>Holds for</b> the upper limit of each class: a damp house, not an ordinary one.
 */
public final class HumidityClass {
    public static final Citation SOURCE = Citation.of("iso13788", "Annex A.2", Basis.SECOND_HAND);
    public static final Citation CLASS_2 = Citation.of("iso13788", "Annex A.2, class 2 at 0 °C", Basis.MEMORY);

    /** Pa, at 0 °C and colder and at 20 °C and warmer. */
    private static final double[][] LIMITS_PA = {{270, 100}, {540, 100}, {810, 100}, {1080, 100}, {1360, 200}};

    private HumidityClass() {}

    /**
     * Upper limit of the vapour pressure excess.
     *
     * @param humidityClass 1 to 5 [-]
     * @param outdoorTemperature T_e, mean of a month [K]
     * @return p_i − p_e [Pa]
     */
    public static double pressureExcess(int humidityClass, double outdoorTemperature) {
        Require.between("humidity class", humidityClass, 1, LIMITS_PA.length, "(1 dry to 5 wet)");
        double te = OutdoorTemperature.celsius(outdoorTemperature);
        double[] limits = LIMITS_PA[humidityClass - 1];
        return OutdoorTemperature.line(te, 0, limits[0], 20, limits[1]);
    }
}
