package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * Weight and pull on the same screw: how much of it is used up; 1 is all of it.
 *
 * <p>U = max( (V²/z′ + T²/W′) / √(V² + T²), V/z′, T/W′ ), W′ = min((w p)′, W_H′); in the straight-line form U = V/z′ +
 * T/W′
 *
 * <p><b>Source</b> {@code nds2018}, equation 12.4-1. Second-hand; the two added terms and the straight line are this
 * library's choice.
 *
 * <p><b>Holds for</b> screws in side grain. The code's form alone falls when pull is added to a screw with W′ &gt; 2
 * z′, which a long screw across a gap has; with the other two terms more weight or more pull never lowers U. The
 * straight line is never below the other form and is taken for nails, anchors, screws in steel studs, and wherever the
 * head (or the steel), not the thread, limits the pull. So U steps up where a longer screw makes the head the weaker
 * end.
 */
public final class CombinedLoad {
    public static final Citation SOURCE = Citation.of("nds2018", "equation 12.4-1", Basis.SECOND_HAND);
    public static final Citation STRAIGHT_LINE_SOURCE =
            Citation.of("own", "straight line for nails, anchors, steel studs and heads", Basis.JUDGEMENT);

    private CombinedLoad() {}

    /**
     * The code's form by itself. It is not monotone: use {@link #screw} for a verdict.
     *
     * @param shear V, along the wall [N]
     * @param pull T, away from the wall [N]
     * @param lateral z′ [N]
     * @param axial W′ [N]
     * @return used part [-]
     */
    public static double code(double shear, double pull, double lateral, double axial) {
        double v = Ranges.force("shear", shear);
        double t = Ranges.force("pull", pull);
        double z = Ranges.capacity("lateral value", lateral);
        double w = Ranges.capacity("axial value", axial);
        double load = Math.hypot(v, t);
        return load == 0 ? 0 : (v * v / z + t * t / w) / load;
    }

    /**
     * The straight line: nails, anchors, screws in steel studs.
     *
     * @param shear V, along the wall [N]
     * @param pull T, away from the wall [N]
     * @param lateral z′ [N]
     * @param axial W′, least of what limits the pull [N]
     * @return used part [-]
     */
    public static double straightLine(double shear, double pull, double lateral, double axial) {
        return Ranges.force("shear", shear) / Ranges.capacity("lateral value", lateral)
                + Ranges.force("pull", pull) / Ranges.capacity("axial value", axial);
    }

    /**
     * The code's form, never below weight or pull by itself.
     *
     * @param shear V, along the wall [N]
     * @param pull T, away from the wall [N]
     * @param lateral z′ [N]
     * @param axial W′, least of what limits the pull [N]
     * @return used part [-]
     */
    public static double interaction(double shear, double pull, double lateral, double axial) {
        double byCode = code(shear, pull, lateral, axial);
        return Math.max(byCode, Math.max(shear / lateral, pull / axial));
    }

    /**
     * A wood or lag screw in wood: {@link #interaction} where the thread limits the pull, {@link #straightLine} where
     * the head does.
     *
     * @param shear V, along the wall [N]
     * @param pull T, away from the wall [N]
     * @param lateral z′ [N]
     * @param withdrawal (w p)′ [N]
     * @param head W_H′, or the steel if that is less [N]
     * @return used part [-]
     */
    public static double screw(double shear, double pull, double lateral, double withdrawal, double head) {
        Ranges.capacity("withdrawal", withdrawal);
        Ranges.capacity("head pull-through", head);
        return head <= withdrawal
                ? straightLine(shear, pull, lateral, head)
                : interaction(shear, pull, lateral, withdrawal);
    }
}
