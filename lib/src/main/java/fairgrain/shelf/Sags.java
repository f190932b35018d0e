package fairgrain.shelf;

/**
 * First sags of a shelf under one set of loads, downwards [m].
 *
 * @param front of the front edge at mid-span, in the longest bay
 * @param middle halfway between the edges
 * @param back of the back edge
 * @param largest anywhere between the end supports; for two sets of loads together no more than both largest ones
 * @param tip of the overhang that sags more; 0 without one
 */
record Sags(double front, double middle, double back, double largest, double tip) {
    static final Sags NONE = new Sags(0, 0, 0, 0, 0);

    Sags plus(Sags other) {
        return new Sags(
                front + other.front,
                middle + other.middle,
                back + other.back,
                largest + other.largest,
                tip + other.tip);
    }

    Sags times(double factor) {
        return new Sags(factor * front, factor * middle, factor * back, factor * largest, factor * tip);
    }
}
