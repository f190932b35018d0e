package fairgrain.moisture;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Air pressure by height above the sea.
 *
 * <p>P = 101325 (1 − 2.25577·10⁻⁵ z)^5.2559
 *
 * <p><b>Source</b> {@code ashrae-f2017}, chapter 1, standard atmosphere; read in program sources that quote it.
 *
 * <p><b>Holds for</b> −500 to 5000 m. Left out: weather.
 */
public final class StandardAtmosphere {
    public static final Citation SOURCE =
            Citation.of("ashrae-f2017", "chapter 1, standard atmosphere", Basis.SECOND_HAND);

    private StandardAtmosphere() {}

    /**
     * Standard air pressure.
     *
     * @param height z, above the sea [m]
     * @return P [Pa]
     */
    public static double pressure(double height) {
        double z = Require.between("height above the sea", height, -500, 5000, "m");
        return 101325 * Math.pow(1 - 2.25577e-5 * z, 5.2559);
    }
}
