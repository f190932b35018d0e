package fairgrain.shelf;

import fairgrain.bending.CreepFactor;
import fairgrain.finding.Answer;
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
    private final Sags own;
    private final Sags spread;
    private final Sags things;
    private final boolean single;
    private final List<Check> strength;
    private final SagChecks limits;
    private final double thickness;
    private final double elasticityCv;
    private final double loadCv;
    private final double creep;
    private final double creepSd;
    private final int sagChecks;

    /** One check of an answer, for planning. */
    private record One(Check check) implements Answer {
        @Override
        public List<Check> checks() {
            return List.of(check);
        }
    }

    SagModel(ShelfSag shelf) {
        this(shelf, Bends.of(shelf));
    }

    /** For a shelf that was solved already, whatever stands on it now in the same places. */
    SagModel(ShelfSag shelf, Bends bends) {
        this.shelf = shelf;
        ShelfWeights weights = new ShelfWeights(shelf);
        own = bends.under(weights.own());
        spread = bends.under(weights.spread(shelf.load().expected()));
        single = !shelf.loads().things().isEmpty();
        things = single ? bends.under(weights.things(1)) : Sags.NONE;
        strength = new ShelfStrength(shelf, bends).checks();
        double overhang = shelf.supports().overhang();
        limits = new SagChecks(shelf.limit(), shelf.bay(), overhang);
        sagChecks = overhang > 0 ? 4 : 2;
        thickness = shelf.thickness().metres();
        elasticityCv = shelf.stock().elasticityCv();
        loadCv = shelf.load().cv();
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

    private Sags first(Draw draw) {
        double thicker = 1 + THICKNESS_SD * draw.of(THICK) / thickness;
        double scale = Scatter.factor(MODEL_SD, draw.of(MODEL_ERROR))
                / (Scatter.factor(elasticityCv, draw.of(STIFFNESS)) * thicker * thicker * thicker);
        Sags all = own.times(thicker).plus(spread.times(Scatter.factor(loadCv, draw.of(LOAD))));
        return (single ? all.plus(things.times(Scatter.factor(Thing.CV, draw.of(THINGS)))) : all).times(scale);
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

    /** The likely worst case of each sag. */
    List<Draw> worst() {
        List<Spread> spreads = shelf.spreads();
        List<Draw> all = new ArrayList<>();
        for (int check = 0; check < sagChecks; check++) {
            int one = check;
            Model<One> only = draw -> new One(sag(one, first(draw), draw));
            all.add(Reliability.worst(only, spreads, 0, shelf.in().deviations()));
        }
        return all;
    }

    /** Each check at its own likely worst case, the expected one beside it; in the order of the answer. */
    List<Outcome> outcomes() {
        List<Outcome> all = new ArrayList<>();
        for (Draw worst : worst()) {
            int check = all.size();
            all.add(new Outcome(sag(check, first(worst), worst), sag(check, first(Draw.AS_PLANNED), Draw.AS_PLANNED)));
        }
        strength.forEach(check -> all.add(Outcome.certain(check)));
        return all;
    }

    /** The likely worst margin of all checks, in parts of each limit. */
    double plannedMargin() {
        return margin(worst());
    }

    /** The least margin of all checks in the cases given for the sags, in parts of each limit. */
    double margin(List<Draw> worst) {
        double least = Double.POSITIVE_INFINITY;
        for (Check check : strength) {
            least = Math.min(least, check.margin() / check.capacity());
        }
        for (int check = 0; check < sagChecks; check++) {
            Draw draw = worst.get(check);
            Check sag = sag(check, first(draw), draw);
            least = Math.min(least, sag.margin() / sag.capacity());
        }
        return least;
    }
}
