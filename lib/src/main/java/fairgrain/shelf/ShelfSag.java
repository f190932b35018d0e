package fairgrain.shelf;

import fairgrain.bending.BendingStress;
import fairgrain.bending.RectangularSection;
import fairgrain.bending.UniformLoad;
import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Draw;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.finding.Spread;
import fairgrain.part.Setting;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.List;
import java.util.Optional;

/**
 * Will a solid shelf, loaded evenly, stay straight enough and hold?
 *
 * @param part the shelf, as the maker calls it
 * @param stock what it is made of
 * @param span between its supports
 * @param depth front to back
 * @param thickness as measured
 * @param support how its ends are held
 * @param load what stands on it
 * @param limit how far it may sag
 * @param in the setting
 */
public record ShelfSag(
        String part,
        ShelfStock stock,
        Length span,
        Length depth,
        Length thickness,
        Support support,
        ShelfLoad load,
        SagLimit limit,
        Setting in)
        implements Question<ShelfSag.Sag> {

    public static final Limits SPAN = new Limits("span", 0.05, 3, "m");
    public static final Limits DEPTH = new Limits("shelf depth", 0.03, 1, "m");
    public static final Limits THICKNESS = new Limits("shelf thickness", 0.003, 0.1, "m");

    public static final Citation SOURCE = Citation.of("gtr190", "equation 9-2 and Table 9-1", Basis.READ);
    static final Citation MODEL = Citation.of("own", "plate against beam, 1.05 for four pins", Basis.DERIVED);
    static final Citation SPREAD =
            Citation.of("own", "spread of sag: stiffness, load, creep, model, thickness", Basis.JUDGEMENT);

    /** A free-edged shelf on four pins sags up to so much more than a beam. */
    static final double PLATE_FACTOR = 1.05;

    private static final double MODEL_SD = 0.07;
    private static final double THICKNESS_SD = 0.0002; // m
    private static final int STIFFNESS = 0;
    private static final int LOAD = 1;
    private static final int CREEP = 2;
    private static final int MODEL_ERROR = 3;
    private static final int THICK = 4;

    public ShelfSag {
        SPAN.check(span);
        DEPTH.check(depth);
        THICKNESS.check(thickness);
        if (stock.creep() == null) {
            throw new IllegalArgumentException("no creep is known for " + stock.name() + " in such a place");
        }
    }

    /**
     * The shelf in numbers.
     *
     * @param firstDay sag at mid-span on the first day
     * @param afterYears sag at mid-span after years
     * @param today first-day sag against its limit
     * @param later sag after years against its limit
     * @param stress bending stress under the heavy load against what is allowed; empty if no strength is known
     */
    public record Sag(Length firstDay, Length afterYears, Check today, Check later, Optional<Check> stress)
            implements Answer {
        @Override
        public List<Check> checks() {
            return stress.map(s -> List.of(today, later, s)).orElse(List.of(today, later));
        }
    }

    @Override
    public List<Spread> spreads() {
        return List.of(
                new Spread(part + "/stiffness", "how stiff this board is", stock.elasticityCv()),
                new Spread("contents/" + load.said(), "how heavy the contents are", load.cv()),
                new Spread(part + "/creep", "how much the sag grows", creepSd()),
                new Spread("shelves/model", "how far the beam formula is off", MODEL_SD),
                new Spread(part + "/thickness", "how thick it really is", THICKNESS_SD));
    }

    @Override
    public Model<Sag> model() {
        double l = span.metres();
        double b = depth.metres();
        double firstLimit = limit.firstDay(l);
        double laterLimit = limit.afterYears(l);
        Optional<Check> stress = stress();
        Creep creep = creep();
        return draw -> {
            double t = thickness.metres() + THICKNESS_SD * draw.of(THICK);
            double own = stock.density() * b * t * Force.STANDARD_GRAVITY;
            double contents = load.expected() * factor(load.cv(), draw.of(LOAD)) * Force.STANDARD_GRAVITY;
            double e = stock.elasticity() * factor(stock.elasticityCv(), draw.of(STIFFNESS));
            double first = PLATE_FACTOR
                    * factor(MODEL_SD, draw.of(MODEL_ERROR))
                    * UniformLoad.deflection(own + contents, l, e, RectangularSection.secondMoment(b, t));
            double later = first * (1 + Math.max(0, creep.expected() + creepSd() * draw.of(CREEP)));
            return new Sag(
                    sag(first),
                    sag(later),
                    Check.of("sag on the first day, against 1/600 of the span", first, firstLimit, Dimension.LENGTH),
                    Check.of("sag after years, against " + laterWords(), later, laterLimit, Dimension.LENGTH),
                    stress);
        };
    }

    /** A sag that the formula puts beyond the longest shelf means no more than that it is far too much. */
    static Length sag(double metres) {
        return new Length(Math.min(metres, SPAN.most()));
    }

    private Optional<Check> stress() {
        if (stock.strength() == null) {
            return Optional.empty();
        }
        double b = depth.metres();
        double t = thickness.metres();
        double w = (stock.density() * b * t + load.heavy()) * Force.STANDARD_GRAVITY;
        double moment = UniformLoad.largestMoment(UniformLoad.Ends.SIMPLE, w, span.metres());
        double demand = BendingStress.bending(moment, RectangularSection.sectionModulus(b, t));
        return Optional.of(Check.of(
                "bending stress under the heavy load, against what is allowed for good",
                demand,
                stock.strength(),
                Dimension.STRESS));
    }

    private String laterWords() {
        double over = span.metres() / limit.afterYears(span.metres());
        return limit == SagLimit.OPEN ? "1/300 of the span" : over > 200.5 ? "6 mm" : "1/200 of the span";
    }

    /** A factor whose logarithm spreads normally, so that it never turns negative. */
    private static double factor(double cv, double deviations) {
        return Math.exp(Math.sqrt(Math.log1p(cv * cv)) * deviations);
    }

    private double creepSd() {
        return (creep().cautious() - creep().expected()) / Reliability.NINETEEN_IN_TWENTY;
    }

    private Creep creep() {
        Creep known = stock.creep();
        if (known == null) {
            throw new IllegalStateException("a shelf without creep was refused");
        }
        return known;
    }

    @Override
    public List<Finding> findings() {
        return List.of(new ShelfWords(this).finding());
    }

    /** The likely worst margin of all checks, in parts of each limit. */
    double plannedMargin() {
        Model<Sag> model = model();
        int checks = model.at(Draw.AS_PLANNED).checks().size();
        double least = Double.POSITIVE_INFINITY;
        for (int check = 0; check < checks; check++) {
            Check planned = model.at(Reliability.worst(model, spreads(), check, in.deviations()))
                    .checks()
                    .get(check);
            least = Math.min(least, planned.margin() / planned.capacity());
        }
        return least;
    }

    public ShelfSag span(Length other) {
        return new ShelfSag(part, stock, other, depth, thickness, support, load, limit, in);
    }

    public ShelfSag thickness(Length other) {
        return new ShelfSag(part, stock, span, depth, other, support, load, limit, in);
    }

    Evidence evidence() {
        return stock.evidence()
                .and(load.evidence())
                .and(creep().evidence())
                .and(SOURCE, MODEL, SPREAD, SagLimit.FIRST_DAY, SagLimit.AFTER_YEARS);
    }
}
