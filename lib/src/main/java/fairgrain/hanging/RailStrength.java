package fairgrain.hanging;

import fairgrain.fastener.BevelledStrip;
import fairgrain.fastener.EdgeAndSpacing;
import fairgrain.fastener.RailRolling;
import fairgrain.fastener.SplittingForce;
import fairgrain.finding.Answer;
import fairgrain.finding.Caution;
import fairgrain.finding.Check;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Model;
import fairgrain.finding.Outcome;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.finding.Spread;
import fairgrain.finding.Words;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Does the rail split where the screws go through it? Under the standing load; its joints to the case are asked about elsewhere.
 *
 * @param hanging the cabinet; the depth of its rail must be known
 */
public record RailStrength(Hanging hanging) implements Question<RailStrength.Holds> {
    private static final double STANDING_KMOD = 0.6; // solid wood under a load that stays, dry

    public RailStrength {
        if (hanging.fixing().rail().depth().isEmpty()) {
            throw new IllegalArgumentException("the depth of the rail must be known to judge it");
        }
    }

    /**
     * The rail in numbers.
     *
     * @param checks splitting, bending across the grain where it rolls, distance from its edges
     * @param endForce what the joint at each end must carry if the sides alone hold the rail
     */
    public record Holds(List<Check> checks, Force endForce) implements Answer {}

    @Override
    public String part() {
        return hanging.part();
    }

    @Override
    public List<Spread> spreads() {
        return hanging.spreads();
    }

    @Override
    public Model<Holds> model() {
        Rail rail = hanging.fixing().rail();
        ScrewLoads loads = hanging.loads();
        double d = hanging.fixing().screw().diameter().metres();
        double depth = rail.depth().orElseThrow().metres();
        int perStud = hanging.fixing().top().perStud();
        double spread =
                perStud > 1 ? hanging.fixing().top().apart().map(Length::metres).orElse(0.0) * (perStud - 1) : 0;
        double thick = rail.thickness().metres();
        double fromTop = Math.min(0.98 * depth, Math.max(0.001, depth - rail.below() + spread / 2));
        double splitting =
                SplittingForce.allowable(SplittingForce.characteristic(thick, depth, fromTop), STANDING_KMOD);
        List<Check> edges = edges(d, depth - rail.below() - spread / 2, rail.below() - spread / 2);
        return draw -> {
            double heaviness = draw.of(0) / Reliability.NINETEEN_IN_TWENTY;
            Demand demand = hanging.demand(LoadCase.STANDING, heaviness, Demand.Side.RIGHT);
            List<ScrewLoads.OnScrew> screws = loads.of(demand);
            double shear = perStud
                    * screws.stream()
                            .mapToDouble(ScrewLoads.OnScrew::shear)
                            .max()
                            .orElse(0);
            double pull = perStud
                    * screws.stream()
                            .mapToDouble(ScrewLoads.OnScrew::pull)
                            .max()
                            .orElse(0);
            List<Check> checks = new ArrayList<>();
            checks.add(Check.of(
                    "weight on one stud, against what splits the rail along its screws",
                    shear,
                    splitting,
                    Dimension.FORCE));
            checks.addAll(edges);
            rolling(rail, pull / rail.rolling(), thick)
                    .ifPresent(stress -> checks.add(Check.of(
                            "bending of the rail across its grain, against what is allowed for good",
                            stress,
                            BevelledStrip.crossGrainLimit(rail.tensionAcross().orElseThrow()),
                            Dimension.STRESS)));
            double whole = demand.pull(hanging.fixing().top().height().metres(), Hanging.CONTACT.metres());
            return new Holds(List.copyOf(checks), new Force(Math.hypot(demand.weight(), whole) / 2));
        };
    }

    /** The screws press towards the upper edge; from a quarter inch that edge asks for more. */
    private static List<Check> edges(double d, double above, double below) {
        boolean large = d >= EdgeAndSpacing.LARGE;
        return List.of(
                Check.of(
                        "least distance of a screw from the upper edge of the rail, against its own",
                        large ? EdgeAndSpacing.largeEdge(d, true) : EdgeAndSpacing.smallEdgeBored(d),
                        above,
                        Dimension.LENGTH),
                Check.of(
                        "least distance of a screw from the lower edge of the rail, against its own",
                        large ? EdgeAndSpacing.largeEdge(d, false) : EdgeAndSpacing.smallEdgeBored(d),
                        below,
                        Dimension.LENGTH));
    }

    /** Stress across the grain where the case holds the rail along its top only; empty where it cannot roll or nothing is known. */
    private OptionalDouble rolling(Rail rail, double pull, double thick) {
        if (rail.held() == Rail.Held.BOTH_EDGES
                || rail.kind() != Rail.Kind.SOLID
                || rail.tensionAcross().isEmpty()) {
            return OptionalDouble.empty();
        }
        double works = Math.min(2 * rail.above(), nearest());
        return OptionalDouble.of(RailRolling.crossGrainStress(pull, rail.above(), works, thick));
    }

    /** Distance between the nearest studs [m]. */
    private double nearest() {
        List<Length> studs = hanging.fixing().studs();
        double least = hanging.cabinet().width().metres();
        for (int i = 1; i < studs.size(); i++) {
            least = Math.min(least, studs.get(i).minus(studs.get(i - 1)).metres());
        }
        return least;
    }

    @Override
    public List<Finding> findings() {
        List<Outcome> outcomes = Reliability.outcomes(this, Reliability.NINETEEN_IN_TWENTY);
        Holds heavy = model().at(spread -> Reliability.NINETEEN_IN_TWENTY);
        Rail rail = hanging.fixing().rail();
        Finding.Draft draft = Finding.about(
                        part(),
                        "does its hanging rail split",
                        Words.of(
                                "The worst stud presses up on the rail with {}; it splits along the screws sooner the"
                                        + " nearer they sit to its upper edge.",
                                new Force(outcomes.get(0).planned().demand())),
                        Evidence.of(SplittingForce.SOURCE, Demand.SOURCE, RailRolling.SOURCE, EdgeAndSpacing.SOURCE)
                                .and(rail.evidence()))
                .outcomes(outcomes)
                .note(
                        "If the sides alone hold the rail, the joint at each end must carry {}. Whether it does is"
                                + " asked of the joint.",
                        heavy.endForce())
                .note("The rule for splitting is for softwood; hardwood is taken alike.")
                .cautions(Caution.LOCAL_CODE, Caution.DRY_SOUND_WOOD, Caution.ASSUMED_CONTENTS);
        if (rail.kind() != Rail.Kind.SOLID) {
            draft.note("Plywood does not split along a row of screws; the figure is that of solid wood.");
        }
        if (rail.held() == Rail.Held.TOP_EDGE && rail.kind() == Rail.Kind.SOLID) {
            draft.evidence(BevelledStrip.LIMIT_SOURCE);
            if (rail.tensionAcross().isEmpty()) {
                draft.missing(List.of(new Missing(
                        "how strong " + rail.name() + " is across its grain",
                        "hold the rail along both edges, so that it cannot roll")));
            }
        }
        return List.of(draft.done());
    }
}
