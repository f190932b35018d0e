package fairgrain.shelf;

import fairgrain.bending.SeriesShelf;
import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Question;
import fairgrain.finding.Spread;
import fairgrain.part.Setting;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Will a shelf stay straight enough and hold?
 *
 * @param part the shelf, as the maker calls it
 * @param stock what the board is made of
 * @param section board, strips and taper
 * @param supports how it is held
 * @param loads what stands on it
 * @param limit how far it may sag
 * @param in the setting
 * @param others woods and sheets that could be used instead; asked for only if it fails
 */
public record ShelfSag(
        String part,
        ShelfStock stock,
        Section section,
        Supports supports,
        Loads loads,
        SagLimit limit,
        Setting in,
        Supplier<List<ShelfStock>> others)
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

    private static final double FLATTEST_STOCKY = 0.25; // thickness by depth: beyond, a board is no plate

    public ShelfSag {
        stock.knownCreep();
        require(section, supports, loads);
    }

    /** Refuses a shelf for which there is no model here, and loads that are off it. */
    public static void require(Section section, Supports supports, Loads loads) {
        loads.on(section, supports);
        boolean plain = section.isPlain() && supports.back() == BackEdge.FREE;
        if (!section.isPlain() && supports.overhang() > 0) {
            throw new IllegalArgumentException(
                    "an overhanging shelf with a strip or a taper is in no model here; leave one of them out");
        }
        Row row = loads.row();
        if (row != null && (supports.overhang() > 0 || !isFlat(section))) {
            throw new IllegalArgumentException(
                    "a row flush with an edge is in no model here on an overhanging shelf, nor on one that is less than"
                            + " four times as deep as it is thick; leave its depth out, and it counts as spread");
        }
        plain &= row == null;
        if (!plain && !supports.middle().isEmpty() && !loads.isEven()) {
            throw new IllegalArgumentException(
                    "a shelf with a strip, a taper, a row flush with an edge or a held back edge counts bay by bay"
                            + " where it has middle supports, and single things or a part that is filled are then in no"
                            + " model here; enter each bay as a shelf");
        }
        if ((supports.back() != BackEdge.FREE || !supports.brackets().isEmpty()) && !isFlat(section)) {
            throw new IllegalArgumentException(
                    "a shelf with a held back edge or brackets must be at least four times as deep as it is thick");
        }
        for (Bracket bracket : supports.brackets()) {
            double y = bracket.fromFront().metres();
            if (!(y >= Bracket.BEARS / 2 && y <= section.depth().metres() - Bracket.BEARS / 2)) {
                throw new IllegalArgumentException("a bracket must bear under the shelf, 10 mm from its edges or more");
            }
        }
        Length pins = supports.pinsIn();
        if (pins != null
                && !(pins.metres() >= 0
                        && pins.metres() < 0.45 * section.depth().metres())) {
            throw new IllegalArgumentException("the front pins must be in front of the rear ones: less than 0.45 of the"
                    + " depth from the front edge");
        }
    }

    /** A board on two ends, loaded evenly. */
    public ShelfSag(
            String part,
            ShelfStock stock,
            Length span,
            Length depth,
            Length thickness,
            Support support,
            ShelfLoad load,
            SagLimit limit,
            Setting in) {
        this(
                part,
                stock,
                Section.plain(depth, thickness),
                Supports.at(support, span),
                Loads.even(load),
                limit,
                in,
                List::of);
    }

    /**
     * The shelf in numbers.
     *
     * @param firstDay largest sag on the first day
     * @param afterYears the same after years
     * @param front sag of the front edge at mid-span on the first day
     * @param middle the same halfway between the edges
     * @param back the same of the back edge
     * @param today first-day sag against its limit
     * @param later sag after years against its limit
     * @param more overhangs, then strength, as far as it is known
     */
    public record Sag(
            Length firstDay,
            Length afterYears,
            Length front,
            Length middle,
            Length back,
            Check today,
            Check later,
            List<Check> more)
            implements Answer {
        @Override
        public List<Check> checks() {
            List<Check> all = new ArrayList<>(2 + more.size());
            all.add(today);
            all.add(later);
            all.addAll(more);
            return all;
        }

        /** Bending stress of the board under the heavy load; empty if no strength is known. */
        public Optional<Check> stress() {
            return more.stream()
                    .filter(check -> check.dimension() == Dimension.STRESS)
                    .findFirst();
        }
    }

    @Override
    public List<Spread> spreads() {
        return SagModel.spreads(this);
    }

    @Override
    public Model<Sag> model() {
        return new SagModel(this);
    }

    /** A sag that the formula puts beyond the longest shelf means no more than that it is far too much. */
    static Length sag(double metres) {
        return new Length(Math.min(metres, SPAN.most()));
    }

    /** Board and strips creep together; the more willing one is taken for all. */
    Creep creep() {
        Creep most = stock.knownCreep();
        for (Optional<EdgePiece> strip : List.of(section.frontStrip(), section.backStrip())) {
            Creep other = strip.map(s -> s.stock().knownCreep()).orElse(most);
            most = other.cautious() > most.cautious() ? other : most;
        }
        return most;
    }

    @Override
    public List<Finding> findings() {
        return List.of(new ShelfWords(this).finding());
    }

    @Override
    public List<Finding> brief() {
        return List.of(new ShelfWords(this).brief());
    }

    /** The likely worst margin of all checks, in parts of each limit. */
    double plannedMargin() {
        return new SagModel(this).plannedMargin();
    }

    public Length span() {
        return supports.span();
    }

    public Length depth() {
        return section.depth();
    }

    public Length thickness() {
        return section.thickness();
    }

    public Support support() {
        return supports.ends();
    }

    public ShelfLoad load() {
        return loads.spread();
    }

    /** The longest distance between two neighbouring supports, against which its sag is held [m]. */
    double bay() {
        return supports.longestBay();
    }

    /** Whether it is thin enough for its depth to count as a plate. */
    boolean isFlat() {
        return isFlat(section);
    }

    private static boolean isFlat(Section section) {
        return section.thickness().metres() <= FLATTEST_STOCKY * section.depth().metres();
    }

    public ShelfSag span(Length other) {
        double by = other.metres() / span().metres();
        return with(stock, section, supports.span(other), loads.span(by, other.metres()));
    }

    public ShelfSag thickness(Length other) {
        return with(stock, section.thickness(other), supports, loads);
    }

    public ShelfSag load(ShelfLoad other) {
        return with(stock, section, supports, loads.spread(other));
    }

    public ShelfSag stock(ShelfStock other) {
        return with(other, section, supports, loads);
    }

    ShelfSag front(EdgePiece strip) {
        return with(stock, section.front(strip), supports, loads);
    }

    ShelfSag middle(List<Length> at) {
        return with(stock, section, supports.middle(at), loads);
    }

    /** The same board on the same supports, without single things and filled all along. */
    ShelfSag evenly() {
        return loads.isPlain() ? this : with(stock, section, supports, Loads.even(load()));
    }

    private ShelfSag with(ShelfStock of, Section cut, Supports held, Loads carried) {
        return new ShelfSag(part, of, cut, held, carried, limit, in, others);
    }

    Evidence evidence() {
        Evidence all = stock.evidence()
                .and(loads.evidence())
                .and(creep().evidence())
                .and(SOURCE, MODEL, SPREAD)
                .and(limit.evidence());
        for (Optional<EdgePiece> strip : List.of(section.frontStrip(), section.backStrip())) {
            all = strip.isEmpty() ? all : all.and(strip.get().stock().evidence());
        }
        if (Bends.twists(this)) {
            all = all.and(stock.ratios().evidence()).and(SeriesShelf.SOURCE, TwistingShelf.SHEAR);
        }
        if (supports.back() == BackEdge.ON_CLEAT) {
            all = all.and(TwistingShelf.LOOSE_CLEAT);
        }
        if (loads.hand() != null) {
            all = all.and(LongTerm.FOR_MINUTES);
        }
        return stock.strengths().shear() == null ? all.and(ShelfStrength.SHEAR_UNKNOWN) : all;
    }
}
