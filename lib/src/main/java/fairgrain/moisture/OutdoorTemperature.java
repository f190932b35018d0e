package fairgrain.moisture;

import fairgrain.quantity.Require;

/** The guard that every line drawn over the outdoor temperature shares. */
final class OutdoorTemperature {
    private OutdoorTemperature() {}

    /** In °C, which all those lines take. */
    static double celsius(double kelvin) {
        Require.between("outdoor temperature", kelvin, 213.15, 333.15, "K");
        return Celsius.of(kelvin);
    }

    /** A line that is level up to {@code start}, level from {@code end}, and straight between. */
    static double line(double celsius, double start, double atStart, double end, double atEnd) {
        double share = Math.max(0, Math.min(1, (celsius - start) / (end - start)));
        return atStart + (atEnd - atStart) * share;
    }
}
