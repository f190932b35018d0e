package fairgrain.movement;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * A slot that lets a screw move with the part it is driven into.
 *
 * <p>S = d + x ε<sub>1</sub> + x ε<sub>2</sub> + 1.0 mm at a distance x from where the parts are fixed to each other; the screw stands
 * d/2 + x ε<sub>1</sub> + 0.5 mm from the end nearer that place.
 *
 * <p><b>Source</b> {@code own}, a screw in its slot: geometry, with half a millimetre to spare at each end by judgement.
 *
 * <p><b>Holds for</b> a washer or a pan head, tight but not clamping. The length is between the ends of the slot, round ends included.
 */
public final class SlotLength {
    public static final Citation SOURCE = Citation.of("own", "a screw in its slot", Basis.DERIVED);

    /** What is left at each end. */
    public static final Citation SPARE = Citation.of("own", "half a millimetre at each end of a slot", Basis.JUDGEMENT);

    private static final double SPARE_MM = 0.5;

    private SlotLength() {}

    /**
     * Length of the slot.
     *
     * @param diameter d, of the screw [m]
     * @param towards x ε_1, how far the screw will come towards the fixed place [m]
     * @param away x ε_2, how far it will go away from it [m]
     * @return S [m]
     */
    public static double length(double diameter, double towards, double away) {
        return fromNearEnd(diameter, towards) + fromNearEnd(diameter, away);
    }

    /**
     * Centre of the screw from the end of the slot nearer the fixed place, that day.
     *
     * @param diameter d, of the screw [m]
     * @param towards x ε_1, how far the screw will come towards the fixed place [m]
     * @return from the end to the centre [m]
     */
    public static double fromNearEnd(double diameter, double towards) {
        double d = Require.between("screw diameter", diameter, 0.001, 0.02, "m");
        double near = Require.between("movement of a screw", towards, 0, 0.5, "m");
        return d / 2 + near + SPARE_MM / 1000;
    }
}
