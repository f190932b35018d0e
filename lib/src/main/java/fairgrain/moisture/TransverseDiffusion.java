package fairgrain.moisture;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * How fast moisture spreads through wood across the grain.
 *
 * <p>D = D_b/((1 − v)(1 − √v)), D_b = 7·10⁻⁶ exp(−(38500 − 290 M)/(R T)) m²/s, v = 1 − G (0.667 + 0.01 M), M in %
 *
 * <p><b>Source</b> {@code siau}, transverse diffusion through cell walls and lumens, recalled.
 *
 * <p><b>Holds for</b> below fibre saturation. Measurements of one wood differ by a factor of two to three: carry
 * {@link #BAND}. The anchored value keeps the way Siau's form goes with density, moisture and temperature, and sets its
 * level to 10⁻¹⁰ m²/s at G 0.45, 20 °C and 10 %, about twice Siau's, where trials of finishes and of drying put it.
 * Left out: radial against tangential; along the grain it is 12 to 15 times as much.
 */
public final class TransverseDiffusion {
    public static final Citation SOURCE =
            Citation.of("siau", "transverse diffusion through cell walls and lumens", Basis.MEMORY);
    public static final Citation ANCHOR = Citation.of("own", "level of the transverse diffusivity", Basis.JUDGEMENT);

    /** Divide and multiply by this for the slow and the fast end of what is likely. */
    public static final double BAND = 2;

    /** m²/s, at the conditions below. */
    private static final double ANCHOR_DIFFUSIVITY = 1e-10;

    private static final double ANCHOR_SPECIFIC_GRAVITY = 0.45;
    private static final double ANCHOR_MOISTURE = 0.10;
    private static final double ANCHOR_TEMPERATURE = Celsius.toKelvin(20);

    /** R, J/(mol K), by definition of the mole and the kelvin. */
    private static final double GAS_CONSTANT = 8.314462618;

    /** What lifts Siau's form to the anchor. */
    private static final double LEVEL =
            ANCHOR_DIFFUSIVITY / siau(ANCHOR_SPECIFIC_GRAVITY, ANCHOR_MOISTURE, ANCHOR_TEMPERATURE);

    private TransverseDiffusion() {}

    /**
     * Siau's form as it stands.
     *
     * @param specificGravity G, oven-dry mass over volume at M, relative to water [-]
     * @param moisture M, fraction of the oven-dry mass [-]
     * @param temperature T [K]
     * @return D [m²/s]
     */
    public static double siau(double specificGravity, double moisture, double temperature) {
        double g = Require.between("specific gravity", specificGravity, 0.08, 1.4, "(oven-dry mass against water)");
        double m = 100 * Require.between("moisture content", moisture, 0, 0.4, "(fraction; 8 % is 0.08)");
        double t = Require.between("temperature", temperature, 243.15, 373.15, "K");
        double cellWall = 7e-6 * Math.exp(-(38500 - 290 * m) / (GAS_CONSTANT * t));
        // the heaviest woods, swollen, have no lumens left
        double lumens = Math.max(0, 1 - g * (0.667 + 0.01 * m));
        return cellWall / ((1 - lumens) * (1 - Math.sqrt(lumens)));
    }

    /**
     * Siau's form, set to the anchored level.
     *
     * @param specificGravity G, oven-dry mass over volume at M, relative to water [-]
     * @param moisture M, fraction of the oven-dry mass [-]
     * @param temperature T [K]
     * @return D [m²/s]
     */
    public static double diffusivity(double specificGravity, double moisture, double temperature) {
        return LEVEL * siau(specificGravity, moisture, temperature);
    }

    /**
     * The anchored value as it goes with moisture, for a {@link SlabSimulation}.
     *
     * @param specificGravity G, oven-dry mass over volume, relative to water [-]
     * @param temperature T [K]
     * @return D by moisture content [m²/s]
     */
    public static Diffusivity byMoisture(double specificGravity, double temperature) {
        diffusivity(specificGravity, ANCHOR_MOISTURE, temperature); // refuses now what it would refuse later
        return moisture -> diffusivity(specificGravity, moisture, temperature);
    }

    /**
     * One diffusivity for a wood indoors: the anchored value at 20 °C and 10 % moisture content.
     *
     * @param specificGravity G, oven-dry mass over volume at about 10 % [-]
     * @return D [m²/s]
     */
    public static double indoors(double specificGravity) {
        return diffusivity(specificGravity, ANCHOR_MOISTURE, ANCHOR_TEMPERATURE);
    }
}
