package fairgrain.design;

import fairgrain.finding.Caution;
import fairgrain.finding.Missing;
import fairgrain.finding.Question;
import fairgrain.finding.Unasked;
import fairgrain.quantity.Length;
import fairgrain.shelf.EdgePiece;
import fairgrain.shelf.Loads;
import fairgrain.shelf.SagLimit;
import fairgrain.shelf.Section;
import fairgrain.shelf.ShelfLoad;
import fairgrain.shelf.ShelfSag;
import fairgrain.shelf.ShelfStock;
import fairgrain.shelf.Supports;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Shelves that are alike.
 *
 * @param front strip on its front edge
 * @param back strip on its back edge
 * @param cut its length, if the clear width between the sides was told
 * @param others woods and sheets that could be used instead; asked for only if it fails
 */
public record Shelf(
        String name,
        int count,
        ShelfStock stock,
        Section board,
        Optional<Strip> front,
        Optional<Strip> back,
        Supports supports,
        Loads loads,
        SagLimit limit,
        Optional<Length> cut,
        Supplier<List<ShelfStock>> others)
        implements Weighs {
    private static final double HEAVY_THINGS = 1.1; // as in the question of strength

    /** A strip, of a stock whose creep may not be known. */
    public record Strip(ShelfStock stock, Length width, Length height, EdgePiece.Place place, boolean glued) {
        double mass(double length) {
            return stock.density() * width.metres() * height.metres() * length;
        }

        public EdgePiece piece() {
            return new EdgePiece(stock, width, height, place, glued);
        }
    }

    @Override
    public List<Question<?>> questions(Design design) {
        for (ShelfStock each : List.of(
                stock,
                front.map(Strip::stock).orElse(stock),
                back.map(Strip::stock).orElse(stock))) {
            if (each.creep() == null) {
                return List.of(new Unasked(
                        name,
                        "will it sag",
                        List.of(new Missing(
                                "how " + each.name() + " creeps in a place that is damp for months",
                                "use solid wood, plywood or a board declared for damp places")),
                        each.evidence(),
                        Set.of(Caution.ASSUMED_CONTENTS, Caution.SHELF_IN_USE)));
            }
        }
        Section whole = new Section(
                board.depth(),
                board.thickness(),
                front.map(Strip::piece).orElse(null),
                back.map(Strip::piece).orElse(null),
                board.taper());
        return List.of(new ShelfSag(name, stock, whole, supports, loads, limit, design.setting(), others));
    }

    @Override
    public List<Piece> pieces(Design design) {
        List<Piece> all = new ArrayList<>();
        all.add(piece(
                "shelf",
                stock,
                boardWidth(),
                board.thickness(),
                cut.isPresent()
                        ? "the clear width less its play at both ends"
                        : supports.length() > supports.span().metres()
                                ? "over all its supports"
                                : "from support to support; less its play at each end"));
        front.ifPresent(strip -> all.add(piece("front strip", strip.stock(), strip.width(), strip.height(), "")));
        back.ifPresent(strip -> all.add(piece("back strip", strip.stock(), strip.width(), strip.height(), "")));
        return List.copyOf(all);
    }

    /** The depth of the shelf, less the strips that sit on its edges. */
    private Length boardWidth() {
        double strips = edge(front) + edge(back);
        return new Length(board.depth().metres() - strips);
    }

    private static double edge(Optional<Strip> strip) {
        return strip.filter(s -> s.place() == EdgePiece.Place.EDGE)
                .map(s -> s.width().metres())
                .orElse(0.0);
    }

    private Piece piece(String member, ShelfStock of, Length width, Length thickness, String note) {
        return new Piece(
                name,
                member,
                count,
                of.name(),
                !of.thicknesses().equals(ShelfStock.ANY_THICKNESS),
                Optional.of(cut.orElse(new Length(supports.length()))),
                width,
                thickness,
                note);
    }

    @Override
    public Shelf loaded(double times) {
        return new Shelf(name, count, stock, board, front, back, supports, loads.times(times), limit, cut, others);
    }

    @Override
    public Length span() {
        return supports.span();
    }

    @Override
    public Length depth() {
        return board.depth();
    }

    /** All that stands on it, single things too, as if it were spread from support to support. */
    @Override
    public ShelfLoad load() {
        ShelfLoad even = loads.spread();
        Loads.Filled filled = loads.filled();
        double on = filled == null
                ? supports.length()
                : filled.to().minus(filled.from()).metres();
        double longer = on / span().metres();
        double things = loads.thingsMass() / span().metres();
        if (longer == 1 && things == 0) {
            return even;
        }
        double most = ShelfLoad.PER_LENGTH.most();
        double expected = Math.min(even.expected() * longer + things, most);
        return new ShelfLoad(
                even.said(),
                expected,
                Math.min(even.heavy() * longer + HEAVY_THINGS * things, most),
                even.cv(),
                even.evidence());
    }

    /** Mass of one shelf, empty [kg]. */
    @Override
    public double mass() {
        double length = supports.length();
        double strips = front.map(s -> s.mass(length)).orElse(0.0)
                + back.map(s -> s.mass(length)).orElse(0.0);
        return stock.density()
                        * length
                        * boardWidth().metres()
                        * board.thickness().metres()
                + strips;
    }
}
