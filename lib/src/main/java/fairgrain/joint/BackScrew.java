package fairgrain.joint;

import fairgrain.fastener.HeadPullThrough;
import fairgrain.fastener.LoadDuration;
import fairgrain.fastener.Penetration;
import fairgrain.fastener.ScrewSize;
import fairgrain.fastener.YieldLimit;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
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

    private ScrewedTogether together() {
        return new ScrewedTogether(screw, length, back, thickness, into, false);
    }

    /** Before it is drawn out of the case [N]. */
    double withdrawal() {
        return together().withdrawal() * LoadDuration.PERMANENT.factor();
    }

    /** Before its round head is pulled through the back [N]. */
    double head() {
        return HeadPullThrough.capacity(back.gravity().orElseThrow(), screw.head(), thickness.metres())
                * LoadDuration.PERMANENT.factor();
    }

    /** Across it [N]. */
    double sideways() {
        return together().sideways() * LoadDuration.PERMANENT.factor();
    }

    /** Adds its holes, and where to set it. */
    void into(Finding.Draft draft) {
        ScrewHoles.into(draft, screw, into, "in the case");
        draft.note("Set the screws in the middle of the edges of the case: nearer to a face than two and a half"
                + " diameters they split it, and that is not in these figures.");
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
        if (!Penetration.isEnoughForWoodScrew(together().reach(), screw.diameter())) {
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
