package fairgrain.shelf;

import fairgrain.bending.CreepFactor;
import fairgrain.finding.Check;
import fairgrain.finding.Draw;
import fairgrain.finding.Model;
import fairgrain.finding.Outcome;
import fairgrain.finding.Reliability;
import fairgrain.finding.Spread;
import java.util.ArrayList;
import java.util.List;

/** A shelf solved once; what scatters only scales the sags. Strengths stay as they are: what scatters is in the allowed stresses. */
final class SagModel implements Model<ShelfSag.Sag> {
    private static final double MODEL_SD = 0.07;
    private static final double MODEL_SCATTER = Scatter.ofLogarithm(MODEL_SD);
    private static final double THICKNESS_SD = 0.0002; // m
    private static final int STIFFNESS = 0;
    private static final int LOAD = 1;
    private static final int CREEP = 2;
    private static final int MODEL_ERROR = 3;
    private static final int THICK = 4;
    private static final int THINGS = 5;
    private static final int TODAY = 0;
    private static final int LATER = 1;
    private static final int TIP_TODAY = 2;

    private final ShelfSag shelf;
    private final SolvedShelf solved;
    private final Sags own;
    private final Sags spread;
    private final Sags things;
    private final boolean single;
    private final List<Check> strength;
    private final SagChecks limits;
    private final double thickness;
    private final double stiffnessScatter;
    private final double loadScatter;
    private final double creep;
    private final double creepSd;
    private final int sagChecks;

    SagModel(ShelfSag shelf) {
        this(new SolvedShelf(shelf));
    }

    SagModel(SolvedShelf solved) {
        this.solved = solved;
        shelf = solved.shelf();
        own = solved.own();
        spread = solved.spread();
        single = !shelf.loads().things().isEmpty();
        things = solved.things();
        strength = new ShelfStrength(solved).checks();
        double overhang = shelf.supports().overhang();
        limits = new SagChecks(shelf.limit(), shelf.bay(), overhang);
        sagChecks = overhang > 0 ? 4 : 2;
        thickness = shelf.thickness().metres();
        stiffnessScatter = Scatter.ofLogarithm(shelf.stock().elasticityCv());
        loadScatter = Scatter.ofLogarithm(shelf.load().cv());
        creep = shelf.creep().expected();
        creepSd = creepSd(shelf);
    }

    static List<Spread> spreads(ShelfSag shelf) {
        String part = shelf.part();
        List<Spread> spreads = new ArrayList<>(List.of(
                new Spread(
                        part + "/stiffness",
                        "how stiff this board is",
                        shelf.stock().elasticityCv()),
                new Spread(
                        "contents/" + shelf.load().said(),
                        "how heavy the contents are",
                        shelf.load().cv()),
                new Spread(part + "/creep", "how much the sag grows", creepSd(shelf)),
                new Spread("shelves/model", "how far the beam formula is off", MODEL_SD),
                new Spread(part + "/thickness", "how thick it really is", THICKNESS_SD)));
        if (!shelf.loads().things().isEmpty()) {
            spreads.add(new Spread(part + "/things", "how heavy the single things are", Thing.CV));
        }
        return List.copyOf(spreads);
    }

    private static double creepSd(ShelfSag shelf) {
        return (shelf.creep().cautious() - shelf.creep().expected()) / Reliability.NINETEEN_IN_TWENTY;
    }

    @Override
    public ShelfSag.Sag at(Draw draw) {
        Sags first = first(draw);
        double after = CreepFactor.finalSag(Math.min(first.largest(), ShelfSag.SPAN.most()), 0, creep(draw), 1);
        List<Check> more = new ArrayList<>();
        for (int check = TIP_TODAY; check < sagChecks; check++) {
            more.add(sag(check, first, draw));
        }
        more.addAll(strength);
        return new ShelfSag.Sag(
                ShelfSag.sag(first.largest()),
                ShelfSag.sag(after),
                ShelfSag.sag(first.front()),
                ShelfSag.sag(first.middle()),
                ShelfSag.sag(first.back()),
                sag(TODAY, first, draw),
                sag(LATER, first, draw),
                more);
    }

    /** What each set of loads counts in a draw; sags are sums of these times what each does by itself. */
    private record Shares(double own, double spread, double things) {}

    private Shares shares(Draw draw) {
        double thicker = 1 + THICKNESS_SD * draw.of(THICK) / thickness;
        double scale = Math.exp(MODEL_SCATTER * draw.of(MODEL_ERROR) - stiffnessScatter * draw.of(STIFFNESS))
                / (thicker * thicker * thicker);
        return new Shares(
                scale * thicker,
                scale * Math.exp(loadScatter * draw.of(LOAD)),
                single ? scale * Scatter.factor(Thing.CV, draw.of(THINGS)) : 0);
    }

    private Sags first(Draw draw) {
        Shares shares = shares(draw);
        Sags all = own.times(shares.own).plus(spread.times(shares.spread));
        return single ? all.plus(things.times(shares.things)) : all;
    }

    /** One of the sags of the checks, without its words. */
    private double sag(int check, Draw draw) {
        Shares shares = shares(draw);
        boolean tip = check >= TIP_TODAY;
        double first = shares.own * (tip ? own.tip() : own.largest())
                + shares.spread * (tip ? spread.tip() : spread.largest())
                + shares.things * (tip ? things.tip() : things.largest());
        return check % 2 == TODAY ? first : first * (1 + creep(draw));
    }

    private double creep(Draw draw) {
        return Math.max(0, creep + creepSd * draw.of(CREEP));
    }

    private Check sag(int check, Sags first, Draw draw) {
        return switch (check) {
            case TODAY -> limits.today(first.largest());
            case LATER -> limits.later(first.largest() * (1 + creep(draw)));
            case TIP_TODAY -> limits.tipToday(first.tip());
            default -> limits.tipLater(first.tip() * (1 + creep(draw)));
        };
    }

    /** The largest sag after so long [m]. */
    double after(Draw draw, double seconds) {
        return sag(TODAY, draw) * (1 + CreepFactor.at(creep(draw), seconds));
    }

    /** The likely worst case of each sag. */
    List<Draw> worst() {
        int spreads = single ? THINGS + 1 : THINGS;
        List<Draw> all = new ArrayList<>();
        for (int check = 0; check < sagChecks; check++) {
            int one = check;
            all.add(Reliability.worst(
                    draw -> -sag(one, draw), spreads, shelf.in().deviations()));
        }
        return all;
    }

    /** Each check at its own likely worst case as given, the expected one beside it; in the order of the answer. */
    List<Outcome> outcomes(List<Draw> worst) {
        List<Outcome> all = new ArrayList<>();
        for (Draw draw : worst) {
            int check = all.size();
            all.add(new Outcome(sag(check, first(draw), draw), sag(check, first(Draw.AS_PLANNED), Draw.AS_PLANNED)));
        }
        strength.forEach(check -> all.add(Outcome.certain(check)));
        return all;
    }

    /** The least margin of all checks in the cases given for the sags, in parts of each limit. */
    double margin(List<Draw> worst) {
        double least = Double.POSITIVE_INFINITY;
        for (Check check : strength) {
            least = Math.min(least, check.margin() / check.capacity());
        }
        for (int check = 0; check < sagChecks; check++) {
            least = Math.min(least, 1 - sag(check, worst.get(check)) / limits.of(check));
        }
        return least;
    }

    /** The likely worst margin of all checks, in parts of each limit. */
    double plannedMargin() {
        return margin(worst());
    }

    SolvedShelf solved() {
        return solved;
    }
}
