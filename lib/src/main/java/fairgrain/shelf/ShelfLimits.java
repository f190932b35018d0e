package fairgrain.shelf;

import fairgrain.finding.Draw;
import fairgrain.quantity.Length;
import fairgrain.quantity.Mass;
import fairgrain.quantity.UnitSystem;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntFunction;

/** The longest span, the thinnest board, the heaviest load and the least front strip for which a shelf holds, to shop sizes. */
public final class ShelfLimits {
    private static final double LEAST_BAY = 0.05; // m
    private static final double DEEPEST_STRIP = 0.15; // m: deeper, it is in the way of what stands below
    private static final double POUND_A_FOOT = Mass.KILOGRAMS_PER_POUND / (12 * Length.METRES_PER_INCH);
    private static final double STOCKIEST = 0.25; // thickness by depth where there are strips
    private static final double A_HAIR = 1e-9;

    private static final double SPAN_POWER = 4;
    private static final double THICKNESS_POWER = -3;
    private static final double STRIP_POWER = -0.5; // about: the back goes on sagging

    private final ShelfSag shelf;
    private final SagModel model;
    private final List<Draw> worst;

    public ShelfLimits(ShelfSag shelf) {
        this(new SagModel(shelf), shelf);
    }

    private ShelfLimits(SagModel model, ShelfSag shelf) {
        this(shelf, model, model.worst());
    }

    /** For a shelf that was worked out before. */
    ShelfLimits(ShelfSag shelf, SagModel model, List<Draw> worst) {
        this.shelf = shelf;
        this.model = model;
        this.worst = worst;
    }

    /** The longest span, rounded down to a quarter of an inch or 5 mm; empty if not even the shortest holds. */
    public Optional<ShelfSag> longestSpan() {
        double step = (inches() ? Length.inches(0.25) : Length.mm(5)).metres();
        return search(n -> shelf.span(new Length(n * step)), SPAN_POWER)
                .greatest(
                        up(leastSpan(), step),
                        down(ShelfSag.SPAN.most(), step),
                        down(shelf.span().metres(), step));
    }

    /** So short that no support comes too near to the next and no thing hangs over an end. */
    private double leastSpan() {
        double span = shelf.span().metres();
        double least = ShelfSag.SPAN.least();
        List<Double> stands = shelf.supports().stands();
        for (int i = 1; i < stands.size() && stands.size() > 2; i++) {
            least = Math.max(least, (1 + A_HAIR) * LEAST_BAY * span / (stands.get(i) - stands.get(i - 1)));
        }
        for (Bracket bracket : shelf.supports().brackets()) {
            double end = Math.min(bracket.at().metres(), span - bracket.at().metres());
            least = Math.max(least, (1 + A_HAIR) * LEAST_BAY * span / end);
        }
        for (Thing thing : shelf.loads().things()) {
            least = Math.max(least, thing.size().metres());
        }
        return least;
    }

    /** The least thickness, rounded up to a sixteenth of an inch or a millimetre; empty if none holds that its material comes in. */
    public Optional<ShelfSag> leastThickness() {
        double step = (inches() ? Length.inches(1 / 16.0) : Length.mm(1)).metres();
        Section section = shelf.section();
        double most = ShelfSag.THICKNESS.most();
        boolean plate = !section.isPlain()
                || shelf.supports().back() != BackEdge.FREE
                || !shelf.supports().brackets().isEmpty()
                || shelf.loads().row() != null;
        if (plate) {
            most = Math.min(most, STOCKIEST * section.depth().metres() * (1 - A_HAIR));
        }
        Taper taper = section.taper();
        double least = taper == null ? ShelfSag.THICKNESS.least() : taper.edge().metres();
        return search(n -> shelf.thickness(new Length(n * step)), THICKNESS_POWER)
                .least(up(least, step), down(most, step), up(section.thickness().metres(), step))
                .filter(found -> found.stock().thicknesses().contains(found.thickness()));
    }

    /** The heaviest load spread along it, rounded down to half a kilogram a metre or a pound a foot; empty if not even it alone holds. */
    public Optional<ShelfSag> heaviestLoad() {
        double step = inches() ? POUND_A_FOOT : 0.5;
        ShelfLoad now = shelf.load();
        double heavier = now.expected() > 0 ? now.heavy() / now.expected() : 1;
        double most = ShelfLoad.PER_LENGTH.most() / heavier;
        IntFunction<ShelfLoad> load = n -> new ShelfLoad(
                now.said(),
                n * step,
                Math.min(n * step * heavier, ShelfLoad.PER_LENGTH.most()),
                now.cv(),
                now.evidence());
        return search(
                        n -> shelf.load(load.apply(n)),
                        n -> new SagModel(model.solved().load(load.apply(n))),
                        1)
                .greatest(0, down(most, step), down(now.expected(), step));
    }

    /**
     * The least height of a front strip glued on, of the same wood as the strip that is there or else as the board; empty if no height is
     * enough, because the back goes on sagging.
     */
    public Optional<ShelfSag> leastStrip() {
        if (!takesStrip()) {
            return Optional.empty();
        }
        double step = (inches() ? Length.inches(0.25) : Length.mm(5)).metres();
        EdgePiece now = shelf.section().front();
        Length width = (inches() ? Length.inches(0.75) : Length.mm(20));
        EdgePiece strip = now == null
                ? new EdgePiece(shelf.stock(), width, shelf.thickness(), EdgePiece.Place.EDGE, true)
                : new EdgePiece(now.stock(), now.width(), now.height(), now.place(), true);
        return search(n -> shelf.front(strip.height(new Length(n * step))), STRIP_POWER)
                .least(
                        up(shelf.thickness().metres() * (1 + A_HAIR), step),
                        down(DEEPEST_STRIP, step),
                        up(2 * shelf.thickness().metres(), step));
    }

    /** Whether a front strip is something that can be added here. */
    boolean takesStrip() {
        Supports supports = shelf.supports();
        return shelf.section().taper() == null
                && supports.overhang() == 0
                && (supports.middle().isEmpty() || shelf.loads().isEven())
                && shelf.isFlat()
                && 0.4 * shelf.depth().metres() >= Length.inches(0.8).metres();
    }

    private Search search(IntFunction<ShelfSag> at, double power) {
        return search(at, n -> new SagModel(at.apply(n)), power);
    }

    private Search search(IntFunction<ShelfSag> at, IntFunction<SagModel> modelAt, double power) {
        Map<Integer, SagModel> models = new HashMap<>(); // a step is asked twice: by the guess, and by itself
        IntFunction<SagModel> once = n -> models.computeIfAbsent(n, modelAt::apply);
        return new Search(
                at,
                new ShopSteps(
                        n -> 1 - once.apply(n).margin(worst),
                        power,
                        n -> once.apply(n).plannedMargin() >= 0));
    }

    /** Shelves by steps of one of their sizes. */
    private record Search(IntFunction<ShelfSag> at, ShopSteps steps) {
        Optional<ShelfSag> greatest(int from, int to, int start) {
            return from > to ? Optional.empty() : found(steps.greatest(from, to, start));
        }

        Optional<ShelfSag> least(int from, int to, int start) {
            return from > to ? Optional.empty() : found(steps.least(from, to, start));
        }

        private Optional<ShelfSag> found(OptionalInt step) {
            return step.isEmpty() ? Optional.empty() : Optional.of(at.apply(step.getAsInt()));
        }
    }

    private static int up(double size, double step) {
        return (int) Math.ceil(size / step - A_HAIR);
    }

    private static int down(double size, double step) {
        return (int) Math.floor(size / step + A_HAIR);
    }

    private boolean inches() {
        return shelf.in().rule().system() == UnitSystem.INCHES;
    }
}
