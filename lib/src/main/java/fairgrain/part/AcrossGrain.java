package fairgrain.part;

import fairgrain.material.Curve;
import fairgrain.material.Shrinkage;
import fairgrain.movement.RingDirection;

/**
 * How a board moves across its grain, the curves of its wood laid out once for many questions. The methods of {@link Board} of the same
 * names say what each gives.
 */
public final class AcrossGrain {
    private final RingAngle rings;
    private final boolean isBent;
    private final Curve tangential;
    private final Curve radial;
    private final Curve bentTangential;
    private final Curve bentRadial;

    AcrossGrain(Shrinkage shrinkage, RingAngle rings) {
        this.rings = rings;
        this.isBent = shrinkage.isBent();
        this.tangential = shrinkage.tangentialCurve();
        this.radial = shrinkage.radialCurve();
        this.bentTangential = shrinkage.bentTangentialCurve();
        this.bentRadial = shrinkage.bentRadialCurve();
    }

    public double widthRatio(double from, double to, double ringDeviation, double factor) {
        return ratio(from, to, rings.radians(ringDeviation), factor);
    }

    public double thicknessRatio(double from, double to, double ringDeviation, double factor) {
        return ratio(from, to, Math.PI / 2 - rings.radians(ringDeviation), factor);
    }

    double straightRatio(double from, double to) {
        return straight(from, to, RingDirection.radialShare(rings.radians(0)), 1);
    }

    double bentRatio(double from, double to) {
        return bent(from, to, RingDirection.radialShare(rings.radians(0)), 1);
    }

    private double ratio(double from, double to, double angle, double factor) {
        double radialShare = RingDirection.radialShare(angle);
        double straight = straight(from, to, radialShare, factor);
        if (!isBent) {
            return straight;
        }
        double bent = bent(from, to, radialShare, factor);
        return Math.abs(bent - 1) > Math.abs(straight - 1) ? bent : straight;
    }

    private double straight(double from, double to, double radialShare, double factor) {
        return size(tangential, radial, to, radialShare, factor) / size(tangential, radial, from, radialShare, factor);
    }

    private double bent(double from, double to, double radialShare, double factor) {
        return size(bentTangential, bentRadial, to, radialShare, factor)
                / size(bentTangential, bentRadial, from, radialShare, factor);
    }

    private static double size(Curve tangential, Curve radial, double moisture, double radialShare, double factor) {
        return 1 - factor * RingDirection.between(1 - tangential.at(moisture), 1 - radial.at(moisture), radialShare);
    }
}
