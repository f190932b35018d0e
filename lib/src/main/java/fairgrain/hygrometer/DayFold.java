package fairgrain.hygrometer;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Folds readings into days as they come. Between two readings the air is taken to change evenly, so that a mean is one of time
 * and not of rows; longer stretches without a reading are left open.
 */
final class DayFold {
    /** Wood hardly notices what happens within so short a time. */
    static final long LONGEST_BRIDGED = 6 * 3600; // s

    private static final long DAY = 86_400; // s

    private final List<LoggedDay> days = new ArrayList<>();

    private boolean started;
    private long lastTime;
    private double lastTemperature;
    private double lastHumidity;
    private double lastMoisture;

    private long day;
    private double seconds;
    private double temperature; // times seconds, as those below
    private double humidity;
    private double moisture;

    /**
     * Adds a reading later than all before.
     *
     * @return how long nothing is known before it; 0 if it follows close enough [s]
     */
    long add(long time, double nextTemperature, double nextHumidity, double nextMoisture) {
        long apart = started ? time - lastTime : 0;
        boolean bridged = started && apart <= LONGEST_BRIDGED;
        if (bridged) {
            bridge(time, nextTemperature, nextHumidity, nextMoisture);
        }
        started = true;
        lastTime = time;
        lastTemperature = nextTemperature;
        lastHumidity = nextHumidity;
        lastMoisture = nextMoisture;
        return bridged ? 0 : apart;
    }

    private void bridge(long time, double nextTemperature, double nextHumidity, double nextMoisture) {
        long midnight = (Math.floorDiv(lastTime, DAY) + 1) * DAY;
        if (time <= midnight) {
            stretch(lastTime, time, nextTemperature, nextHumidity, nextMoisture);
            return;
        }
        double share = (double) (midnight - lastTime) / (time - lastTime);
        double t = lastTemperature + share * (nextTemperature - lastTemperature);
        double h = lastHumidity + share * (nextHumidity - lastHumidity);
        double m = lastMoisture + share * (nextMoisture - lastMoisture);
        stretch(lastTime, midnight, t, h, m);
        lastTemperature = t;
        lastHumidity = h;
        lastMoisture = m;
        stretch(midnight, time, nextTemperature, nextHumidity, nextMoisture);
    }

    /** From the last reading to this one, both on the same day. */
    private void stretch(long from, long to, double nextTemperature, double nextHumidity, double nextMoisture) {
        long of = Math.floorDiv(from, DAY);
        if (of != day) {
            closeDay();
            day = of;
        }
        double length = to - from;
        seconds += length;
        temperature += length * (lastTemperature + nextTemperature) / 2;
        humidity += length * (lastHumidity + nextHumidity) / 2;
        moisture += length * (lastMoisture + nextMoisture) / 2;
    }

    private void closeDay() {
        if (seconds > 0) {
            days.add(new LoggedDay(
                    LocalDate.ofEpochDay(day),
                    seconds / 3600,
                    temperature / seconds,
                    humidity / seconds,
                    moisture / seconds));
        }
        seconds = 0;
        temperature = 0;
        humidity = 0;
        moisture = 0;
    }

    boolean isStarted() {
        return started;
    }

    /** Of the last reading. */
    long lastTime() {
        return lastTime;
    }

    boolean isUnchanged(double nextTemperature, double nextHumidity) {
        return started && nextTemperature == lastTemperature && nextHumidity == lastHumidity;
    }

    /** All days of which anything is known. */
    List<LoggedDay> days() {
        closeDay();
        return List.copyOf(days);
    }
}
