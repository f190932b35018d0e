package fairgrain.bending;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A straight beam on any supports under any loads: several spans, overhangs, stepped sections, springs, clamped ends, places
 * where it can lift off.
 *
 * <p>V′ = −q, M′ = V, E I θ′ = −M, w′ = θ + V / (G A′), and at each support V and M jump by what it holds
 *
 * <p><b>Source</b> {@code timoshenko-beam}, equations of the shear-flexible beam.
 *
 * <p>The equations are integrated exactly, piece by piece; only the movements of the supports are unknown, at most two for each.
 *
 * <p><b>Holds for</b> small deflections, and supports that touch the beam along its whole width. Left out: bending and twisting
 * across the width, see {@link SeriesShelf}; friction at the supports; the width of the supports.
 */
public final class GeneralBeam {
    public static final Citation SOURCE =
            Citation.of("timoshenko-beam", "equations of the shear-flexible beam", Basis.MEMORY);

    /** A position may overshoot the end of the beam by this much, from adding up lengths [m]. */
    static final double SNAP = 1e-9;

    private static final int MOST_LIFTING = 10;

    private final double length;
    private final List<BeamStretch> stretches;
    private final List<BeamSupport> supports;
    private final List<BeamLoad> loads;

    private GeneralBeam(double length, List<BeamStretch> stretches, List<BeamSupport> supports, List<BeamLoad> loads) {
        this.length = length;
        this.stretches = stretches;
        this.supports = supports;
        this.loads = loads;
    }

    /**
     * How a beam responds to its loads.
     *
     * @param stretches the sections from left to right; their lengths add up to that of the beam [-]
     * @param supports where the beam is held, in any order [-]
     * @param loads what it carries [-]
     * @return deflections, moments, shear forces and reactions [-]
     * @throws IllegalArgumentException if a load or support is off the beam, or if the beam is not held
     */
    public static BeamResponse solve(
            List<BeamStretch> stretches, List<BeamSupport> supports, List<? extends BeamLoad> loads) {
        if (stretches.isEmpty()) {
            throw new IllegalArgumentException("a beam needs at least one stretch");
        }
        double length = 0;
        for (BeamStretch s : stretches) {
            length += s.length();
        }
        Require.between("length of the beam", length, 1e-3, 100, "m");
        List<BeamSupport> held = new ArrayList<>();
        for (BeamSupport s : supports) {
            double x = onBeam("a support", s.position(), length);
            held.add(new BeamSupport(x, s.stiffness(), s.turningStiffness(), s.unilateral()));
        }
        held.sort(Comparator.comparingDouble(BeamSupport::position));
        for (int i = 1; i < held.size(); i++) {
            if (held.get(i).position() - held.get(i - 1).position() < SNAP) {
                throw new IllegalArgumentException(
                        "two supports are at the same place, " + held.get(i).position() + " m");
            }
        }
        List<BeamLoad> carried = new ArrayList<>();
        for (BeamLoad load : loads) {
            double end = onBeam("a load", load.to(), length);
            carried.add(
                    load instanceof BeamLoad.Line line
                            ? new BeamLoad.Line(line.from(), end, line.atFrom(), line.atTo())
                            : load instanceof BeamLoad.Point p
                                    ? new BeamLoad.Point(end, p.force())
                                    : new BeamLoad.Couple(end, ((BeamLoad.Couple) load).moment()));
        }
        return new GeneralBeam(length, List.copyOf(stretches), held, carried).lifting();
    }

    private static double onBeam(String what, double x, double length) {
        if (x > length + SNAP) {
            throw new IllegalArgumentException(
                    what + " at " + x + " m is off the beam, which ends at " + length + " m");
        }
        return x > length - SNAP ? length : x;
    }

    /** Tries which of the lifting supports touch, all of them first. The answer is the only one in which none pulls or is passed. */
    private BeamResponse lifting() {
        List<BeamSupport> oneSided =
                supports.stream().filter(BeamSupport::unilateral).toList();
        if (oneSided.size() > MOST_LIFTING) {
            throw new IllegalArgumentException("at most " + MOST_LIFTING
                    + " supports may be such that the beam can lift off, but there are " + oneSided.size());
        }
        if (!stable(supports)) {
            throw new IllegalArgumentException(
                    supports.isEmpty()
                            ? "the beam has no support"
                            : "the beam turns about its only support, at "
                                    + supports.get(0).position() + " m; a second one or a clamp is needed");
        }
        for (int touching = (1 << oneSided.size()) - 1; touching >= 0; touching--) {
            int mask = touching;
            List<BeamSupport> active = supports.stream()
                    .filter(s -> !s.unilateral() || (mask >> oneSided.indexOf(s) & 1) == 1)
                    .toList();
            if (stable(active)) {
                BeamResponse response = BeamEquations.solve(length, stretches, supports, active, loads);
                if (agrees(response)) {
                    return response;
                }
            }
        }
        throw new IllegalArgumentException(
                "the beam tips off its supports: they can only push, and this load lifts it");
    }

    private static boolean stable(List<BeamSupport> held) {
        return held.size() > 1 || (held.size() == 1 && held.get(0).turningStiffness() > 0);
    }

    private static boolean agrees(BeamResponse response) {
        double force = 0;
        boolean canLift = false;
        for (BeamReaction r : response.reactions()) {
            force += Math.abs(r.force());
            canLift |= r.support().unilateral();
        }
        if (!canLift) {
            return true;
        }
        double sag =
                Math.max(response.largestSag().value(), -response.largestRise().value());
        for (BeamReaction r : response.reactions()) {
            boolean pulls = r.support().unilateral() && r.force() < -1e-10 * force;
            boolean passed = r.lifted() && response.deflection(r.support().position()) > 1e-10 * sag;
            if (pulls || passed) {
                return false;
            }
        }
        return true;
    }
}
