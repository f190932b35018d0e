package fairgrain.shelf;

import fairgrain.quantity.Length;
import fairgrain.quantity.UnitSystem;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The thinnest glass that is made, the longest span and the heaviest load for which a glass shelf holds. */
final class GlassLimits {
    private static final double LOAD_STEP = 0.5; // kg/m

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
        return new HoldingSize(this::marginAt, GlassRest.SPAN.least(), GlassRest.SPAN.most(), step)
                .greatest().stream()
                        .mapToObj(span -> shelf.span(new Length(span)))
                        .filter(longest -> longest.holds(plate(longest)))
                        .findFirst();
    }

    private double marginAt(double span) {
        GlassShelf other = shelf.span(new Length(span));
        return other.plannedMargin(plate(other));
    }

    private GlassPlate plate(GlassShelf other) {
        return plates.computeIfAbsent(other.rest().span().metres(), span -> GlassPlate.of(other.glass(), other.rest()));
    }

    /** Rounded down to half a kilogram a metre. */
    Optional<GlassShelf> heaviestLoad() {
        return new HoldingSize(heavy -> loaded(heavy).plannedMargin(plate), 0, ShelfLoad.PER_LENGTH.most(), LOAD_STEP)
                .greatest().stream()
                        .mapToObj(this::loaded)
                        .filter(heaviest -> heaviest.holds(plate))
                        .findFirst();
    }

    /** With so much on it at the heaviest, and in proportion what is expected. */
    private GlassShelf loaded(double heavy) {
        ShelfLoad now = shelf.use().load();
        double share = now.heavy() > 0 ? now.expected() / now.heavy() : 1;
        return shelf.load(new ShelfLoad(now.said(), heavy * share, heavy, now.cv(), now.evidence()));
    }
}
