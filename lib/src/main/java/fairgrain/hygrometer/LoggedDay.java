package fairgrain.hygrometer;

import java.time.LocalDate;

/**
 * Means of one day, over the time between its readings.
 *
 * @param hours how much of it lies between readings
 * @param temperature [K]
 * @param humidity as a fraction [-]
 * @param moisture what wood settles at, mean of all readings, as a fraction [-]
 */
public record LoggedDay(LocalDate date, double hours, double temperature, double humidity, double moisture) {
    private static final double ENOUGH_HOURS = 18;

    /** Whether enough of the day is known to speak of its mean. */
    public boolean isCovered() {
        return hours >= ENOUGH_HOURS;
    }
}
