package fairgrain.bending;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * What the four pins of a loose shelf bear, and when it tips over its front pins.
 *
 * <p>over one pair of pins: R_front = W/4 + P (r − y)/(r − a), R_rear = W/4 + P (y − a)/(r − a)
 *
 * <p>tips when P (a − y) > W (B/2 − a), with P in mid-length
 *
 * <p><b>Source</b> {@code own}, statics of a shelf on four pins.
 *
 * <p>a and r are the distances of front and rear pins from the front edge, y that of the load, B the depth.
 *
 * <p><b>Holds for</b> W spread evenly and pins as far from the back as from the front. A stiff or warped shelf rocks on two pins: design each for
 * W/2 or for the load at a corner, whichever is more.
 */
public final class ShelfPins {
    public static final Citation SOURCE = Citation.of("own", "statics of a shelf on four pins", Basis.DERIVED);

    private ShelfPins() {}

    /**
     * What the front pin beneath a load bears.
     *
     * @param weight W, of the shelf and what is spread on it [N]
     * @param load P, right over one end [N]
     * @param place y, of the load from the front edge [m]
     * @param front a, of the front pins from the front edge [m]
     * @param rear r, of the rear pins from the front edge [m]
     * @return R_front, upwards [N]
     */
    public static double frontPin(double weight, double load, double place, double front, double rear) {
        double w = load("weight on the shelf", weight);
        return w / 4 + load("load", load) * (rear(front, rear) - place(place)) / (rear - front);
    }

    /**
     * What the rear pin beneath a load bears; below nothing the shelf lifts off it.
     *
     * @param weight W, of the shelf and what is spread on it [N]
     * @param load P, right over one end [N]
     * @param place y, of the load from the front edge [m]
     * @param front a, of the front pins from the front edge [m]
     * @param rear r, of the rear pins from the front edge [m]
     * @return R_rear, upwards; negative means that it lifts [N]
     */
    public static double rearPin(double weight, double load, double place, double front, double rear) {
        double w = load("weight on the shelf", weight);
        return w / 4 + load("load", load) * (place(place) - front) / (rear(front, rear) - front);
    }

    /**
     * What one pin has to be good for when a shelf rocks on two.
     *
     * @param weight W, of the shelf and what is spread on it [N]
     * @return W/2 [N]
     */
    public static double rockingPin(double weight) {
        return load("weight on the shelf", weight) / 2;
    }

    /**
     * Load in mid-length at which the shelf tips forward over both front pins.
     *
     * @param weight W, of the shelf and what is spread on it [N]
     * @param depth B, from the front edge to the back edge [m]
     * @param front a, of the front pins from the front edge [m]
     * @param place y, of the load from the front edge [m]
     * @return P; positive infinity if the load is not in front of the pins [N]
     */
    public static double tippingLoad(double weight, double depth, double front, double place) {
        double w = load("weight on the shelf", weight);
        double b = Require.between("depth of the shelf", depth, 0.02, 3, "m");
        double a = Require.between("place of the front pins", front, 0, b / 2, "m");
        double arm = a - place(place);
        return arm > 0 ? w * (b / 2 - a) / arm : Double.POSITIVE_INFINITY;
    }

    /**
     * Stress of a pin on the underside of the shelf.
     *
     * @param reaction R [N]
     * @param diameter d, of the pin [m]
     * @param bearing length of the pin under the shelf [m]
     * @return σ [Pa]
     */
    public static double bearingStress(double reaction, double diameter, double bearing) {
        double r = load("force on the pin", reaction);
        double d = Require.between("diameter of the pin", diameter, 0.001, 0.05, "m");
        return r / (d * Require.between("bearing length of the pin", bearing, 0.001, 0.2, "m"));
    }

    private static double load(String name, double value) {
        return Require.between(name, value, 0, 1e5, "N");
    }

    private static double place(double place) {
        return Require.between("place of the load", place, 0, 3, "m");
    }

    private static double rear(double front, double rear) {
        double a = Require.between("place of the front pins", front, 0, 3, "m");
        double r = Require.between("place of the rear pins", rear, 0, 3, "m");
        Require.positive("distance from front to rear pins", r - a, "m");
        return r;
    }
}
