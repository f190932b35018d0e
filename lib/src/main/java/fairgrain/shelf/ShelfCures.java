package fairgrain.shelf;

import fairgrain.finding.Outcome;
import fairgrain.finding.Remedy;
import fairgrain.finding.Words;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What would mend a shelf that fails, each asked again before it is offered, the smallest change first. */
final class ShelfCures {
    private static final double MIDDLE_SUPPORT = 0.5; // judgement: as much of a change as half the span
    private static final int MOST_TRIES = 12;

    private final ShelfSag shelf;
    private final List<Cure> cures = new ArrayList<>();

    /** A cure and how much it changes, as a share of what was there. */
    private record Cure(double change, Remedy remedy) {}

    ShelfCures(ShelfSag shelf) {
        this.shelf = shelf;
    }

    List<Remedy> all(
            Optional<ShelfSag> longest,
            Optional<ShelfSag> thinnest,
            Optional<ShelfSag> heaviest,
            Optional<ShelfSag> strip,
            List<Outcome> outcomes) {
        thinnest.ifPresent(s -> add(
                s.thickness().metres() / shelf.thickness().metres() - 1,
                Words.of("Use a board {} thick.", s.thickness()),
                s));
        longest.ifPresent(s -> add(
                1 - s.span().metres() / shelf.span().metres(),
                shelf.supports().middle().isEmpty()
                        ? Words.of("Shorten the span to {}.", s.span())
                        : Words.of("Shorten it to {} from end to end, its supports in proportion.", s.span()),
                s));
        heaviest.filter(s -> s.load().expected() > 0)
                .ifPresent(s -> add(
                        1 - s.load().expected() / shelf.load().expected(),
                        Words.of(
                                "Put no more on it than {} of " + s.load().said() + ".",
                                Amount.of(s.load().expected(), Dimension.LINE_MASS)),
                        s));
        stocks(outcomes);
        middleSupport();
        strip.ifPresent(this::strip);
        cures.sort(Comparator.comparingDouble(Cure::change));
        return cures.stream().map(Cure::remedy).toList();
    }

    private void add(double change, Words words, ShelfSag then) {
        if (change > 0 && new ShelfStrength(new SolvedShelf(then)).missing().isEmpty()) {
            cures.add(new Cure(change, new Remedy(words, then)));
        }
    }

    /** The softest wood and the softest sheet of the same thickness that will do. */
    private void stocks(List<Outcome> outcomes) {
        double worst = 1;
        for (Outcome outcome : outcomes) {
            if (outcome.planned().dimension() == Dimension.LENGTH) {
                worst = Math.max(
                        worst, outcome.planned().demand() / outcome.planned().capacity());
            }
        }
        double needed =
                shelf.stock().elasticity() * Math.min(worst, 100) * 0.8; // less, if it is lighter or scatters less
        List<ShelfStock> others = shelf.others().get();
        for (boolean sheet : new boolean[] {false, true}) {
            others.stream()
                    .filter(stock -> isSheet(stock) == sheet && fits(stock) && stock.elasticity() >= needed)
                    .sorted(Comparator.comparingDouble(ShelfStock::elasticity))
                    .limit(MOST_TRIES)
                    .map(shelf::stock)
                    .filter(other -> other.plannedMargin() >= 0)
                    .findFirst()
                    .ifPresent(other -> add(
                            Math.max(
                                    0.01,
                                    other.stock().elasticity() / shelf.stock().elasticity() - 1),
                            Words.of("Make it of " + other.stock().name() + ", as thick as now."),
                            other));
        }
    }

    private static boolean isSheet(ShelfStock stock) {
        return !stock.thicknesses().equals(ShelfStock.ANY_THICKNESS);
    }

    private boolean fits(ShelfStock stock) {
        return stock.creep() != null
                && stock.strength() != null
                && !stock.name().equals(shelf.stock().name())
                && stock.thicknesses().contains(shelf.thickness());
    }

    private void middleSupport() {
        Supports supports = shelf.supports();
        boolean alone = supports.middle().isEmpty() && supports.brackets().isEmpty();
        boolean inModel = shelf.loads().isEven() || (shelf.section().isPlain() && supports.back() == BackEdge.FREE);
        if (!alone || !inModel || supports.span().metres() < 0.2) {
            return;
        }
        Length half = supports.span().times(0.5);
        ShelfSag held = shelf.middle(List.of(half));
        if (held.plannedMargin() >= 0) {
            add(MIDDLE_SUPPORT, Words.of("Stand a support under its whole depth at {}.", half), held);
        }
    }

    private void strip(ShelfSag then) {
        EdgePiece strip = then.section().front();
        if (strip == null) {
            return;
        }
        double board = shelf.section().massPerLength(shelf.stock());
        double change = then.section().massPerLength(then.stock()) / board - 1;
        add(
                Math.max(0.01, change),
                Words.of(
                        "Glue a strip of " + strip.stock().name() + " {} wide and {} from top to bottom "
                                + (strip.place() == EdgePiece.Place.UNDER ? "under" : "on") + " its front edge"
                                + (strip.place() == EdgePiece.Place.UNDER ? "." : ", inside the same depth."),
                        strip.width(),
                        strip.height()),
                then);
    }
}
