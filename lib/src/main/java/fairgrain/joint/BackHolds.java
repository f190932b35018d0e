package fairgrain.joint;

import fairgrain.fastener.CombinedLoad;
import fairgrain.fastener.DowelBearing;
import fairgrain.fastener.DowelConnection;
import fairgrain.fastener.HeadPullThrough;
import fairgrain.fastener.LoadDuration;
import fairgrain.fastener.Penetration;
import fairgrain.fastener.ReferenceWithdrawal;
import fairgrain.fastener.ScrewSize;
import fairgrain.fastener.YieldLimit;
import fairgrain.finding.Answer;
import fairgrain.finding.Caution;
import fairgrain.finding.Check;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Model;
import fairgrain.finding.Outcome;
import fairgrain.finding.Question;
import fairgrain.finding.Spread;
import fairgrain.finding.Words;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.List;

/**
 * Does the wall pull the back off the case, where the back alone carries it?
 *
 * @param part as the maker calls it
 * @param screws from behind through the back into the case, as many as lie within the height of the rail
 * @param length of a screw under its head
 * @param back what the back is made of, and how thick
 * @param heads round or pan heads, or with washers; else countersunk
 * @param into the wood of the case behind the back
 * @param pull of the wall at the top, heavy figure
 * @param weight of all that hangs, heavy figure
 */
public record BackHolds(
        String part,
        int screws,
        ScrewSize screw,
        Length length,
        JointWood back,
        Length thickness,
        boolean heads,
        JointWood into,
        Force pull,
        Force weight)
        implements Question<BackHolds.Held> {
    public static final Limits THICKNESS = new Limits("thickness of the back", 0.003, 0.04, "m");

    public BackHolds {
        new Limits("number of screws", 1, 200, "").check(screws);
        EndJoint.LENGTH.check(length);
        THICKNESS.check(thickness);
    }

    /**
     * The back in numbers.
     *
     * @param pullEach on one screw
     * @param weightEach across one screw
     */
    public record Held(Force pullEach, Force weightEach, List<Check> checks) implements Answer {
        public Held {
            checks = List.copyOf(checks);
        }
    }

    @Override
    public List<Spread> spreads() {
        return List.of();
    }

    @Override
    public Model<Held> model() {
        Held held = held();
        return draw -> held;
    }

    private Held held() {
        double out = pull.newtons() / screws;
        double across = weight.newtons() / screws;
        List<Check> checks = new ArrayList<>();
        if (missing().isEmpty()) {
            double axial = Math.min(withdrawal(), head());
            checks.add(Check.of(
                    "use of a screw between back and case, against all of it",
                    CombinedLoad.straightLine(across, out, lateral(), axial),
                    1,
                    Dimension.RATIO));
        }
        return new Held(Force.newtons(out), Force.newtons(across), checks);
    }

    private double deep() {
        return Math.max(0, length.minus(thickness).metres());
    }

    private double withdrawal() {
        return ReferenceWithdrawal.woodScrew(into.gravity().orElseThrow(), screw.diameter())
                * Math.min(deep(), screw.threadShare() * length.metres())
                * LoadDuration.PERMANENT.factor();
    }

    private double head() {
        return HeadPullThrough.capacity(back.gravity().orElseThrow(), screw.head(), thickness.metres())
                * LoadDuration.PERMANENT.factor();
    }

    private double lateral() {
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

    private List<Missing> missing() {
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
        if (!heads) {
            all.add(new Missing(
                    "what pulls a countersunk head through a back",
                    "use round heads or washers, or fix a hanging rail to the sides ('rail joined')"));
        } else if (!HeadPullThrough.isInStatedRange(screw.head(), thickness.metres())) {
            all.add(new Missing(
                    "what pulls a head through so thin a back: the code's figures begin at 5/16 in (8 mm)",
                    "use a thicker back, or fix a hanging rail to the sides ('rail joined')"));
        }
        if (!Penetration.isEnoughForWoodScrew(deep(), screw.diameter())) {
            all.add(new Missing(
                    "what a screw holds that reaches less than six diameters into the case", "use longer screws"));
        }
        return all;
    }

    @Override
    public List<Finding> findings() {
        Held held = answer();
        Finding.Draft draft = Finding.about(
                        part,
                        "does the wall pull the back off the case",
                        Words.of(
                                "No rail is fixed to the sides, so the back alone ties the case to the wall: {} of"
                                        + " pull and {} of weight on each screw within the height of the rail.",
                                held.pullEach(),
                                held.weightEach()),
                        evidence())
                .outcomes(held.checks().stream().map(Outcome::certain).toList())
                .missing(missing())
                .cautions(Caution.DRY_SOUND_WOOD, Caution.LOCAL_CODE);
        ScrewHoles.into(draft, screw, into, "in the case");
        draft.note("Staples and brads count nothing here, nor does glue: it peels.");
        draft.note(
                "A sheet back that is screwed all round keeps the case square; a solid one, free to move, does not.");
        return List.of(draft.done());
    }

    private Evidence evidence() {
        return back.evidence()
                .and(into.evidence())
                .and(screw.evidence())
                .and(
                        HeadPullThrough.SOURCE,
                        ReferenceWithdrawal.SOURCE,
                        YieldLimit.SOURCE,
                        CombinedLoad.STRAIGHT_LINE_SOURCE,
                        LoadDuration.SOURCE);
    }
}
