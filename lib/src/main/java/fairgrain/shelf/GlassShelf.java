package fairgrain.shelf;

import fairgrain.bending.EdgePointLoad;
import fairgrain.bending.ShelfPins;
import fairgrain.bending.ThinPlate;
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
import fairgrain.material.Glass;
import fairgrain.part.Setting;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.List;

/**
 * Does a glass shelf hold, and does it sag too far to look at? Loads carry the factors of the building code, strengths are its design strengths:
 * the two belong together.
 *
 * @param part the shelf, as the maker calls it
 * @param glass kind and edges, both known
 * @param thickness of one sheet, as it is sold
 * @param cut whether it has holes or notches
 */
public record GlassShelf(
        String part, Glass glass, Length thickness, boolean cut, GlassRest rest, GlassUse use, Setting in)
        implements Question<GlassShelf.Held> {

    public static final Limits THICKNESS = new Limits("thickness of the glass", 0.002, 0.03, "m");

    public static final Citation SOURCE = ThinPlate.SOURCE;
    static final Citation FACTORS = Citation.of("en1990", "1.35 on own weight, 1.5 on contents", Basis.MEMORY);
    static final Citation HALF_A_MINUTE = Citation.of("en16612", "load duration table, 30 s", Basis.SECOND_HAND);
    static final Citation BORROWED =
            Citation.of("own", "strength of window glass borrowed for shelves", Basis.JUDGEMENT);
    static final Citation BEARING_SOURCE =
            Citation.of("trade-page", "glass shelves: 4 mm least bearing; 1.5 t and 12 mm", Basis.SECOND_HAND);
    static final Citation TIPPING = Citation.of(
            "en14749", "clause 5.3.3: 100 N, 25 mm behind the front edge of the empty shelf", Basis.SECOND_HAND);

    static final double OWN_FACTOR = 1.35;
    static final double CONTENTS_FACTOR = 1.5;
    static final double PUSHED = 0.89; // k_mod of half a minute

    /** Below this it can slip off. */
    static final Length LEAST_BEARING = Length.mm(4);

    static final double TIPPING_PUSH = 100; // N
    static final double TIPPING_PLACE = 0.025; // m

    private static final Length GOOD_BEARING = Length.mm(12);
    private static final double GOOD_BEARING_BY_THICKNESS = 1.5;
    private static final double INTERLAYER = 0.8; // kg/m2, from memory: 0.76 mm of plastic
    private static final double MODEL_SD = 0.03; // judgement: plate and finite elements agree within 1 to 2 %
    private static final int LOAD = 0;
    private static final int MODEL_ERROR = 1;

    public GlassShelf {
        THICKNESS.check(thickness);
        requireMade(glass, thickness);
    }

    /** Refuses a thickness that nobody makes, and names those that are made. */
    public static void requireMade(Glass glass, Length thickness) {
        if (glass.madeAs(thickness).isEmpty()) {
            throw new IllegalArgumentException(glass.kind().word() + " glass is made "
                    + String.join(
                            ", ",
                            glass.thicknesses().stream().map(GlassShelf::inMm).toList())
                    + " mm thick, but was " + inMm(thickness) + " mm");
        }
    }

    private static String inMm(Length length) {
        double tenths = Math.rint(length.toMm() * 10) / 10;
        return tenths == Math.rint(tenths) ? Long.toString((long) tenths) : Double.toString(tenths);
    }

    /**
     * The shelf in numbers.
     *
     * @param sag the largest, under what is expected to stand on it
     * @param field service stress of all that stays away from the pins, loads without factors [Pa]
     * @param overPins the same on top over the pins; nothing where there are none [Pa]
     */
    public record Held(Length sag, double field, double overPins, List<Check> checks) implements Answer {
        public Held {
            checks = List.copyOf(checks);
        }
    }

    @Override
    public List<Spread> spreads() {
        return List.of(
                new Spread(
                        "contents/" + use.load().said(),
                        "how heavy the contents are",
                        use.load().cv()),
                new Spread("glass shelves/model", "how far the plate formula is off", MODEL_SD));
    }

    @Override
    public Model<Held> model() {
        return model(GlassPlate.of(glass, rest));
    }

    /** For a plate that was worked out before: it is the same whatever the thickness and the loads. */
    Model<Held> model(GlassPlate plate) {
        double t = reckonedThickness();
        int plies = glass.plies();
        double own = pressure(ownPerLength()) / plies;
        double heavy = pressure(use.load().heavy()) / plies;
        double thing = use.heavyThing().weight().newtons() / plies;
        double push = use.push().newtons() / plies;
        double factored = OWN_FACTOR * own + CONTENTS_FACTOR * heavy;
        double stays = largest(plate, factored, CONTENTS_FACTOR * thing, t);
        double pushed = largest(plate, factored, CONTENTS_FACTOR * (thing + push), t);
        double field = plate.inTheField(own + heavy, thing, t);
        double overPins = plate.overPins(own + heavy, thing, t);
        double limit = use.limit().afterYears(rest.span().metres());
        List<Check> sure = new ArrayList<>();
        sure.add(Check.of(
                "stress of what stays, loads with their factors, against the design strength for good",
                stays,
                glass.permanentStrength(),
                Dimension.STRESS));
        sure.add(Check.of(
                "the same with a push at the front edge, against the design strength for half a minute",
                pushed,
                glass.designStrength(PUSHED),
                Dimension.STRESS));
        sure.add(Check.of(
                "bearing on each support, against the 4 mm below which it can slip off",
                LEAST_BEARING.metres(),
                rest.bearing().metres(),
                Dimension.LENGTH));
        if (rest.isOnPins()) {
            sure.add(Check.of(
                    "100 N pushed down 25 mm behind the front edge of the empty shelf, against what tips it over its"
                            + " front pins",
                    TIPPING_PUSH,
                    Math.min(
                            ShelfPins.tippingLoad(
                                    mass() * Force.STANDARD_GRAVITY,
                                    rest.depth().metres(),
                                    rest.pinsIn().metres(),
                                    TIPPING_PLACE),
                            GlassUse.PUSH.most()),
                    Dimension.FORCE));
        }
        double expected = pressure(use.load().expected()) / plies;
        return draw -> {
            double sag = Scatter.factor(MODEL_SD, draw.of(MODEL_ERROR))
                    * plate.sag(own + expected * Scatter.factor(use.load().cv(), draw.of(LOAD)), thing, t);
            List<Check> checks = new ArrayList<>();
            checks.add(Check.of("sag, against " + limitWords(), sag, limit, Dimension.LENGTH));
            checks.addAll(sure);
            return new Held(ShelfSag.sag(sag), field, overPins, checks);
        };
    }

    private String limitWords() {
        double l = rest.span().metres();
        double over = l / use.limit().afterYears(l);
        return "1/" + Math.round(over) + " of the span";
    }

    private static double largest(GlassPlate plate, double pressure, double force, double thickness) {
        return Math.max(plate.inTheField(pressure, force, thickness), plate.overPins(pressure, force, thickness));
    }

    /** The thinner of what was entered and of the size that it is sold as [m]. */
    double reckonedThickness() {
        return Math.min(
                thickness.metres(), glass.madeAs(thickness).orElse(thickness).metres());
    }

    /** Own mass by length along the span [kg/m]. */
    private double ownPerLength() {
        return areaMass(glass, thickness) * rest.depth().metres();
    }

    private double pressure(double perLength) {
        return perLength * Force.STANDARD_GRAVITY / rest.depth().metres();
    }

    /** One shelf, empty [kg]. */
    public double mass() {
        return ownPerLength() * rest.length();
    }

    /** Mass by area [kg/m²]. */
    private static double areaMass(Glass glass, Length thickness) {
        return glass.plies() * thickness.metres() * glass.density() + (glass.plies() > 1 ? INTERLAYER : 0);
    }

    /** What a good bearing is. */
    Length goodBearing() {
        Length byThickness = thickness.times(GOOD_BEARING_BY_THICKNESS * glass.plies());
        return byThickness.compareTo(GOOD_BEARING) > 0 ? byThickness : GOOD_BEARING;
    }

    /** The likely worst margin of sag and stress, in parts of each limit: what span, thickness and load can mend. */
    double plannedMargin(GlassPlate plate) {
        Model<Held> model = model(plate);
        double least = Double.POSITIVE_INFINITY;
        for (int check = 0; check < 3; check++) {
            Draw worst = check == 0 ? Reliability.worst(model, spreads(), check, in.deviations()) : Draw.AS_PLANNED;
            Check planned = model.at(worst).checks().get(check);
            least = Math.min(least, planned.margin() / planned.capacity());
        }
        return least;
    }

    /** Whether no check fails, those among them that neither span nor thickness nor load can mend. */
    boolean holds(GlassPlate plate) {
        return plannedMargin(plate) >= 0
                && model(plate).at(Draw.AS_PLANNED).checks().stream().allMatch(Check::holds);
    }

    @Override
    public List<Finding> findings() {
        return List.of(new GlassShelfWords(this).finding());
    }

    public GlassShelf span(Length other) {
        return new GlassShelf(part, glass, thickness, cut, rest.span(other), use, in);
    }

    public GlassShelf thickness(Length other) {
        return new GlassShelf(part, glass, other, cut, rest, use, in);
    }

    public GlassShelf load(ShelfLoad other) {
        return new GlassShelf(part, glass, thickness, cut, rest, use.load(other), in);
    }

    Evidence evidence() {
        Evidence all = Evidence.of(
                        glass.source(),
                        Glass.SOURCE,
                        BORROWED,
                        FACTORS,
                        HALF_A_MINUTE,
                        SOURCE,
                        EdgePointLoad.SOURCE,
                        BEARING_SOURCE)
                .and(use.limit().evidence())
                .and(use.load().evidence());
        return rest.isOnPins() ? all.and(GlassPlate.AT_PINS, ShelfPins.SOURCE, TIPPING) : all;
    }
}
