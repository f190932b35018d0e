package fairgrain.bending;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * The stretch between two neighbouring supports, or from an end of the beam to its nearest support. With h its length,
 *
 * <p>θ₁ = θ₀ − a₁ M₀ − a₂ V₀ + t, w₁ = w₀ + h θ₀ − b₁ M₀ − (b₂ − c) V₀ + u, M₁ = M₀ + h V₀ + m, V₁ = V₀ + v
 *
 * <p>where a and b come from bending, c from shear, and t, u, m, v from the loads inside. All are exact sums over the pieces.
 */
final class BeamSpan {
    private final double from;
    private final double to;
    private final List<BeamStretch> stretches;
    private final List<BeamLoad> loads;
    private final double h;
    private double a1;
    private double a2;
    private double b1;
    private double b2MinusC;
    private final double u;
    private final double t;
    private final double m;
    private final double v;

    /** The span from one place to another, with those of all loads that lie inside it and not on its ends. */
    BeamSpan(double from, double to, List<BeamStretch> stretches, List<BeamLoad> all) {
        this.from = from;
        this.to = to;
        this.stretches = stretches;
        h = to - from;
        loads = new ArrayList<>(all.size());
        for (BeamLoad load : all) {
            boolean spread = load instanceof BeamLoad.Line;
            if (spread ? load.from() < to && load.to() > from : load.from() > from && load.from() < to) {
                loads.add(load);
            }
        }
        double[] at = new double[4];
        for (BeamPiece p : integrate(at)) {
            double x = p.start() - from;
            double d = p.length();
            double r = Math.max(0, to - p.end()); // what lies to the right of the piece
            double f = d / p.bendingStiffness();
            a1 += f;
            a2 += f * (x + d / 2);
            b1 += f * (r + d / 2);
            b2MinusC += f * (x * (r + d / 2) + d * (r / 2 + d / 6)) - d / p.shearStiffness();
        }
        u = at[0];
        t = at[1];
        m = at[2];
        v = at[3];
    }

    /** What the movements w₀, θ₀, w₁, θ₁ of the ends do to the forces there: −V₀, M₀, V₁, −M₁ for each, the loads left out. */
    double[][] stiffness() {
        double[][] k = new double[4][];
        double[] turn = {0, 1, 0, -1};
        double[] drop = {1, h, -1, 0};
        for (int j = 0; j < 4; j++) {
            double[] f = leftForces(turn[j], drop[j]);
            k[j] = new double[] {-f[1], f[0], f[1], -(f[0] + h * f[1])};
        }
        return k;
    }

    /** The forces −V₀, M₀, V₁, −M₁ from the loads alone, both ends clamped. */
    double[] clampedForces() {
        double[] f = leftForces(t, u);
        return new double[] {-f[1], f[0], f[1] + v, -(f[0] + h * f[1] + m)};
    }

    /** The pieces between two supports, from how these move. */
    List<BeamPiece> between(double w0, double theta0, double w1, double theta1) {
        double[] f = leftForces(theta0 - theta1 + t, w0 - w1 + h * theta0 + u);
        return integrate(new double[] {w0, theta0, f[0], f[1]});
    }

    /** Moment and shear at the support end of an overhang on the left, with a force and a couple on its free end. */
    double[] atSupport(double force, double couple) {
        return new double[] {couple - h * force + m, v - force};
    }

    /** The pieces of an overhang on the left, from how its support moves. */
    List<BeamPiece> leftOverhang(double force, double couple, double w1, double theta1) {
        double theta0 = theta1 + a1 * couple - a2 * force - t;
        double w0 = w1 - h * theta0 + b1 * couple - b2MinusC * force - u;
        return integrate(new double[] {w0, theta0, couple, -force});
    }

    /** Moment and shear at the support end of an overhang on the right, with a force and a couple on its free end. */
    double[] fromSupport(double force, double couple) {
        double shear = force - v;
        return new double[] {-couple - m - h * shear, shear};
    }

    /** The pieces of an overhang on the right, from how its support moves. */
    List<BeamPiece> rightOverhang(double force, double couple, double w0, double theta0) {
        double[] f = fromSupport(force, couple);
        return integrate(new double[] {w0, theta0, f[0], f[1]});
    }

    /** M₀ and V₀ that go with a difference of slope and of height, loads taken off. */
    private double[] leftForces(double turn, double drop) {
        double det = a1 * b2MinusC - a2 * b1; // below zero whatever the sections
        return new double[] {(turn * b2MinusC - drop * a2) / det, (drop * a1 - turn * b1) / det};
    }

    /** Goes from left to right; {@code at} holds w, θ, M, V at the left end and afterwards those at the right end. */
    private List<BeamPiece> integrate(double[] at) {
        TreeSet<Double> cuts = new TreeSet<>();
        double end = 0;
        for (BeamStretch s : stretches) {
            end += s.length();
            cuts.add(end);
        }
        for (BeamLoad load : loads) {
            cuts.add(load.from());
            cuts.add(load.to());
        }
        cuts.add(to);
        List<BeamPiece> pieces = new ArrayList<>();
        double x = from;
        for (double next : cuts.subSet(from, false, to, true)) {
            BeamPiece p = piece(x, next, at);
            pieces.add(p);
            at[0] = Polynomial.value(p.deflections(), p.length());
            at[1] = Polynomial.value(p.slopes(), p.length());
            at[2] = Polynomial.value(p.moments(), p.length());
            at[3] = Polynomial.value(p.shearForces(), p.length());
            for (BeamLoad load : loads) {
                if (load instanceof BeamLoad.Point force && force.at() == next) {
                    at[3] -= force.force();
                } else if (load instanceof BeamLoad.Couple couple && couple.at() == next) {
                    at[2] += couple.moment();
                }
            }
            x = next;
        }
        return pieces;
    }

    private BeamPiece piece(double x, double next, double[] at) {
        double middle = (x + next) / 2;
        BeamStretch stretch = stretches.get(stretches.size() - 1);
        double end = 0;
        for (BeamStretch s : stretches) {
            end += s.length();
            if (middle < end) {
                stretch = s;
                break;
            }
        }
        double q = 0;
        double steepness = 0;
        for (BeamLoad load : loads) {
            if (load instanceof BeamLoad.Line line && line.from() < middle && line.to() > middle) {
                q += line.at(x);
                steepness += line.steepness();
            }
        }
        return new BeamPiece(
                x,
                next,
                stretch.bendingStiffness(),
                stretch.shearStiffness(),
                q,
                steepness,
                at[0],
                at[1],
                at[2],
                at[3]);
    }
}
