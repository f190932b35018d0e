package fairgrain.place;

import fairgrain.quantity.Estimate;

/**
 * What wood settles at in the air of one month, as fractions.
 *
 * @param low the dry side of what a board feels
 * @param middle at the mean of the month
 * @param high the damp side
 * @param sd standard deviation of each
 */
record SettledMonth(double low, double middle, double high, double sd) {
    /** The sorption curve bends up sharply beyond this humidity; a spread is reckoned no steeper. */
    static final double STEEPEST_AT = 0.95;

    static SettledMonth mean(double moisture, double sd) {
        return new SettledMonth(moisture, moisture, moisture, sd);
    }

    SettledMonth spreadWider(double moreSd) {
        return new SettledMonth(low, middle, high, Math.hypot(sd, moreSd));
    }

    Estimate estimate() {
        return new Estimate(middle, sd);
    }
}
