package fairgrain.moisture;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * The most that air conditioning or a dehumidifier lets humidity rise to.
 *
 * <p>h = min(h, ceiling)
 *
 * <p><b>Source</b> {@code own}, humidity ceiling of a cooled house.
 *
 * <p><b>Holds for</b> houses that are cooled all summer. A ceiling of 55 to 60 % brings a reckoned summer down to what
 * interiors in such places are known for; 60 is the safe side of the two. A house that is shut up warm and damp has no
 * ceiling.
 */
public final class HumidityCeiling {
    public static final Citation SOURCE = Citation.of("own", "humidity ceiling of a cooled house", Basis.JUDGEMENT);

    /** As a fraction. */
    public static final double DEFAULT = 0.60;

    private HumidityCeiling() {}

    /**
     * Humidity in a cooled house.
     *
     * @param relativeHumidity h without cooling, as a fraction [-]
     * @param ceiling highest humidity that the cooling allows, as a fraction [-]
     * @return h, as a fraction [-]
     */
    public static double cooled(double relativeHumidity, double ceiling) {
        double h = Require.between("relative humidity", relativeHumidity, 0, 1, "(fraction; 45 % is 0.45)");
        return Math.min(h, Require.between("humidity ceiling", ceiling, 0.3, 1, "(fraction; 60 % is 0.60)"));
    }
}
