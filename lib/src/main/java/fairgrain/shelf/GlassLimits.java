package fairgrain.shelf;

import fairgrain.quantity.Length;
import fairgrain.quantity.UnitSystem;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;

/** The thinnest glass that is made, the longest span and the heaviest load for which a glass shelf holds. */
final class GlassLimits {
    private static final double LOAD_STEP = 0.5; // kg/m
    private static final double SPAN_POWER = 2; // of the stress, which mostly rules

    private final GlassShelf shelf;
    private final GlassPlate plate;
    /** By span: the search comes back to some of them. */
    private final Map<Double, GlassPlate> plates = new HashMap<>();

    GlassLimits(GlassShelf shelf) {
        this(shelf, GlassPlate.of(shelf.glass(), shelf.rest()));
    }

    /** For a shelf whose plate was worked out before. */
    GlassLimits(GlassShelf shelf, GlassPlate plate) {
        this.shelf = shelf;
        this.plate = plate;
    }

    Optional<GlassShelf> leastThickness() {
        return shelf.glass().thicknesses().stream()
                .filter(made -> GlassShelf.THICKNESS.allow(made.metres()))
                .map(shelf::thickness)
                .filter(thicker -> thicker.holds(plate))
                .findFirst();
    }

    /** Rounded down to a quarter of an inch or 5 mm. */
    Optional<GlassShelf> longestSpan() {
        double step = (shelf.in().rule().system() == UnitSystem.INCHES ? Length.inches(0.25) : Length.mm(5)).metres();
        return greatest(
                n -> shelf.span(new Length(n * step)),
                SPAN_POWER,
                (int) Math.ceil(GlassRest.SPAN.least() / step),
                (int) Math.floor(GlassRest.SPAN.most() / step),
                (int) (shelf.rest().span().metres() / step));
    }

    private GlassPlate plate(GlassShelf other) {
        double span = other.rest().span().metres();
        return span == shelf.rest().span().metres()
                ? plate
                : plates.computeIfAbsent(span, l -> GlassPlate.of(other.glass(), other.rest()));
    }

    /** Rounded down to half a kilogram a metre. */
    Optional<GlassShelf> heaviestLoad() {
        return greatest(
                n -> loaded(n * LOAD_STEP), 1, 0, (int) Math.floor(ShelfLoad.PER_LENGTH.most() / LOAD_STEP), (int)
                        (shelf.use().load().heavy() / LOAD_STEP));
    }

    private Optional<GlassShelf> greatest(IntFunction<GlassShelf> at, double power, int from, int to, int start) {
        IntToDoubleFunction use = n -> {
            GlassShelf other = at.apply(n);
            return 1 - other.plannedMargin(plate(other));
        };
        OptionalInt step = new ShopSteps(use, power, n -> use.applyAsDouble(n) <= 1).greatest(from, to, start);
        return step.stream()
                .mapToObj(at)
                .filter(greatest -> greatest.holds(plate(greatest)))
                .findFirst();
    }

    /** With so much on it at the heaviest, and in proportion what is expected. */
    private GlassShelf loaded(double heavy) {
        ShelfLoad now = shelf.use().load();
        double share = now.heavy() > 0 ? now.expected() / now.heavy() : 1;
        return shelf.load(new ShelfLoad(now.said(), heavy * share, heavy, now.cv(), now.evidence()));
    }
}
