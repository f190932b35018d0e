package fairgrain.place;

import fairgrain.moisture.HailwoodHorrobin;
import fairgrain.moisture.MinMaxReading;
import fairgrain.quantity.RelativeHumidity;
import fairgrain.quantity.Temperature;

/**
 * Air of a month as a board feels it.
 *
 * @param low the dry side of what a board feels
 * @param high the damp side; the same as the dry side where the mean of the month is known
 */
public record FeltAir(Temperature temperature, RelativeHumidity low, RelativeHumidity high) {
    public FeltAir {
        if (!(low.fraction() <= high.fraction())) {
            throw new IllegalArgumentException("the damp side of a month must not be drier than its dry side");
        }
    }

    /** Air of which the means of the month are known. */
    public static FeltAir mean(Temperature temperature, RelativeHumidity humidity) {
        return new FeltAir(temperature, humidity, humidity);
    }

    /** Air of which a hygrometer kept the lowest and highest humidity: these are drawn in toward their middle. */
    public static FeltAir minMax(Temperature temperature, RelativeHumidity lowest, RelativeHumidity highest) {
        return new FeltAir(
                temperature,
                new RelativeHumidity(MinMaxReading.low(lowest.fraction(), highest.fraction())),
                new RelativeHumidity(MinMaxReading.high(lowest.fraction(), highest.fraction())));
    }

    /** Whether lowest and highest readings stand behind it. */
    boolean isDrawnIn() {
        return low.fraction() < high.fraction();
    }

    /** What wood settles at, with such a standard deviation of humidity. */
    SettledMonth settled(double humiditySd) {
        double middle = (low.fraction() + high.fraction()) / 2;
        double slope = HailwoodHorrobin.slope(temperature.kelvin(), Math.min(middle, SettledMonth.STEEPEST_AT));
        return new SettledMonth(
                RoomAir.settled(temperature, low),
                RoomAir.settled(temperature, new RelativeHumidity(middle)),
                RoomAir.settled(temperature, high),
                humiditySd * slope);
    }
}
