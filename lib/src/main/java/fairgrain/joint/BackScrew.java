package fairgrain.joint;

import fairgrain.fastener.DowelBearing;
import fairgrain.fastener.DowelConnection;
import fairgrain.fastener.HeadPullThrough;
import fairgrain.fastener.LoadDuration;
import fairgrain.fastener.Penetration;
import fairgrain.fastener.ReferenceWithdrawal;
import fairgrain.fastener.ScrewSize;
import fairgrain.fastener.YieldLimit;
import fairgrain.finding.Evidence;
import fairgrain.finding.Missing;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.List;

/**
 * One of the screws from behind through the back into the case. Its strengths are for a load that stays.
 *
 * @param length under its head
 * @param back what the back is made of, and how thick
 * @param heads round or pan heads, or with washers; else countersunk
 * @param into the wood of the case behind the back
 */
public record BackScrew(
        ScrewSize screw, Length length, JointWood back, Length thickness, boolean heads, JointWood into) {
    public static final Limits THICKNESS = new Limits("thickness of the back", 0.003, 0.04, "m");

    public BackScrew {
        EndJoint.LENGTH.check(length);
        THICKNESS.check(thickness);
    }

    private double deep() {
        return Math.max(0, length.minus(thickness).metres());
    }

    /** Before it is drawn out of the case [N]. */
    double withdrawal() {
        return ReferenceWithdrawal.woodScrew(into.gravity().orElseThrow(), screw.diameter())
                * Math.min(deep(), screw.threadShare() * length.metres())
                * LoadDuration.PERMANENT.factor();
    }

    /** Before its head is pulled through the back [N]. */
    double head() {
        return HeadPullThrough.capacity(back.gravity().orElseThrow(), screw.head(), thickness.metres())
                * LoadDuration.PERMANENT.factor();
    }

    /** Across it [N]. */
    double sideways() {
        double d = screw.diameter();
        DowelConnection connection = new DowelConnection(
                Penetration.woodScrewBearing(deep(), d),
                thickness.metres(),
                bearing(into.gravity().orElseThrow(), d),
                bearing(back.gravity().orElseThrow(), d),
                screw.root(),
                screw.bendingYield());
        return YieldLimit.reference(connection, 0, d, Math.PI / 2).least() * LoadDuration.PERMANENT.factor();
    }

    private static double bearing(double gravity, double diameter) {
        return Math.min(DowelBearing.wood(gravity, diameter, 0), DowelBearing.wood(gravity, diameter, Math.PI / 2));
    }

    /** What must be known for a load across it. */
    List<Missing> missingSideways() {
        List<Missing> all = new ArrayList<>();
        if (back.gravity().isEmpty()) {
            all.add(back.densityMissing());
        }
        if (into.gravity().isEmpty()) {
            all.add(into.densityMissing());
        }
        if (into.plywood()) {
            all.add(into.edgeMissing());
        }
        if (!Penetration.isEnoughForWoodScrew(deep(), screw.diameter())) {
            all.add(new Missing(
                    "what a screw holds that reaches less than six diameters into the case", "use longer screws"));
        }
        return all;
    }

    /** What must be known for a pull along it as well. */
    List<Missing> missing() {
        List<Missing> all = new ArrayList<>(missingSideways());
        if (!heads) {
            all.add(new Missing(
                    "what pulls a countersunk head through a back",
                    "use round heads or washers, or fix a hanging rail to the sides ('rail joined')"));
        } else if (!HeadPullThrough.isInStatedRange(screw.head(), thickness.metres())) {
            all.add(new Missing(
                    "what pulls a head through so thin a back: the code's figures begin at 5/16 in (8 mm)",
                    "use a thicker back, or fix a hanging rail to the sides ('rail joined')"));
        }
        return all;
    }

    Evidence evidence() {
        return back.evidence().and(into.evidence()).and(screw.evidence()).and(YieldLimit.SOURCE, LoadDuration.SOURCE);
    }
}
