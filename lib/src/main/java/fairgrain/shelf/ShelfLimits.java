package fairgrain.shelf;

import fairgrain.quantity.Length;
import fairgrain.quantity.UnitSystem;
import java.util.Optional;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** The longest span and the thinnest board for which a shelf holds, to shop sizes. */
public record ShelfLimits(ShelfSag shelf) {
    private static final double ACCURACY = 1e-6; // m
    private static final int MOST_TRIES = 200;

    /** The longest span, rounded down to a quarter of an inch or 5 mm; empty if not even the shortest holds. */
    public Optional<ShelfSag> longestSpan() {
        double least = ShelfSag.SPAN.least();
        double most = ShelfSag.SPAN.most();
        if (margin(least, true) < 0) {
            return Optional.empty();
        }
        double root = margin(most, true) >= 0
                ? most
                : new BrentSolver(ACCURACY).solve(MOST_TRIES, span -> margin(span, true), least, most);
        double step = (inches() ? Length.inches(0.25) : Length.mm(5)).metres();
        return Optional.of(Math.floor((root - ACCURACY) / step) * step)
                .filter(ShelfSag.SPAN::allow)
                .map(span -> shelf.span(new Length(span)))
                .filter(found -> found.plannedMargin() >= 0);
    }

    /** The least thickness, rounded up to a sixteenth of an inch or a millimetre; empty if none holds that its material comes in. */
    public Optional<ShelfSag> leastThickness() {
        double least = ShelfSag.THICKNESS.least();
        double most = ShelfSag.THICKNESS.most();
        if (margin(most, false) < 0) {
            return Optional.empty();
        }
        double root = margin(least, false) >= 0
                ? least
                : new BrentSolver(ACCURACY).solve(MOST_TRIES, thickness -> margin(thickness, false), least, most);
        double step = (inches() ? Length.inches(1 / 16.0) : Length.mm(1)).metres();
        return Optional.of(Math.ceil((root + ACCURACY) / step) * step)
                .filter(ShelfSag.THICKNESS::allow)
                .map(Length::new)
                .filter(shelf.stock().thicknesses()::contains)
                .map(shelf::thickness)
                .filter(found -> found.plannedMargin() >= 0);
    }

    private double margin(double size, boolean ofSpan) {
        return (ofSpan ? shelf.span(new Length(size)) : shelf.thickness(new Length(size))).plannedMargin();
    }

    private boolean inches() {
        return shelf.in().rule().system() == UnitSystem.INCHES;
    }
}
