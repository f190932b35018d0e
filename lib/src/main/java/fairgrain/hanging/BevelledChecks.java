package fairgrain.hanging;

import fairgrain.fastener.EdgeAndSpacing;
import fairgrain.fastener.LoadDuration;
import fairgrain.finding.Check;
import fairgrain.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/** The checks of {@link BevelledRails}. What no draw changes is worked out once. */
final class BevelledChecks {
    private final Hanging hanging;
    private final BevelledPair pair;
    private final Fixing fixing;
    private final Rail strip;
    private final BevelledPlaces at;
    private final ScrewHold hold;
    private final ScrewHold caseHold;
    private final ScrewLoads loads;
    private final BevelledStrips strips;
    private final Hanging empty;

    BevelledChecks(Hanging hanging, BevelledPair pair) {
        this.hanging = hanging;
        this.pair = pair;
        fixing = hanging.fixing();
        strip = fixing.rail();
        at = BevelledPlaces.of(fixing, pair);
        hold = hanging.hold();
        caseHold = pair.screws().hold(strip, hanging.dampest());
        loads = hanging.loads();
        strips = new BevelledStrips(fixing, pair, at, hanging.cabinet().width());
        empty = hanging.hung(hanging.hung().without(HungWeight.Stays.NOT_YET));
    }

    BevelledForces forces(Demand demand) {
        return BevelledForces.of(demand, at, pair, hanging.cabinet().width());
    }

    void judge(LoadCase which, double heaviness, List<Check> checks) {
        double used = 0;
        double shear = 0;
        double pull = 0;
        double caseUsed = 0;
        double carried = 0;
        List<BevelledStrips.Use> hardest = List.of();
        for (Hanging asked : List.of(hanging, empty)) { // less weight may lean farther out
            for (Demand.Side side : Demand.Side.values()) {
                Demand demand = asked.demand(which, heaviness, side);
                BevelledForces forces = forces(demand);
                for (List<ScrewLoads.OnScrew> way : ways(which, demand, forces)) {
                    used = Math.max(used, Hanging.worst(way, hold, which.duration()));
                    for (ScrewLoads.OnScrew on : way) {
                        shear = Math.max(shear, perStud() * on.shear());
                        pull = Math.max(pull, perStud() * on.pull() * share(forces));
                    }
                }
                caseUsed = Math.max(caseUsed, caseUsed(which, forces));
                carried = Math.max(carried, Math.hypot(forces.weight(), forces.wallPull()));
                if (which != LoadCase.SCREW_GONE && strips.known()) {
                    hardest = harder(hardest, strips.uses(forces, shear, pull));
                }
            }
        }
        String when = ", " + which.word();
        if (which != LoadCase.SCREW_GONE) {
            hooked(which, heaviness, when, checks);
        }
        checks.add(ratio("use of the hardest worked screw of the wall strip", when, used));
        checks.add(ratio("use of the hardest worked screw of the case strip", when, caseUsed));
        if (which == LoadCase.STANDING) {
            hardest.forEach(u -> checks.add(Check.of(
                    u.what() + ", against what is allowed for good", u.stress(), u.allowed(), Dimension.STRESS)));
        } else if (!hardest.isEmpty()) {
            double worst = worst(hardest, which.duration());
            checks.add(ratio("use of the strips themselves where they are worked hardest", when, worst));
        }
        double most = carried;
        hanging.carries()
                .ifPresent(limit -> checks.add(Check.of(
                        "weight and pull, against what the blocking or backing may carry" + when,
                        most,
                        limit.newtons(),
                        Dimension.FORCE)));
    }

    /** Of each stress the greater: the full case bends the strips more, an empty one that leans may press harder at its end. */
    private static List<BevelledStrips.Use> harder(List<BevelledStrips.Use> one, List<BevelledStrips.Use> other) {
        if (one.isEmpty()) {
            return other;
        }
        List<BevelledStrips.Use> all = new ArrayList<>();
        for (int i = 0; i < one.size(); i++) {
            all.add(one.get(i).stress() >= other.get(i).stress() ? one.get(i) : other.get(i));
        }
        return List.copyOf(all);
    }

    private static double worst(List<BevelledStrips.Use> uses, LoadDuration duration) {
        double gain = duration.factor() / LoadDuration.PERMANENT.factor();
        return uses.stream()
                .mapToDouble(u -> u.stress() / (u.allowed() * gain))
                .max()
                .orElse(0);
    }

    private static Check ratio(String what, String when, double used) {
        return Check.of(what + when + ", against all of it", used, 1, Dimension.RATIO);
    }

    /** An empty case may turn off its hook sooner than a full one, for a person or a door then weighs more beside it. */
    private void hooked(LoadCase which, double heaviness, String when, List<Check> checks) {
        checks.add(hooked(hanging.demand(which, heaviness, Demand.Side.RIGHT), when));
        checks.add(hooked(empty.demand(which, heaviness, Demand.Side.RIGHT), when + ", nothing in it"));
    }

    private Check hooked(Demand demand, String when) {
        BevelledForces forces = forces(demand);
        return Check.of(
                "pull that keeps it on the wall, against what the bevel draws in without friction" + when,
                forces.needed(),
                forces.wedge(),
                Dimension.FORCE);
    }

    /** Without a stop: pushed up at its front edge, the empty case must not turn up about its bevel. */
    void liftOff(List<Check> checks) {
        if (pair.liftStop().orElse(true) || hanging.cabinet().depth().isEmpty()) {
            return;
        }
        Demand demand = empty.demand(LoadCase.STANDING, 0, Demand.Side.RIGHT);
        double off = pair.standsOff() ? at.thickness() : 0;
        checks.add(Check.of(
                "turning by a push up at the front edge of the empty case, against what its weight keeps down",
                BevelledRails.PUSH_UP * (hanging.cabinet().depth().get().metres() + off - at.arm()),
                demand.moment(0) + demand.weight() * (off - at.arm()),
                Dimension.MOMENT));
        checks.add(Check.of(
                "push up at the empty case, against its weight",
                BevelledRails.PUSH_UP,
                demand.weight(),
                Dimension.FORCE));
    }

    private double caseUsed(LoadCase which, BevelledForces forces) {
        int there = pair.screws().count() - (which == LoadCase.SCREW_GONE ? 1 : 0);
        double times = forces.peak() / there;
        return caseHold.used(times * forces.weight(), times * forces.casePull(), which.duration());
    }

    /** Part of the pull of a screw that is horizontal pull of the bevel, and no lever. */
    private static double share(BevelledForces forces) {
        return forces.wallPull() == 0 ? 0 : forces.pull() / forces.wallPull();
    }

    private double perStud() {
        return fixing.top().perStud();
    }

    /** Pulls of the strip that heels, shared as the weight is or as the pull of a plain rail, whichever is more. */
    private List<List<ScrewLoads.OnScrew>> ways(LoadCase which, Demand demand, BevelledForces forces) {
        Demand wedge = demand.pulledAsItWeighs();
        List<List<ScrewLoads.OnScrew>> plain =
                which == LoadCase.SCREW_GONE ? loads.oneGone(demand) : List.of(loads.of(demand));
        List<List<ScrewLoads.OnScrew>> wedged =
                which == LoadCase.SCREW_GONE ? loads.oneGone(wedge) : List.of(loads.of(wedge));
        double byPlain = times(demand, forces);
        double byWedge = times(wedge, forces);
        List<List<ScrewLoads.OnScrew>> all = new ArrayList<>();
        for (int i = 0; i < plain.size(); i++) {
            List<ScrewLoads.OnScrew> way = new ArrayList<>();
            for (int j = 0; j < plain.get(i).size(); j++) {
                ScrewLoads.OnScrew on = plain.get(i).get(j);
                double pull = Math.max(
                        byPlain * on.pull(), byWedge * wedged.get(i).get(j).pull());
                way.add(new ScrewLoads.OnScrew(on.stud(), on.height(), on.shear(), pull));
            }
            all.add(way);
        }
        return all;
    }

    private double times(Demand demand, BevelledForces forces) {
        double plain = demand.pull(fixing.top().height().metres(), Hanging.CONTACT.metres());
        return plain == 0 ? 0 : forces.wallPull() / plain;
    }

    /** Depths, edges and heights. */
    List<Check> sizes() {
        List<Check> all = new ArrayList<>();
        all.add(length(
                "least depth in the stud, against the depth reached",
                hold.leastDepth().metres(),
                hold.depth().metres()));
        all.add(length(
                "least depth of the screws of the case strip, against the depth reached",
                caseHold.leastDepth().metres(),
                caseHold.depth().metres()));
        all.add(length(
                "screws of the case strip, against the wood that they go through",
                pair.screws().length().metres(),
                pair.screws().wood(strip).metres()));
        all.add(length(
                "least distance of a screw from the edges of the wall strip, against its own",
                leastEdge(fixing.screw()),
                Math.min(at.screwsAboveHeel(), at.wallLeft() - at.screwsAboveHeel())));
        double belowTop = pair.screws().belowTop().metres();
        all.add(length(
                "least distance of a screw from the edges of the case strip, against its own",
                pair.screws().leastEdge(),
                Math.min(belowTop, at.caseLeft() - belowTop)));
        pair.freeAbove()
                .ifPresent(free -> all.add(length(
                        "height to lift it over its mate, against the height free above",
                        pair.rise(strip.thickness()).plus(BevelledRails.CLEAR).metres(),
                        free.metres())));
        all.addAll(FixingPlaces.checks(fixing, hanging.stud()));
        return List.copyOf(all);
    }

    /** Of a screw from the bevel or the heel of its strip [m]. */
    static double leastEdge(HangingScrew screw) {
        double d = screw.diameter().metres();
        return d < EdgeAndSpacing.LARGE ? EdgeAndSpacing.smallEdgeBored(d) : EdgeAndSpacing.largeEdge(d, true);
    }

    private static Check length(String what, double least, double there) {
        return Check.of(what, least, there, Dimension.LENGTH);
    }
}
