package fairgrain.shelf;

import fairgrain.finding.Caution;
import fairgrain.finding.Finding;
import fairgrain.finding.Outcome;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import fairgrain.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What {@link RodShelf} says to a maker. */
final class RodShelfWords {
    private static final double LOAD_STEP = 0.5; // kg/m

    private final RodShelf shelf;

    RodShelfWords(RodShelf shelf) {
        this.shelf = shelf;
    }

    Finding finding() {
        RodShelf.Held held = shelf.answer();
        List<Outcome> outcomes = held.checks().stream().map(Outcome::certain).toList();
        Finding.Draft draft = Finding.about(
                        shelf.part(),
                        "do the rods hold it",
                        Words.of(
                                "The rod that bears most carries {}, {} out from the back of the shelf.",
                                held.onOneRod(),
                                held.arm()),
                        shelf.evidence())
                .outcomes(outcomes)
                .cautions(
                        Caution.ASSUMED_CONTENTS,
                        Caution.SHELF_IN_USE,
                        Caution.CHILDREN,
                        Caution.STUDS_ONLY,
                        Caution.HIDDEN_SERVICES,
                        Caution.LOCAL_CODE);
        missing(draft);
        draft.note(
                "The holes must be a close fit and at right angles to the edge; a shelf can slide off its rods unless"
                        + " something holds it on.");
        Optional<RodShelf> heaviest = heaviest();
        heaviest.ifPresent(s -> draft.size("heaviest load for these rods", heavy(s)));
        if (outcomes.stream().anyMatch(o -> o.verdict() == Verdict.FAILS)) {
            draft.remedies(cures(heaviest));
        }
        return draft.done();
    }

    private void missing(Finding.Draft draft) {
        if (shelf.rods().metal().isEmpty()) {
            draft.missing("what the rods are made of", "use plain steel bar, and enter 'rods of: steel'");
        }
        if (shelf.gravity().isEmpty()) {
            draft.missing(
                    "how hard " + shelf.wood() + " may be pressed by a rod in its edge",
                    "use solid wood whose density and its basis are in the table");
        }
        if (shelf.rods().wallGravity().isEmpty()) {
            draft.missing(
                    "what holds the rods in the wall",
                    "bore each into a stud or solid blocking, and enter it as 'into'; for masonry ask the maker of the"
                            + " anchor");
        }
    }

    private List<Remedy> cures(Optional<RodShelf> heaviest) {
        List<Remedy> cures = new ArrayList<>();
        Length step = shelf.in().rule().system() == UnitSystem.INCHES ? Length.inches(1 / 16.0) : Length.mm(1);
        int first = (int) Math.floor(shelf.rods().diameter().metres() / step.metres()) + 1;
        int last = (int) Math.floor(SteelRods.DIAMETER.most() / step.metres());
        IntStream.rangeClosed(first, last)
                .mapToObj(steps -> shelf.rods(shelf.rods().diameter(step.times(steps))))
                .filter(RodShelf::holds)
                .findFirst()
                .ifPresent(s -> cures.add(
                        new Remedy(Words.of("Use rods {} thick.", s.rods().diameter()), s)));
        IntStream.rangeClosed(shelf.rods().count() + 1, (int) SteelRods.COUNT.most())
                .mapToObj(count -> shelf.rods(shelf.rods().count(count)))
                .filter(RodShelf::holds)
                .findFirst()
                .ifPresent(s -> cures.add(new Remedy(
                        Words.of(
                                "Use {} rods, each into a stud or solid blocking.",
                                Amount.count(s.rods().count())),
                        s)));
        heaviest.ifPresent(
                s -> cures.add(new Remedy(Words.of("Put no more than {} on it, at the heaviest.", heavy(s)), s)));
        return cures;
    }

    private Optional<RodShelf> heaviest() {
        return new HoldingSize(heavy -> loaded(heavy).holds() ? 1 : -1, 0, ShelfLoad.PER_LENGTH.most(), LOAD_STEP)
                .greatest().stream().mapToObj(this::loaded).findFirst();
    }

    private RodShelf loaded(double heavy) {
        ShelfLoad now = shelf.load();
        double share = now.heavy() > 0 ? now.expected() / now.heavy() : 1;
        return shelf.load(new ShelfLoad(now.said(), heavy * share, heavy, now.cv(), now.evidence()));
    }

    private static Amount heavy(RodShelf shelf) {
        return Amount.of(shelf.load().heavy(), Dimension.LINE_MASS);
    }
}
