package fairgrain.shelf;

import fairgrain.finding.Draw;
import fairgrain.quantity.Length;
import fairgrain.quantity.Mass;
import fairgrain.quantity.UnitSystem;
import java.util.List;
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

    private final ShelfSag shelf;
    private final Bends bends;
    private final List<Draw> worst;

    public ShelfLimits(ShelfSag shelf) {
        this.shelf = shelf;
        bends = Bends.of(shelf);
        worst = new SagModel(shelf, bends).worst();
    }

    /** The longest span, rounded down to a quarter of an inch or 5 mm; empty if not even the shortest holds. */
    public Optional<ShelfSag> longestSpan() {
        double step = (inches() ? Length.inches(0.25) : Length.mm(5)).metres();
        return greatest(n -> shelf.span(new Length(n * step)), up(leastSpan(), step), down(ShelfSag.SPAN.most(), step));
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
                || !shelf.supports().brackets().isEmpty();
        if (plate) {
            most = Math.min(most, STOCKIEST * section.depth().metres() * (1 - A_HAIR));
        }
        Taper taper = section.taper();
        double least = taper == null ? ShelfSag.THICKNESS.least() : taper.edge().metres();
        return least(n -> shelf.thickness(new Length(n * step)), up(least, step), down(most, step))
                .filter(found -> found.stock().thicknesses().contains(found.thickness()));
    }

    /** The heaviest load spread along it, rounded down to half a kilogram a metre or a pound a foot; empty if not even it alone holds. */
    public Optional<ShelfSag> heaviestLoad() {
        double step = inches() ? POUND_A_FOOT : 0.5;
        ShelfLoad now = shelf.load();
        double heavier = now.expected() > 0 ? now.heavy() / now.expected() : 1;
        double most = ShelfLoad.PER_LENGTH.most() / heavier;
        IntFunction<ShelfSag> at = n -> shelf.load(new ShelfLoad(
                now.said(),
                n * step,
                Math.min(n * step * heavier, ShelfLoad.PER_LENGTH.most()),
                now.cv(),
                now.evidence()));
        ShopSteps steps = new ShopSteps(
                n -> new SagModel(at.apply(n), bends).margin(worst) >= 0,
                n -> new SagModel(at.apply(n), bends).plannedMargin() >= 0);
        return found(at, steps.greatest(0, down(most, step)));
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
        return least(
                n -> shelf.front(strip.height(new Length(n * step))),
                up(shelf.thickness().metres() * (1 + A_HAIR), step),
                down(DEEPEST_STRIP, step));
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

    private Optional<ShelfSag> greatest(IntFunction<ShelfSag> at, int from, int to) {
        return found(at, steps(at).greatest(from, to));
    }

    private Optional<ShelfSag> least(IntFunction<ShelfSag> at, int from, int to) {
        return found(at, steps(at).least(from, to));
    }

    private ShopSteps steps(IntFunction<ShelfSag> at) {
        return new ShopSteps(
                n -> new SagModel(at.apply(n)).margin(worst) >= 0,
                n -> at.apply(n).plannedMargin() >= 0);
    }

    private static Optional<ShelfSag> found(IntFunction<ShelfSag> at, OptionalInt step) {
        return step.isEmpty() ? Optional.empty() : Optional.of(at.apply(step.getAsInt()));
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
