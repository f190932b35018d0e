package fairgrain.shelf;

import fairgrain.finding.Caution;
import fairgrain.finding.Finding;
import fairgrain.finding.Outcome;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/** What {@link PinHold} says to a maker. */
final class PinWords {
    private static final double LOAD_STEP = 0.5; // kg/m
    private static final double DEEPEST = 0.02; // m, about what a side of a case has room for
    private static final double THICKEST = 0.012; // m

    private final PinHold hold;

    PinWords(PinHold hold) {
        this.hold = hold;
    }

    Finding finding() {
        PinHold.Held held = hold.answer();
        List<Outcome> outcomes = held.checks().stream().map(Outcome::certain).toList();
        Finding.Draft draft = Finding.about(
                        hold.part(),
                        "do the pins hold",
                        Words.of(
                                "The pin that bears most bears {}: {} when the shelf rocks on two, {} under a front"
                                        + " corner that is pushed.",
                                held.onOnePin(),
                                held.rocking(),
                                held.corner()),
                        hold.evidence())
                .outcomes(outcomes)
                .cautions(Caution.ASSUMED_CONTENTS, Caution.SHELF_IN_USE, Caution.CHILDREN);
        if (hold.pins().metal().isEmpty()) {
            draft.missing("what the pins are made of", "use pins of steel or brass, and enter it as 'pins of'");
        }
        if (held.rearEmpty().newtons() < 0) {
            draft.note(
                    "Pushed so while it is empty, the shelf lifts off the rear pin by {}: it rocks, and can be tipped"
                            + " out.",
                    Force.newtons(-held.rearEmpty().newtons()));
        }
        if (hold.side().longTerm() < hold.side().divisor()) {
            draft.note(
                    "The side is reckoned as loaded for good. The timber code counts storage as long-term, by which"
                            + " it would bear {}.",
                    hold.sideForMonths());
        }
        draft.note("A dent where the pin presses the underside of the shelf is not reckoned.");
        Optional<PinHold> heaviest = heaviest();
        heaviest.ifPresent(h -> draft.size("heaviest load for these pins", heavy(h)));
        draft.size("one pin may bear", held.mayBear());
        if (outcomes.stream().anyMatch(o -> o.verdict() == Verdict.FAILS)) {
            draft.remedies(cures(heaviest));
        }
        return draft.done();
    }

    private List<Remedy> cures(Optional<PinHold> heaviest) {
        ShelfPinSet pins = hold.pins();
        List<Remedy> cures = new ArrayList<>();
        up(pins.inHole(), DEEPEST, size -> hold.pins(pins.inHole(size)))
                .ifPresent(h -> cures.add(new Remedy(
                        Words.of("Let the pins {} into the side.", h.pins().inHole()), h)));
        up(pins.diameter(), THICKEST, size -> hold.pins(pins.diameter(size)))
                .ifPresent(h -> cures.add(
                        new Remedy(Words.of("Use pins {} thick.", h.pins().diameter()), h)));
        forward()
                .ifPresent(h -> cures.add(new Remedy(
                        Words.of(
                                "Move the pins to {} from the front and back edges.",
                                h.pins().in()),
                        h)));
        heaviest.ifPresent(
                h -> cures.add(new Remedy(Words.of("Put no more than {} on it, at the heaviest.", heavy(h)), h)));
        return cures;
    }

    private Optional<PinHold> up(Length from, double most, Function<Length, PinHold> to) {
        Length step = step();
        int first = (int) Math.floor(from.metres() / step.metres() + 1e-6) + 1;
        return IntStream.rangeClosed(first, (int) Math.floor(most / step.metres()))
                .mapToObj(steps -> to.apply(step.times(steps)))
                .filter(PinHold::holds)
                .findFirst();
    }

    /** The pins nearer the edges, in steps, no nearer than 20 mm. */
    private Optional<PinHold> forward() {
        Length step = step();
        int first = (int) Math.ceil(hold.pins().in().metres() / step.metres() - 1e-6) - 1;
        int last = (int) Math.ceil(0.02 / step.metres());
        return IntStream.iterate(first, steps -> steps >= last, steps -> steps - 1)
                .mapToObj(steps -> hold.pins(hold.pins().in(step.times(steps))))
                .filter(PinHold::holds)
                .findFirst();
    }

    private Length step() {
        return hold.in().rule().system() == UnitSystem.INCHES ? Length.inches(1 / 16.0) : Length.mm(1);
    }

    private Optional<PinHold> heaviest() {
        return new HoldingSize(heavy -> loaded(heavy).holds() ? 1 : -1, 0, ShelfLoad.PER_LENGTH.most(), LOAD_STEP)
                .greatest().stream().mapToObj(this::loaded).findFirst();
    }

    private PinHold loaded(double heavy) {
        ShelfLoad now = hold.load();
        double share = now.heavy() > 0 ? now.expected() / now.heavy() : 1;
        return hold.load(new ShelfLoad(now.said(), heavy * share, heavy, now.cv(), now.evidence()));
    }

    private static Amount heavy(PinHold hold) {
        return Amount.of(hold.load().heavy(), Dimension.LINE_MASS);
    }
}
