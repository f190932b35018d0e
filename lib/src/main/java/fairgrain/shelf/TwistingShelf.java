package fairgrain.shelf;

import fairgrain.bending.EdgeStrip;
import fairgrain.bending.PlateLoad;
import fairgrain.bending.SeriesShelf;
import fairgrain.bending.ShelfBoard;
import fairgrain.bending.ShelfResponse;
import fairgrain.bending.ShelfSupports;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A shelf whose front and back sag differently: strips, a held back edge, brackets, single things. Several bays count as the longest alone. */
final class TwistingShelf implements Bends {
    static final Citation SHEAR = Citation.of(
            "own",
            "series shelf with the table's stiffness raised by its own shear, so that it is not counted twice",
            Basis.DERIVED);
    static final Citation LOOSE_CLEAT =
            Citation.of("own", "back on a loose cleat: front sags 1.35 times as on a fastened one", Basis.JUDGEMENT);

    /** Across the depth; a strip that takes stiffness off at one spot would be bent away from with a higher degree than 1. */
    private static final int BENDING = 4;

    private static final int STRAIGHT = 1;
    private static final double LOOSE = 1.35; // finite elements: 1.34 in MDF, 1.02 in wood
    private static final double STRESS_EVEN = 1.05; // the model is at most 5 % low
    private static final double STRESS_SPOT = 4 / 3.0; // and a quarter low under a patch away from the edges
    private static final double CLEAT_IN = 0.010; // m, middle of a cleat along the back
    private static final double PINS_IN = 37 / 280.0; // of the depth, where it is not said

    private final ShelfBoard board;
    private final SeriesShelf series;
    private final double factor;
    private final double start;
    private final @Nullable AnyBeam bays; // for the forces on the supports, where there are several
    private final List<PlateLoad> brackets = new ArrayList<>();
    private final @Nullable BuiltStrip front;
    private final @Nullable BuiltStrip back;
    private final @Nullable EvenBeam without;

    TwistingShelf(ShelfSag shelf) {
        Supports supports = shelf.supports();
        Section section = shelf.section();
        double b = section.depth().metres();
        double t = section.thickness().metres();
        double span = supports.longestBay();
        start = supports.left().metres() + start(supports, span);
        bays = supports.middle().isEmpty() ? null : new AnyBeam(shelf);
        StiffnessRatios ratios = shelf.stock().ratios();
        double more = 1 + 0.96 / ratios.shearThrough() * t * t / (span * span);
        double e = more * shelf.stock().elasticity();
        board = new ShelfBoard(
                span,
                b,
                t,
                e,
                e * ratios.across(),
                ratios.poisson(),
                e * ratios.shearInPlane(),
                e * ratios.shearThrough());
        front = strip(section.front(), EdgeStrip.Edge.FRONT, t, e, more);
        back = strip(section.back(), EdgeStrip.Edge.BACK, t, e, more);
        List<EdgeStrip> strips = new ArrayList<>();
        if (front != null) {
            strips.add(front.strip());
        }
        if (back != null) {
            strips.add(back.strip());
        }
        Taper taper = section.taper();
        if (taper != null) {
            double left = taper.equal(t);
            strips.add(new EdgeStrip(
                    EdgeStrip.Edge.FRONT, taper.width().metres(), left, (left - t) / 2, e, e * ratios.shearInPlane()));
        }
        series =
                SeriesShelf.of(board, strips, held(supports, b), stiffens(section, shelf.stock()) ? BENDING : STRAIGHT);
        factor = series.modelFactor() * (supports.back() == BackEdge.ON_CLEAT ? LOOSE : 1);
        without = shelf.supports().isPlain() && shelf.loads().isPlain() && stiffens(section, shelf.stock())
                ? new EvenBeam(shelf)
                : null;
        for (Bracket bracket : supports.brackets()) {
            brackets.add(
                    PlateLoad.patch(bracket.at().metres(), bracket.fromFront().metres(), Bracket.BEARS, 0));
        }
    }

    private static @Nullable BuiltStrip strip(
            @Nullable EdgePiece piece, EdgeStrip.Edge edge, double thickness, double elasticity, double more) {
        return piece == null ? null : BuiltStrip.of(piece, edge, thickness, elasticity, more);
    }

    /** Whether the board would be softer without its strips: then the sag of the bare board is a bound too. */
    private static boolean stiffens(Section section, ShelfStock stock) {
        return section.taper() == null
                && stiffens(section.front(), section, stock)
                && stiffens(section.back(), section, stock);
    }

    private static boolean stiffens(@Nullable EdgePiece strip, Section section, ShelfStock stock) {
        return strip == null
                || (strip.glued()
                        && strip.stock().elasticity() >= stock.elasticity()
                        && (strip.place() == EdgePiece.Place.UNDER
                                || strip.height().compareTo(section.thickness()) >= 0));
    }

    private static double start(Supports supports, double longest) {
        List<Double> stands = supports.stands();
        for (int i = 1; i < stands.size(); i++) {
            if (stands.get(i) - stands.get(i - 1) >= longest) {
                return stands.get(i - 1);
            }
        }
        return 0;
    }

    private static ShelfSupports held(Supports supports, double depth) {
        Double said = supports.pinsIn() == null ? null : supports.pinsIn().metres();
        double in = said == null ? PINS_IN * depth : said;
        boolean pins = supports.ends() == Support.PINS;
        if (supports.back() == BackEdge.FREE) {
            return pins ? ShelfSupports.fourPins(in, depth - in) : ShelfSupports.endCleats();
        }
        double cleat = depth - Math.min(CLEAT_IN, depth / 4);
        return pins ? ShelfSupports.frontPinsAndBackCleat(in, cleat) : ShelfSupports.endAndBackCleats(cleat);
    }

    @Override
    public Sags under(List<PlateLoad> loads) {
        return sags(loads, series.solve(inBay(loads), brackets));
    }

    @Override
    public Strains strains(List<PlateLoad> loads) {
        return strains(loads, series.solve(inBay(loads), brackets));
    }

    @Override
    public Bent bent(List<PlateLoad> loads) {
        ShelfResponse response = series.solve(inBay(loads), brackets);
        return new Bent(sags(loads, response), strains(loads, response));
    }

    private Sags sags(List<PlateLoad> loads, ShelfResponse response) {
        double bare = without == null
                ? Double.POSITIVE_INFINITY
                : without.under(loads).largest();
        return new Sags(
                Math.min(bare, factor * response.front()),
                Math.min(bare, factor * response.middle()),
                Math.min(bare, factor * response.back()),
                Math.min(bare, factor * Math.max(0, response.largestSag().value())),
                0);
    }

    private Strains strains(List<PlateLoad> loads, ShelfResponse response) {
        List<PlateLoad> on = inBay(loads);
        boolean spots = on.stream().anyMatch(load -> load.width() < board.depth() && load.length() < board.span());
        double by = spots ? STRESS_SPOT : STRESS_EVEN;
        double left = 0;
        double all = 0;
        for (PlateLoad load : on) {
            left += load.force() * (1 - load.x() / board.span());
            all += load.force();
        }
        double end = Math.max(left, all - left);
        double least = response.brackets().stream().reduce(Math.min(left, all - left), Math::min);
        Strains forces = bays == null
                ? new Strains(
                        0, 0, 0, end, end, all, response.brackets().stream().reduce(0.0, Math::max), least)
                : bays.strains(loads);
        return new Strains(
                by * response.largestBoardStress().value(),
                by * stress(response, front),
                by * stress(response, back),
                forces.shear(),
                forces.end(),
                forces.all(),
                forces.inner(),
                forces.least());
    }

    private static double stress(ShelfResponse response, @Nullable BuiltStrip strip) {
        return strip == null
                ? 0
                : strip.scale() * response.largestStripStress(strip.strip()).value();
    }

    /** The loads as far as they stand in the bay that is reckoned. */
    private List<PlateLoad> inBay(List<PlateLoad> loads) {
        List<PlateLoad> on = new ArrayList<>();
        for (PlateLoad load : loads) {
            double from = Math.max(start, load.x() - load.length() / 2);
            double to = Math.min(start + board.span(), load.x() + load.length() / 2);
            if (to > from) {
                double force = load.force() * (to - from) / load.length();
                on.add(new PlateLoad((from + to) / 2 - start, to - from, load.y(), load.width(), force));
            }
        }
        return on;
    }
}
