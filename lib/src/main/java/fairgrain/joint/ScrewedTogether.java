package fairgrain.joint;

import fairgrain.fastener.DowelConnection;
import fairgrain.fastener.EndGrain;
import fairgrain.fastener.HeadPullThrough;
import fairgrain.fastener.LoadDuration;
import fairgrain.fastener.PanelScrew;
import fairgrain.fastener.Penetration;
import fairgrain.fastener.ReductionTerm;
import fairgrain.fastener.ReferenceWithdrawal;
import fairgrain.fastener.ScrewSize;
import fairgrain.fastener.UltimateWithdrawal;
import fairgrain.fastener.YieldLimit;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Missing;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * One screw through one piece into another: what it carries across and along itself.
 *
 * @param length from under its head
 * @param under thickness of the piece under the head
 * @param endGrain whether it goes into end grain
 */
record ScrewedTogether(
        ScrewSize screw, Length length, JointWood through, Length under, JointWood into, boolean endGrain) {
    static final Citation SHALLOW =
            Citation.of("own", "four to six diameters deep counted in proportion", Basis.JUDGEMENT);

    private static final double SHALLOWEST = 4; // diameters
    private static final double CONE = Math.toRadians(82);
    private static final double LEAST_UNDER_HEAD = 0.001; // m
    private static final double PLYWOOD_FACE = 0.75; // of solid wood, by PanelScrew
    private static final double AT_TWELVE = 0.88; // the ratio at 12 % lies up to an eighth below that of dry wood

    /** How far it reaches into the second piece, its point included. */
    double reach() {
        return Math.max(0, length.minus(under).metres());
    }

    /** What must be known before a sideways load can be judged. */
    List<Missing> missingSideways() {
        List<Missing> all = new ArrayList<>();
        if (into.gravity().isEmpty()) {
            all.add(into.densityMissing());
        }
        if (through.gravity().isEmpty() && !through.name().equals(into.name())) {
            all.add(through.densityMissing());
        }
        if (endGrain && into.plywood()) {
            all.add(into.edgeMissing());
        }
        if (share() == 0) {
            all.add(new Missing(
                    "what a screw holds that reaches less than " + (endGrain ? "six" : "four")
                            + " diameters into the second piece",
                    "use longer screws, as long as they do not come through"));
        }
        return all;
    }

    /** What must be known before a pull can be judged. */
    List<Missing> missingPull() {
        List<Missing> all = new ArrayList<>();
        if (endGrain) {
            all.add(new Missing(
                    "what a screw holds that is pulled out of end grain: no code grants it anything",
                    "screw into side grain"));
        }
        if (into.gravity().isEmpty()) {
            all.add(into.densityMissing());
        }
        if (through.gravity().isEmpty() && !through.name().equals(into.name())) {
            all.add(through.densityMissing());
        }
        if (thread() <= 0) {
            all.add(new Missing("what a screw holds without thread in the second piece", "use longer screws"));
        }
        return all;
    }

    /** Load across it at which it yields in side grain. [N] */
    double yields() {
        return YieldLimit.touching(connection()).least();
    }

    /**
     * Share of a sideways value that counts at this depth: all of it from six diameters. In side grain, where sides of cases are
     * rarely as thick, less in proportion down to four, which is a judgement; nothing below.
     */
    private double share() {
        double d = screw.diameter();
        if (Penetration.isEnoughForWoodScrew(reach(), d)) {
            return 1;
        }
        double part = reach() / (Penetration.WOOD_SCREW_LEAST * d);
        return endGrain || part < SHALLOWEST / Penetration.WOOD_SCREW_LEAST ? 0 : part;
    }

    /** What to say of its depth; nothing if it is deep enough. */
    List<String> depthNotes() {
        return share() == 1
                ? List.of()
                : List.of("Each reaches less than the six diameters that the code asks for; it is counted less in"
                        + " proportion, which is a judgement.");
    }

    /** Load across it that the code allows for ten years, or what is counted of it. [N] */
    double sideways() {
        double counted = share() * reference();
        return endGrain ? EndGrain.lateral(counted) : counted;
    }

    /** What the code allows in side grain for ten years at this depth, were it enough. [N] */
    private double reference() {
        return YieldLimit.reference(connection(), 0, screw.diameter(), Math.PI / 2)
                .least();
    }

    /** The divisor from yielding to the code's value in side grain, as a share. */
    Share codeShare() {
        return new Share(
                "from yielding to the code's value for ten years", reference() / yields(), ReductionTerm.SOURCE);
    }

    /** For a load that stays. */
    static Share forGood() {
        return new Share("loaded for good", LoadDuration.PERMANENT.factor(), LoadDuration.SOURCE);
    }

    /** Mean pull that draws it out of side grain, or out of the face of plywood. [N] */
    double drawsOut() {
        double gravity = into.atTwelve().orElse(AT_TWELVE * into.gravity().orElseThrow());
        return layers() * UltimateWithdrawal.woodScrew(gravity, screw.diameter(), thread());
    }

    /** Pull that the code allows for ten years, by the thread and by the head. [N] */
    double pull() {
        return Math.min(withdrawal(), head());
    }

    /** Pull that the code allows the thread for ten years. [N] */
    double withdrawal() {
        double each = ReferenceWithdrawal.woodScrew(into.gravity().orElseThrow(), screw.diameter());
        return layers() * each * thread();
    }

    private double layers() {
        return into.plywood() ? PLYWOOD_FACE : 1;
    }

    /** Pull that the code allows the head for ten years, the wood of a countersink taken off. [N] */
    double head() {
        double cone = HeadPullThrough.countersinkDepth(screw.head(), screw.diameter(), CONE);
        double left = Math.max(LEAST_UNDER_HEAD, under.metres() - cone);
        return HeadPullThrough.capacity(through.gravity().orElseThrow(), screw.head(), left);
    }

    private double thread() {
        return Math.min(reach(), screw.threadShare() * length.metres());
    }

    private DowelConnection connection() {
        double d = screw.diameter();
        return new DowelConnection(
                Penetration.woodScrewBearing(reach(), d),
                under.metres(),
                into.bearing(d),
                through.bearing(d),
                screw.root(),
                screw.bendingYield());
    }

    Evidence evidence() {
        return through.evidence()
                .and(into.evidence())
                .and(screw.evidence())
                .and(YieldLimit.SOURCE, Penetration.SOURCE)
                .and(endGrain ? EndGrain.LATERAL_SOURCE : ReferenceWithdrawal.SOURCE)
                .and(share() == 1 ? Penetration.SOURCE : SHALLOW)
                .and(into.plywood() ? PanelScrew.PLYWOOD_SOURCE : LoadDuration.SOURCE);
    }
}
