package fairgrain.shelf;

/** How far the figures of a shelf scatter. */
final class Scatter {
    private Scatter() {}

    /** A factor whose logarithm spreads normally, so that it never turns negative. */
    static double factor(double cv, double deviations) {
        return Math.exp(ofLogarithm(cv) * deviations);
    }

    /** Standard deviation of the logarithm. */
    static double ofLogarithm(double cv) {
        return Math.sqrt(Math.log1p(cv * cv));
    }
}
