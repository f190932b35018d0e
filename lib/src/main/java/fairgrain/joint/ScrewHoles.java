package fairgrain.joint;

import fairgrain.fastener.PilotHole;
import fairgrain.fastener.ScrewSize;
import fairgrain.finding.Finding;
import fairgrain.quantity.Length;

/** The holes to bore for a wood screw, and how to drive it. */
public final class ScrewHoles {
    private static final double DENSE = 0.6;

    private ScrewHoles() {}

    /** Thread hole for a screw that may be pulled and loaded sideways: the smaller of both, which keeps its thread. */
    public static Length pilot(ScrewSize screw, double gravity) {
        double sideways = PilotHole.sidewaysWoodScrew(gravity, screw.root());
        double pulled = PilotHole.pulledWoodScrew(gravity, screw.root());
        return new Length(pulled > 0 ? Math.min(pulled, sideways) : sideways);
    }

    /** Hole for the shank in the piece under the head. */
    public static Length shank(ScrewSize screw, double gravity) {
        return new Length(PilotHole.sidewaysWoodScrew(gravity, screw.diameter()));
    }

    /** Adds the thread hole, and what to mind. */
    public static void into(Finding.Draft draft, ScrewSize screw, JointWood wood, String where) {
        wood.gravity().ifPresent(gravity -> {
            draft.size("pilot hole " + where + " at most", pilot(screw, gravity));
            draft.evidence(PilotHole.SOURCE, PilotHole.WOOD_SCREW_SOURCE);
            if (gravity > DENSE) {
                draft.note(wood.name() + " is dense: bore every hole, wax the thread, and drive the last turns by hand,"
                        + " for it splits, and screws twist off in it.");
            } else {
                draft.note("Bore every hole, also where the wood is soft: near an end or an edge it splits without."
                        + " Coarse threads are for soft wood and plywood, fine ones for hard wood (common practice).");
            }
        });
    }
}
