package fairgrain.bending;

import fairgrain.quantity.Require;
import java.util.List;
import java.util.function.Function;

/**
 * What a beam does under its loads. Sag and slope count downwards to the right, a sagging moment is positive, and the shear force
 * is what the part to the left of a cut pushes upwards on the part to the right.
 */
public final class BeamResponse {
    private final double length;
    private final List<BeamPiece> pieces;
    private final List<BeamReaction> reactions;

    BeamResponse(double length, List<BeamPiece> pieces, List<BeamReaction> reactions) {
        this.length = length;
        this.pieces = List.copyOf(pieces);
        this.reactions = List.copyOf(reactions);
    }

    /** What the supports do, from left to right. */
    public List<BeamReaction> reactions() {
        return reactions;
    }

    /**
     * Sag.
     *
     * @param position x, from the left end [m]
     * @return w, downwards [m]
     */
    public double deflection(double position) {
        return at(position, BeamPiece::deflections);
    }

    /**
     * Turn of the cross-section.
     *
     * @param position x, from the left end [m]
     * @return θ, with the clock [rad]
     */
    public double slope(double position) {
        return at(position, BeamPiece::slopes);
    }

    /**
     * Bending moment; where a couple acts, that to the right of it.
     *
     * @param position x, from the left end [m]
     * @return M, sagging [N·m]
     */
    public double moment(double position) {
        return at(position, BeamPiece::moments);
    }

    /**
     * Shear force; where a load or support acts, that to the right of it.
     *
     * @param position x, from the left end [m]
     * @return V [N]
     */
    public double shear(double position) {
        return at(position, BeamPiece::shearForces);
    }

    /** The largest sag anywhere, and where [m]. */
    public Extreme largestSag() {
        return extreme(BeamPiece::deflections, 1);
    }

    /** The largest rise anywhere, as a negative sag, and where [m]; the least sag if nothing rises. */
    public Extreme largestRise() {
        return extreme(BeamPiece::deflections, -1);
    }

    /**
     * The largest sag within a part of the beam.
     *
     * @param from x, from the left end [m]
     * @param to x, from the left end [m]
     * @return place and sag, downwards [m]
     */
    public Extreme largestSagBetween(double from, double to) {
        return extreme(BeamPiece::deflections, 1, onBeam(from), onBeam(to));
    }

    /** The largest sagging moment [N·m]. */
    public Extreme largestSaggingMoment() {
        return extreme(BeamPiece::moments, 1);
    }

    /** The largest hogging moment, as a negative one [N·m]; the least moment if nothing hogs. */
    public Extreme largestHoggingMoment() {
        return extreme(BeamPiece::moments, -1);
    }

    /** The moment of the largest size, with its sign [N·m]. */
    public Extreme largestMoment() {
        return larger(largestSaggingMoment(), largestHoggingMoment());
    }

    /** The shear force of the largest size, with its sign [N]. */
    public Extreme largestShear() {
        return larger(extreme(BeamPiece::shearForces, 1), extreme(BeamPiece::shearForces, -1));
    }

    private static Extreme larger(Extreme a, Extreme b) {
        return Math.abs(a.value()) >= Math.abs(b.value()) ? a : b;
    }

    private double at(double position, Function<BeamPiece, double[]> quantity) {
        double x = onBeam(position);
        BeamPiece piece = pieces.get(pieces.size() - 1);
        for (BeamPiece p : pieces) {
            if (x < p.end()) {
                piece = p;
                break;
            }
        }
        return Polynomial.value(quantity.apply(piece), x - piece.start());
    }

    private double onBeam(double position) {
        // adding up lengths may overshoot the end
        double x = position > length && position < length + GeneralBeam.SNAP ? length : position;
        return Require.between("position on the beam", x, 0, length, "m");
    }

    private Extreme extreme(Function<BeamPiece, double[]> quantity, double sign) {
        return extreme(quantity, sign, 0, length);
    }

    private Extreme extreme(Function<BeamPiece, double[]> quantity, double sign, double from, double to) {
        Extreme best = new Extreme(from, at(from, quantity));
        for (BeamPiece p : pieces) {
            if (p.end() < from || p.start() > to) {
                continue;
            }
            double[] c = quantity.apply(p);
            for (double x : Polynomial.turningPoints(c, p.length())) {
                double local = Math.min(Math.max(x, from - p.start()), to - p.start());
                double value = Polynomial.value(c, local);
                if (sign * value > sign * best.value()) {
                    best = new Extreme(p.start() + local, value);
                }
            }
        }
        return best;
    }
}
