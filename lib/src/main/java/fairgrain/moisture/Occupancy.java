package fairgrain.moisture;

/** How much moisture the people in a house bring into its air: five points of humidity below or above the normal line. */
public enum Occupancy {
    LOW(-0.05),
    NORMAL(0),
    HIGH(0.05);

    private final double humidityStep;

    Occupancy(double humidityStep) {
        this.humidityStep = humidityStep;
    }

    /**
     * What it adds to relative humidity.
     *
     * @return as a fraction [-]
     */
    public double humidityStep() {
        return humidityStep;
    }
}
