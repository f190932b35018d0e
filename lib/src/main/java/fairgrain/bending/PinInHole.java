package fairgrain.bending;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * A pin in a blind hole, pushed sideways where it stands out: the least of what the wood and the pin bear.
 *
 * <p>stiff pin: F = f_h d [ √((2e + l)² + l²) − (2e + l) ]
 *
 * <p>bending pin: F (e + F/(2 f_h d)) = f_y d³/6
 *
 * <p><b>Source</b> {@code own}, pin in a hole from plastic embedment on both sides of the pin.
 *
 * <p><b>Holds for</b> a pin that fits its hole, and wood that crushes before it splits: hole centre four pin diameters or more from an
 * edge, seven from an end. It gives the strength; what may be used of it is for the caller to say.
 */
public final class PinInHole {
    public static final Citation SOURCE =
            Citation.of("own", "pin in a hole from plastic embedment on both sides of the pin", Basis.DERIVED);

    private PinInHole() {}

    /**
     * Force at which the wood gives under a pin too stiff to bend.
     *
     * @param embedment f_h, strength of the wood under the pin [Pa]
     * @param diameter d, of the pin [m]
     * @param depth l, of the pin in the hole [m]
     * @param arm e, from the mouth of the hole to the load; negative where the load acts within the hole [m]
     * @return F [N]
     */
    public static double stiffPin(double embedment, double diameter, double depth, double arm) {
        double f = embedment(embedment);
        double d = diameter(diameter);
        double l = Require.between("depth of the pin in the hole", depth, 0.001, 1, "m");
        double e = Require.between("arm of the load", arm, -l / 2, 1, "m");
        double reach = 2 * e + l;
        return f * d * (Math.hypot(reach, l) - reach);
    }

    /**
     * Force at which the pin bends over in a hole deep enough to hold it.
     *
     * @param embedment f_h, strength of the wood under the pin [Pa]
     * @param diameter d, of the pin [m]
     * @param arm e, from the mouth of the hole to the load [m]
     * @param yield f_y, yield stress of the pin [Pa]
     * @return F [N]
     */
    public static double bendingPin(double embedment, double diameter, double arm, double yield) {
        double f = embedment(embedment);
        double d = diameter(diameter);
        double e = Require.between("arm of the load", arm, 0, 1, "m");
        double moment = Require.between("yield stress of the pin", yield, 1e6, 2e9, "Pa") * d * d * d / 6;
        return f * d * (Math.sqrt(e * e + 2 * moment / (f * d)) - e);
    }

    /**
     * Strength of the pin in its hole.
     *
     * @param embedment f_h, strength of the wood under the pin [Pa]
     * @param diameter d, of the pin [m]
     * @param depth l, of the pin in the hole [m]
     * @param arm e, from the mouth of the hole to the load [m]
     * @param yield f_y, yield stress of the pin [Pa]
     * @return F, the lesser of the two [N]
     */
    public static double strength(double embedment, double diameter, double depth, double arm, double yield) {
        return Math.min(stiffPin(embedment, diameter, depth, arm), bendingPin(embedment, diameter, arm, yield));
    }

    private static double embedment(double embedment) {
        return Require.between("embedment strength", embedment, 1e5, 1e9, "Pa");
    }

    private static double diameter(double diameter) {
        return Require.between("diameter of the pin", diameter, 0.001, 0.05, "m");
    }
}
