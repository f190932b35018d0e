package fairgrain.hanging;

import fairgrain.fastener.BevelledStrip;
import fairgrain.fastener.EdgeAndSpacing;
import fairgrain.fastener.LoadDuration;
import fairgrain.fastener.RailBetweenSides;
import fairgrain.fastener.RailRolling;
import fairgrain.fastener.SplittingForce;
import fairgrain.finding.Answer;
import fairgrain.finding.Check;
import fairgrain.finding.Draw;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.finding.Spread;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Does the rail of the upper screws split or break? Its joints to the case are asked about elsewhere.
 *
 * @param hanging the cabinet; the depth of its rail must be known
 */
public record RailStrength(Hanging hanging) implements Question<RailStrength.Holds> {
    public RailStrength {
        if (hanging.fixing().rail().depth().isEmpty()) {
            throw new IllegalArgumentException("the depth of the rail must be known to judge it");
        }
    }

    /**
     * The rail in numbers.
     *
     * @param checks splitting, distance from its edges, bending across the grain where it rolls, bending between the sides where they
     *     alone hold it; the other cases
     * @param endForce what the joint at each end must carry if the sides alone hold the rail
     */
    public record Holds(List<Check> checks, Force endForce) implements Answer {}

    /** What one case asks of the rail: weight and pull on the hardest worked stud, and what bends it between the sides. */
    private record Asked(double shear, double pull, double levelMoment, double uprightMoment) {}

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
        double depth = rail.depth().orElseThrow().metres();
        double spread = spread();
        double fromTop = Math.min(0.98 * depth, Math.max(0.001, depth - rail.below() + spread / 2));
        double splits = SplittingForce.characteristic(rail.thickness().metres(), depth, fromTop);
        List<Check> edges = edges(depth - rail.below() - spread / 2, rail.below() - spread / 2);
        return draw -> {
            double heaviness = draw.of(0) / Reliability.NINETEEN_IN_TWENTY;
            Demand standing = hanging.demand(LoadCase.STANDING, heaviness, Demand.Side.RIGHT);
            Asked asked = asked(standing, loads);
            List<Check> checks = new ArrayList<>();
            checks.add(Check.of(
                    "weight on one stud, against what splits the rail along its screws",
                    asked.shear(),
                    splitting(splits, LoadDuration.PERMANENT),
                    Dimension.FORCE));
            checks.addAll(edges);
            rolling(rail, asked.pull())
                    .ifPresent(stress -> checks.add(Check.of(
                            "bending of the rail across its grain, against what is allowed for good",
                            stress,
                            across(rail),
                            Dimension.STRESS)));
            bending(rail, asked)
                    .ifPresent(stress -> checks.add(Check.of(
                            "bending of the rail between the sides, against what is allowed for good",
                            stress,
                            rail.along().bending(),
                            Dimension.STRESS)));
            for (LoadCase which : hanging.cases().of(hanging.cabinet())) {
                if (which != LoadCase.STANDING && which != LoadCase.SCREW_GONE) {
                    checks.add(Check.of(
                            "use of the rail where it is worked hardest, " + which.word() + ", against all of it",
                            used(which, heaviness, loads, splits),
                            1,
                            Dimension.RATIO));
                }
            }
            double whole = standing.pull(hanging.fixing().top().height().metres(), Hanging.CONTACT.metres());
            return new Holds(List.copyOf(checks), new Force(Math.hypot(standing.weight(), whole) / 2));
        };
    }

    /** Splitting, rolling, bending: whichever is worst, at the worse end. */
    private double used(LoadCase which, double heaviness, ScrewLoads loads, double splits) {
        Rail rail = hanging.fixing().rail();
        double gain = which.duration().factor() / LoadDuration.PERMANENT.factor();
        double worst = 0;
        for (Demand.Side side : Demand.Side.values()) {
            Asked asked = asked(hanging.demand(which, heaviness, side), loads);
            worst = Math.max(worst, asked.shear() / splitting(splits, which.duration()));
            OptionalDouble rolling = rolling(rail, asked.pull());
            if (rolling.isPresent()) {
                worst = Math.max(worst, rolling.getAsDouble() / (gain * across(rail)));
            }
            OptionalDouble bending = bending(rail, asked);
            if (bending.isPresent()) {
                worst = Math.max(
                        worst, bending.getAsDouble() / (gain * rail.along().bending()));
            }
        }
        return worst;
    }

    private Asked asked(Demand demand, ScrewLoads loads) {
        Fixing fixing = hanging.fixing();
        int perStud = fixing.top().perStud();
        double lowest = fixing.top().height().metres();
        double shear = 0;
        double pull = 0;
        List<Length> studs = fixing.studs();
        double[] upright = new double[studs.size()];
        double[] level = new double[studs.size()];
        for (ScrewLoads.OnScrew on : loads.of(demand)) {
            double pulled = on.pull() / fixing.rail().rolling();
            shear = Math.max(shear, perStud * on.shear());
            pull = Math.max(pull, perStud * pulled);
            for (int i = 0; i < upright.length; i++) {
                if (studs.get(i).metres() == on.stud() && on.height() >= lowest) {
                    upright[i] += on.shear();
                    level[i] += pulled;
                }
            }
        }
        double side = hanging.cabinet().side().metres();
        double span = hanging.cabinet().width().metres() - 2 * side;
        double[] places = studs.stream()
                .mapToDouble(at -> Math.max(0, Math.min(span, at.metres() - side)))
                .toArray();
        return new Asked(
                shear,
                pull,
                RailBetweenSides.moment(places, level, span),
                RailBetweenSides.moment(places, upright, span));
    }

    /** By the factors of the European code for wood in a dry room. */
    private static double splitting(double characteristic, LoadDuration duration) {
        double kMod = switch (duration) {
            case PERMANENT -> 0.6;
            case TEN_YEARS -> 0.7;
            case TWO_MONTHS, SEVEN_DAYS -> 0.8;
            case TEN_MINUTES -> 0.9;
        };
        return SplittingForce.allowable(characteristic, kMod);
    }

    private static double across(Rail rail) {
        return BevelledStrip.crossGrainLimit(rail.tensionAcross().orElseThrow());
    }

    /** From the lowest to the highest screw in a stud [m]. */
    double spread() {
        Row top = hanging.fixing().top();
        return (top.perStud() - 1) * top.apart().map(Length::metres).orElse(0.0);
    }

    /** The screws press towards the upper edge; from a quarter inch that edge asks for more. */
    private List<Check> edges(double above, double below) {
        return List.of(
                Check.of(
                        "least distance of a screw from the upper edge of the rail, against its own",
                        leastEdge(true),
                        above,
                        Dimension.LENGTH),
                Check.of(
                        "least distance of a screw from the lower edge of the rail, against its own",
                        leastEdge(false),
                        below,
                        Dimension.LENGTH));
    }

    double leastEdge(boolean loaded) {
        double d = hanging.fixing().screw().diameter().metres();
        return d >= EdgeAndSpacing.LARGE ? EdgeAndSpacing.largeEdge(d, loaded) : EdgeAndSpacing.smallEdgeBored(d);
    }

    /** Stress across the grain where the case does not hold the rail along both edges; empty where it cannot roll or nothing is known. */
    private OptionalDouble rolling(Rail rail, double pull) {
        if (rail.held() == Rail.Held.BOTH_EDGES
                || rail.kind() != Rail.Kind.SOLID
                || rail.tensionAcross().isEmpty()) {
            return OptionalDouble.empty();
        }
        double works = Math.min(2 * rail.above(), nearest());
        return OptionalDouble.of(RailRolling.crossGrainStress(
                pull, rail.above(), works, rail.thickness().metres()));
    }

    /** Stress along the grain where the sides alone hold the rail; empty elsewhere, and where its strength is not known. */
    private static OptionalDouble bending(Rail rail, Asked asked) {
        return rail.held() != Rail.Held.ENDS || rail.along().rupture().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(RailBetweenSides.stress(
                        asked.levelMoment(),
                        asked.uprightMoment(),
                        rail.depth().orElseThrow().metres(),
                        rail.thickness().metres()));
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

    /** What the joint at each end must carry with heavy contents, if the sides alone hold the rail. */
    public Force heavyEndForce() {
        return model().at(spread -> Reliability.NINETEEN_IN_TWENTY).endForce();
    }

    /** Every check holds, as expected and with heavy contents. */
    boolean holds() {
        Model<Holds> model = model();
        return model.at(Draw.AS_PLANNED).checks().stream().allMatch(Check::holds)
                && model.at(spread -> Reliability.NINETEEN_IN_TWENTY).checks().stream()
                        .allMatch(Check::holds);
    }

    @Override
    public List<Finding> findings() {
        return List.of(new RailWords(this).finding());
    }
}
