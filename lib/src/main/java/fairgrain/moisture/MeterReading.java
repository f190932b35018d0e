package fairgrain.moisture;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * What to make of a moisture meter's reading.
 *
 * <p>M = M_read + 0.5 % (T_cal − T)/5.6 K
 *
 * <p><b>Source</b> {@code gtr190}, p. 13-3.
 *
 * <p><b>Holds for</b> readings already corrected for the species (pin meter) or the specific gravity (surface meter).
 * Above 30 % a reading says no more than "wet".
 */
public final class MeterReading {
    public static final Citation SOURCE = Citation.of("gtr190", "p. 13-3", Basis.READ);

    /** The mean of many readings on a uniform batch is as good as this, as a fraction. */
    public static final double BATCH_UNCERTAINTY = 0.01;

    /** One reading is as good as this, as a fraction. */
    public static final double SINGLE_UNCERTAINTY = 0.02;

    public static final Citation SINGLE_UNCERTAINTY_SOURCE =
            Citation.of("own", "uncertainty of one meter reading", Basis.MEMORY);

    private static final double PERCENT_PER_STEP = 0.5;
    private static final double STEP_KELVIN = 5.6;

    private MeterReading() {}

    /** What a meter measures by, and the range in which it can be relied on. */
    public enum Kind {
        /** Electrical resistance between two pins. */
        PIN(0.06),
        /** The electric field under a plate; leaves no holes. */
        SURFACE(0.04);

        private static final double MOST = 0.30;

        private final double least;

        Kind(double least) {
            this.least = least;
        }

        /**
         * Whether a reading lies where such meters can be relied on.
         *
         * @param moisture M, fraction of the oven-dry mass [-]
         * @return true from 6 (pin) or 4 (surface) to 30 % [-]
         */
        public boolean reliable(double moisture) {
            double m = reading(moisture);
            return m >= least && m <= MOST;
        }
    }

    /**
     * Reading corrected for the wood's temperature: more when the wood is colder than the meter was calibrated for.
     *
     * @param reading M_read, fraction of the oven-dry mass [-]
     * @param woodTemperature T [K]
     * @param calibrationTemperature T_cal [K]
     * @return M, fraction of the oven-dry mass, not below 0 [-]
     */
    public static double temperatureCorrected(double reading, double woodTemperature, double calibrationTemperature) {
        double m = reading(reading);
        double t = Require.between("temperature of the wood", woodTemperature, 243.15, 373.15, "K");
        double calibration = Require.between("calibration temperature", calibrationTemperature, 273.15, 323.15, "K");
        return Math.max(0, m + PERCENT_PER_STEP / 100 * (calibration - t) / STEP_KELVIN);
    }

    private static double reading(double reading) {
        return Require.between("meter reading", reading, 0, 0.6, "(fraction; 8 % is 0.08)");
    }
}
