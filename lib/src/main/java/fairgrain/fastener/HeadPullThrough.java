package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Reference load at which a round head is pulled through the member under it, for a load of ten years.
 *
 * <p>t ≤ 2.5 D_H: W_H = 690 π D_H G² t; t &gt; 2.5 D_H: W_H = 1725 π D_H² G², in lb with D_H and t in inches
 *
 * <p><b>Source</b> {@code nds2018}, equations 12.2-6a and 12.2-6b.
 *
 * <p><b>Holds for</b> round heads of 0.234 to 0.500 in on 5/16 to 1-1/2 in of wood (the printed table), G of the member
 * under the head on oven-dry mass and volume; plywood 0.50 where it is a structural or marine grade, else 0.42.
 * {@link #isInStatedRange} says whether a case lies within. A larger head or a thicker member may be entered at the end
 * of the range, which is safe; a thinner member or a smaller head is outside, and no figure is known. Left out:
 * countersunk heads. {@link #thicknessUnderCountersink} takes off the wood they cut away, but the rule was not written
 * for them; print a caution, and do not judge a thin back by it. A hex head needs a washer.
 */
public final class HeadPullThrough {
    public static final Citation SOURCE = Citation.of("nds2018", "equations 12.2-6a and 12.2-6b", Basis.SECOND_HAND);

    private static final double THIN = 690; // psi
    private static final double THICK = 1725; // psi
    private static final double LEAST_HEAD_IN = 0.234;
    private static final double MOST_HEAD_IN = 0.500;
    private static final double LEAST_THICKNESS_IN = 5.0 / 16;
    private static final double MOST_THICKNESS_IN = 1.5;

    private HeadPullThrough() {}

    /**
     * The pull-through value.
     *
     * @param specificGravity G of the member under the head, oven-dry mass on oven-dry volume [-]
     * @param headDiameter D_H [m]
     * @param thickness t, net thickness of the member under the head [m]
     * @return W_H [N]
     */
    public static double capacity(double specificGravity, double headDiameter, double thickness) {
        double g = Ranges.gravity(specificGravity);
        double dh = Ranges.diameter("head diameter", headDiameter);
        double t = Ranges.thickness("thickness under the head", thickness);
        if (t <= 2.5 * dh) {
            return THIN * InchPound.PA_PER_PSI * Math.PI * dh * g * g * t;
        }
        return THICK * InchPound.PA_PER_PSI * Math.PI * dh * dh * g * g;
    }

    /**
     * Whether head and member lie within the printed table.
     *
     * @param headDiameter D_H [m]
     * @param thickness t, net thickness of the member under the head [m]
     * @return yes or no [-]
     */
    public static boolean isInStatedRange(double headDiameter, double thickness) {
        double dh = Ranges.diameter("head diameter", headDiameter);
        double t = Ranges.thickness("thickness under the head", thickness);
        return InchPound.atLeast(dh, LEAST_HEAD_IN)
                && InchPound.atMost(dh, MOST_HEAD_IN)
                && InchPound.atLeast(t, LEAST_THICKNESS_IN)
                && InchPound.atMost(t, MOST_THICKNESS_IN);
    }

    /**
     * How deep the cone of a flush countersunk head reaches (geometry).
     *
     * @param headDiameter D_H [m]
     * @param shankDiameter D, where the cone ends [m]
     * @param coneAngle whole angle of the cone, for example 82° or 90° [rad]
     * @return depth of the cone [m]
     */
    public static double countersinkDepth(double headDiameter, double shankDiameter, double coneAngle) {
        double dh = Ranges.diameter("head diameter", headDiameter);
        double d = Require.between("shank diameter", shankDiameter, 0.001, dh, "m, no more than the head");
        double angle = Require.between("cone angle", coneAngle, Math.toRadians(60), Math.toRadians(120), "rad");
        return (dh - d) / (2 * Math.tan(angle / 2));
    }

    /**
     * What is left under a countersunk head.
     *
     * @param thickness of the member [m]
     * @param countersinkDepth depth of the cone, and of any bore above it [m]
     * @return net thickness t to use in {@link #capacity} [m]
     */
    public static double thicknessUnderCountersink(double thickness, double countersinkDepth) {
        double t = Ranges.thickness("thickness of the member", thickness);
        return t - Require.between("countersink depth", countersinkDepth, 0, t - 0.0002, "m, less than the member");
    }
}
