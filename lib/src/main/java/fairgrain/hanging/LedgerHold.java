package fairgrain.hanging;

import fairgrain.fastener.ClearWood;
import fairgrain.fastener.LoadDuration;
import fairgrain.fastener.RailBetweenSides;
import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Caution;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Draw;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Model;
import fairgrain.finding.Outcome;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.finding.Remedy;
import fairgrain.finding.Spread;
import fairgrain.finding.Words;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Does a ledger under the cabinet carry it? It is judged for all of the weight, pressing on its outer edge; it keeps nothing from
 * tipping out of the wall.
 *
 * @param hanging the cabinet, held in by the screws above
 * @param ledger the ledger
 */
public record LedgerHold(Hanging hanging, Ledger ledger) implements Question<LedgerHold.Held> {
    public static final Citation SOURCE =
            Citation.of("own", "all of the weight on the outer edge of a ledger", Basis.DERIVED);

    private static final int MOST_PER_STUD = 6;

    /**
     * In numbers.
     *
     * @param weight on it, heavy
     * @param pull on all its screws, standing
     */
    public record Held(Force weight, Force pull, List<Check> checks) implements Answer {}

    @Override
    public String part() {
        return hanging.part();
    }

    @Override
    public List<Spread> spreads() {
        return hanging.spreads();
    }

    @Override
    public Model<Held> model() {
        Fixing fixing = ledger.fixing(hanging.fixing());
        ScrewHold hold = new ScrewStrength(fixing, hanging.gap(), hanging.dampest()).in(hanging.stud());
        ScrewLoads loads = new ScrewLoads(fixing, hanging.cabinet().width(), Length.ZERO);
        return draw -> {
            double heaviness = draw.of(0) / Reliability.NINETEEN_IN_TWENTY;
            List<Check> checks = new ArrayList<>();
            for (LoadCase which : hanging.cases().of(hanging.cabinet())) {
                if (which != LoadCase.EARTHQUAKE) {
                    checks.add(Check.of(
                            "use of the hardest worked screw of the ledger, " + which.word() + ", against all of it",
                            used(which, heaviness, hold, loads),
                            1,
                            Dimension.RATIO));
                    bending(which, heaviness, checks);
                }
            }
            checks.add(Check.of(
                    "least depth of the ledger's screws in the stud, against the depth reached",
                    hold.leastDepth().metres(),
                    hold.depth().metres(),
                    Dimension.LENGTH));
            Rail strip = ledger.strip();
            double edge = BevelledChecks.leastEdge(fixing.screw());
            checks.add(Check.of(
                    "least distance of a screw from the edges of the ledger, against its own",
                    edge,
                    Math.min(strip.below(), strip.above()),
                    Dimension.LENGTH));
            checks.addAll(FixingPlaces.checks(fixing, hanging.stud()));
            Demand standing = rests(LoadCase.STANDING, heaviness, Demand.Side.RIGHT);
            return new Held(
                    new Force(standing.weight()), new Force(standing.pull(strip.below(), 0)), List.copyOf(checks));
        };
    }

    /** The weight of a case on the outer edge of the ledger. */
    private Demand rests(LoadCase which, double heaviness, Demand.Side side) {
        Demand d = hanging.demand(which, heaviness, side);
        double arm = ledger.strip().thickness().metres();
        return new Demand(which, d.even(), d.even() * arm, d.evenTurning(), d.point(), arm, d.pointAt(), 0, 0, side);
    }

    private double used(LoadCase which, double heaviness, ScrewHold hold, ScrewLoads loads) {
        double worst = 0;
        for (Demand.Side side : Demand.Side.values()) {
            Demand demand = rests(which, heaviness, side);
            List<List<ScrewLoads.OnScrew>> ways =
                    which == LoadCase.SCREW_GONE ? loads.oneGone(demand) : List.of(loads.of(demand));
            for (List<ScrewLoads.OnScrew> way : ways) {
                worst = Math.max(worst, Hanging.worst(way, hold, which.duration()));
            }
        }
        return worst;
    }

    private void bending(LoadCase which, double heaviness, List<Check> checks) {
        Rail strip = ledger.strip();
        if (which == LoadCase.SCREW_GONE || strip.along().rupture().isEmpty()) {
            return;
        }
        double worst = 0;
        for (Demand.Side side : Demand.Side.values()) {
            worst = Math.max(worst, moment(hanging.demand(which, heaviness, side)));
        }
        double gain = which.duration().factor() / LoadDuration.PERMANENT.factor();
        checks.add(Check.of(
                "bending of the ledger from stud to stud, " + which.word() + ", against what is allowed",
                RailBetweenSides.stress(
                        0,
                        worst,
                        strip.depth().orElseThrow().metres(),
                        strip.thickness().metres()),
                gain * strip.along().bending(),
                Dimension.STRESS));
    }

    /** What is spread leans in a straight line, for the screws above keep the case level; a person stands at the very end [N·m]. */
    private double moment(Demand demand) {
        double width = hanging.cabinet().width().metres();
        double spread = (demand.even() + 6 * Math.abs(demand.evenTurning()) / width) / width;
        List<Length> studs = hanging.fixing().studs();
        double over = Math.max(
                studs.get(0).metres(), width - studs.get(studs.size() - 1).metres());
        double worst = spread * over * over / 2 + demand.point() * over;
        for (int i = 1; i < studs.size(); i++) {
            double span = studs.get(i).minus(studs.get(i - 1)).metres();
            worst = Math.max(worst, spread * span * span / 8);
        }
        return worst;
    }

    boolean holds() {
        Model<Held> model = model();
        return model.at(Draw.AS_PLANNED).checks().stream().allMatch(Check::holds)
                && model.at(spread -> Reliability.NINETEEN_IN_TWENTY).checks().stream()
                        .allMatch(Check::holds);
    }

    @Override
    public List<Finding> findings() {
        List<Outcome> outcomes = Reliability.outcomes(this, Reliability.NINETEEN_IN_TWENTY);
        Held heavy = model().at(spread -> Reliability.NINETEEN_IN_TWENTY);
        Finding.Draft draft = Finding.about(
                        part(),
                        "does the ledger under it hold",
                        Words.of(
                                "With heavy contents {} rest on the ledger and pull its screws out with {} together.",
                                heavy.weight(),
                                heavy.pull()),
                        new HangingWords(hanging)
                                .evidence()
                                .and(SOURCE, RailBetweenSides.SOURCE, ClearWood.SOURCE, ClearWood.STRENGTH_RATIO)
                                .and(ledger.strip().evidence()))
                .outcomes(outcomes)
                .size("screws of the ledger in each stud", Amount.count(ledger.perStud()))
                .size(
                        "screws above the lower edge of the ledger",
                        new Length(ledger.strip().below()))
                .missing(missing())
                .note("It is judged for all of the weight, as if the case pressed on its outer edge. The screws"
                        + " above are judged for their share beside it and for all of the pull.")
                .note("A ledger keeps nothing from tipping out of the wall: the screws above do.")
                .cautions(
                        Caution.LOCAL_CODE,
                        Caution.STUDS_ONLY,
                        Caution.HIDDEN_SERVICES,
                        Caution.EARTHQUAKE,
                        Caution.DRY_SOUND_WOOD,
                        Caution.ASSUMED_CONTENTS);
        if (!hanging.cases().coverChildren(hanging.cabinet())) {
            draft.cautions(Caution.CHILDREN);
        }
        if (outcomes.stream().anyMatch(outcome -> !outcome.planned().holds())) {
            draft.remedies(moreScrews());
        }
        return List.of(draft.done());
    }

    private List<Missing> missing() {
        List<Missing> all = new ArrayList<>();
        Rail strip = ledger.strip();
        ScrewMissing.head(all, hanging.fixing().screw(), strip);
        ScrewMissing.declared(all, hanging.fixing().screw(), hanging.stud(), hanging.gap());
        if (strip.kind() != Rail.Kind.SOLID || strip.along().rupture().isEmpty()) {
            all.add(new Missing(
                    "how strong the ledger is in bending", "make it of a solid wood whose strength is in the table"));
        }
        if (hanging.stud() instanceof SteelStud) {
            all.add(new Missing(
                    "whether steel studs bear a load at their edge there",
                    "screw the ledger into wood blocking or a plywood backing, and enter that"));
        }
        return all;
    }

    private List<Remedy> moreScrews() {
        for (int n = ledger.perStud() + 1; n <= MOST_PER_STUD; n++) {
            LedgerHold then = new LedgerHold(hanging, ledger.perStud(n));
            if (then.holds()) {
                return List.of(
                        new Remedy(Words.of("Put {} screws in each stud through the ledger.", Amount.count(n)), then));
            }
        }
        return List.of();
    }
}
