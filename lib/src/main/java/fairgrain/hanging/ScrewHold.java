package fairgrain.hanging;

import fairgrain.fastener.Adjustment;
import fairgrain.fastener.CombinedLoad;
import fairgrain.fastener.DowelBearing;
import fairgrain.fastener.DowelConnection;
import fairgrain.fastener.HeadPullThrough;
import fairgrain.fastener.LoadDuration;
import fairgrain.fastener.ModeLoads;
import fairgrain.fastener.Penetration;
import fairgrain.fastener.ReferenceWithdrawal;
import fairgrain.fastener.YieldLimit;
import fairgrain.fastener.YieldMode;
import fairgrain.quantity.Length;

/**
 * What one screw through a rail into a stud can carry for good.
 *
 * @param depth how deep it bears in the stud: a wood screw with its tip, a lag screw without
 * @param point how deep its point reaches into the stud
 * @param leastDepth the least that a sideways value may be used for
 * @param lateral sideways, load that stays, the gap counted [N]
 * @param ungapped the same, were the rail straight on the stud [N]
 * @param withdrawal of the thread [N]
 * @param head pull-through of the head [N]
 * @param mode how it gives way sideways
 */
record ScrewHold(
        Length depth,
        Length point,
        Length leastDepth,
        double lateral,
        double ungapped,
        double withdrawal,
        double head,
        YieldMode mode) {
    private static final double USED_UP = 1000; // a screw that does not reach the stud
    private static final double ACROSS = Math.PI / 2; // the rail is loaded across its grain, the stud along it

    /**
     * The strength of a screw.
     *
     * @param dampest moisture content of the wood in its dampest month, as a fraction
     */
    static ScrewHold of(Fixing fixing, Stud stud, Length gap, double dampest) {
        Screw screw = fixing.screw();
        double length = fixing.length().metres();
        double rail = fixing.railThickness().metres();
        double d = screw.diameter().metres();
        double root = screw.root().metres();
        double tip = screw.tip().metres();
        double g = gap.metres();
        double studDepth = stud.depth().metres();
        double depth = screw.lag()
                ? Penetration.lagScrewBearing(length, rail, g, studDepth, tip)
                : Penetration.depth(length, rail, g, studDepth);
        Length point = new Length(Penetration.depth(length, rail, g, studDepth));
        double least = (screw.lag() ? Penetration.LAG_SCREW_LEAST : Penetration.WOOD_SCREW_LEAST) * d;
        double bearing = screw.lag() ? depth : Penetration.woodScrewBearing(depth, d);
        double thread = threadIn(fixing, g, studDepth);
        if (bearing <= 0 || thread <= 0) {
            return new ScrewHold(new Length(depth), point, new Length(least), 0, 0, 0, 0, YieldMode.IM);
        }
        DowelConnection connection = new DowelConnection(
                bearing,
                rail,
                DowelBearing.wood(stud.specificGravity(), d, 0),
                DowelBearing.wood(fixing.railGravity(), d, ACROSS),
                root,
                screw.bendingYield());
        ModeLoads gapped = YieldLimit.reference(connection, g, d, ACROSS);
        ModeLoads touching = YieldLimit.reference(connection, 0, d, ACROSS);
        double reference = screw.lag()
                ? ReferenceWithdrawal.lagScrew(stud.specificGravity(), d)
                : ReferenceWithdrawal.woodScrew(stud.specificGravity(), d);
        return new ScrewHold(
                new Length(depth),
                point,
                new Length(least),
                lateral(gapped.least(), dampest),
                lateral(touching.least(), dampest),
                axial(reference * thread, dampest),
                axial(
                        HeadPullThrough.capacity(
                                fixing.railGravity(), screw.head().metres(), rail),
                        dampest),
                gapped.governing());
    }

    /** Part of its strength that weight and pull use up together, never less than either alone. */
    double used(double shear, double pull) {
        return holdsNothing() ? USED_UP : CombinedLoad.screw(shear, pull, lateral, withdrawal, head);
    }

    /** The plain sum of both parts. */
    double straightLine(double shear, double pull) {
        return holdsNothing() ? USED_UP : CombinedLoad.straightLine(shear, pull, lateral, Math.min(withdrawal, head));
    }

    private boolean holdsNothing() {
        return lateral <= 0 || withdrawal <= 0 || head <= 0;
    }

    private static double threadIn(Fixing fixing, double gap, double studDepth) {
        double length = fixing.length().metres();
        boolean lag = fixing.screw().lag();
        double thread = length * fixing.screw().threadShare();
        return Penetration.thread(
                length,
                thread,
                lag ? fixing.screw().tip().metres() : 0,
                fixing.railThickness().metres() + gap,
                studDepth);
    }

    private static double lateral(double reference, double dampest) {
        double wet = Adjustment.wetServiceLateral(dampest);
        return Adjustment.lateral(reference, LoadDuration.PERMANENT, wet, 1, 1, 1, 1);
    }

    private static double axial(double reference, double dampest) {
        double wet = Adjustment.wetServiceWithdrawal(dampest);
        return Adjustment.axial(reference, LoadDuration.PERMANENT, wet, 1);
    }
}
