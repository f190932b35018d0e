package fairgrain.bending;

import java.util.ArrayList;
import java.util.List;

/**
 * The equations of {@link GeneralBeam} for supports that are all known to touch: at each, the forces of the two spans, the loads on
 * the support and what it holds add up to nothing.
 */
final class BeamEquations {
    private final List<BeamSupport> touching;
    private final List<BeamLoad> loads;
    private final List<BeamSpan> spans = new ArrayList<>();
    private final BeamSpan left;
    private final BeamSpan right;
    private final double[] leftEnd; // force and couple on the free end of the overhang
    private final double[] rightEnd;

    private BeamEquations(
            double length, List<BeamStretch> stretches, List<BeamSupport> touching, List<BeamLoad> loads) {
        this.touching = touching;
        this.loads = loads;
        double first = touching.get(0).position();
        double last = touching.get(touching.size() - 1).position();
        left = new BeamSpan(0, first, stretches, loads);
        for (int i = 0; i + 1 < touching.size(); i++) {
            spans.add(
                    new BeamSpan(touching.get(i).position(), touching.get(i + 1).position(), stretches, loads));
        }
        right = new BeamSpan(last, length, stretches, loads);
        leftEnd = first > 0 ? loadsAt(0) : new double[2];
        rightEnd = last < length ? loadsAt(length) : new double[2];
    }

    static BeamResponse solve(
            double length,
            List<BeamStretch> stretches,
            List<BeamSupport> supports,
            List<BeamSupport> touching,
            List<BeamLoad> loads) {
        BeamEquations equations = new BeamEquations(length, stretches, touching, loads);
        List<BeamPiece> pieces = equations.pieces(equations.movements());
        return new BeamResponse(length, pieces, equations.reactions(supports, pieces));
    }

    /** Sag and slope at each support. */
    private double[] movements() {
        int n = 2 * touching.size();
        double[][] k = new double[n][n];
        double[] f = new double[n];
        for (int i = 0; i < spans.size(); i++) {
            double[][] part = spans.get(i).stiffness();
            double[] clamped = spans.get(i).clampedForces();
            for (int r = 0; r < 4; r++) {
                f[2 * i + r] -= clamped[r];
                for (int c = 0; c < 4; c++) {
                    k[2 * i + r][2 * i + c] += part[c][r];
                }
            }
        }
        double[] fromLeft = left.atSupport(leftEnd[0], leftEnd[1]);
        f[0] -= fromLeft[1];
        f[1] += fromLeft[0];
        double[] fromRight = right.fromSupport(rightEnd[0], rightEnd[1]);
        f[n - 2] += fromRight[1];
        f[n - 1] -= fromRight[0];
        for (int i = 0; i < touching.size(); i++) {
            BeamSupport s = touching.get(i);
            double[] here = loadsAt(s.position());
            f[2 * i] += here[0];
            f[2 * i + 1] += here[1];
            hold(k, f, 2 * i, s.stiffness());
            hold(k, f, 2 * i + 1, s.turningStiffness());
        }
        return new SymmetricSystem(k).solve(f);
    }

    /** Adds a spring to the equation of one movement; with a rigid one the equation becomes "no movement". */
    private static void hold(double[][] k, double[] f, int at, double stiffness) {
        if (stiffness != Double.POSITIVE_INFINITY) {
            k[at][at] += stiffness;
            return;
        }
        for (int j = 0; j < k.length; j++) {
            k[at][j] = 0;
            k[j][at] = 0;
        }
        k[at][at] = 1;
        f[at] = 0;
    }

    private List<BeamPiece> pieces(double[] moved) {
        List<BeamPiece> all = new ArrayList<>(left.leftOverhang(leftEnd[0], leftEnd[1], moved[0], moved[1]));
        for (int i = 0; i < spans.size(); i++) {
            all.addAll(spans.get(i).between(moved[2 * i], moved[2 * i + 1], moved[2 * i + 2], moved[2 * i + 3]));
        }
        int n = moved.length;
        all.addAll(right.rightOverhang(rightEnd[0], rightEnd[1], moved[n - 2], moved[n - 1]));
        return all;
    }

    private List<BeamReaction> reactions(List<BeamSupport> supports, List<BeamPiece> pieces) {
        List<BeamReaction> reactions = new ArrayList<>();
        for (BeamSupport s : supports) {
            if (!touching.contains(s)) {
                reactions.add(new BeamReaction(s, 0, 0, true));
                continue;
            }
            double[] here = loadsAt(s.position());
            double force = here[0];
            double moment = here[1];
            for (BeamPiece p : pieces) {
                if (p.end() == s.position()) {
                    force -= Polynomial.value(p.shearForces(), p.length());
                    moment += Polynomial.value(p.moments(), p.length());
                } else if (p.start() == s.position()) {
                    force += p.shear();
                    moment -= p.moment();
                }
            }
            reactions.add(new BeamReaction(s, force, moment, false));
        }
        return reactions;
    }

    private double[] loadsAt(double x) {
        double force = 0;
        double couple = 0;
        for (BeamLoad load : loads) {
            if (load instanceof BeamLoad.Point p && p.at() == x) {
                force += p.force();
            } else if (load instanceof BeamLoad.Couple c && c.at() == x) {
                couple += c.moment();
            }
        }
        return new double[] {force, couple};
    }
}
