package fairgrain.bending;

import fairgrain.quantity.Require;

/**
 * A place where a beam is held. The factories are pins, clamps and springs; {@link #turning} and {@link #pushesOnly()} change them.
 *
 * @param position from the left end of the beam [m]
 * @param stiffness force by the sag of the support; positive infinity if it does not give [N/m]
 * @param turningStiffness moment by the slope; 0 if free to turn, positive infinity if it cannot turn [N·m/rad]
 * @param unilateral whether the beam can lift off [-]
 */
public record BeamSupport(double position, double stiffness, double turningStiffness, boolean unilateral) {
    public BeamSupport {
        Require.between("position of the support", position, 0, 100, "m");
        if (stiffness != Double.POSITIVE_INFINITY) {
            Require.between("stiffness of the support", stiffness, 1, 1e12, "N/m");
        }
        if (turningStiffness != Double.POSITIVE_INFINITY) {
            Require.between("turning stiffness of the support", turningStiffness, 0, 1e12, "N m/rad");
        }
        if (unilateral && turningStiffness != 0) {
            throw new IllegalArgumentException("a support that the beam can lift off cannot hold its slope");
        }
    }

    /** Holds the height and lets the beam turn. */
    public static BeamSupport pin(double position) {
        return new BeamSupport(position, Double.POSITIVE_INFINITY, 0, false);
    }

    /** Holds height and slope. */
    public static BeamSupport clamp(double position) {
        return new BeamSupport(position, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, false);
    }

    /** Gives way in proportion to the force, and lets the beam turn. */
    public static BeamSupport spring(double position, double stiffness) {
        return new BeamSupport(position, stiffness, 0, false);
    }

    /** The same, resisting a turn in proportion to it. */
    public BeamSupport turning(double newTurningStiffness) {
        return new BeamSupport(position, stiffness, newTurningStiffness, unilateral);
    }

    /** The same, but only pushing: the beam can lift off. */
    public BeamSupport pushesOnly() {
        return new BeamSupport(position, stiffness, turningStiffness, true);
    }

    boolean rigid() {
        return stiffness == Double.POSITIVE_INFINITY;
    }

    boolean clamped() {
        return turningStiffness == Double.POSITIVE_INFINITY;
    }
}
