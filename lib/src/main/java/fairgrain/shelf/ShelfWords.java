package fairgrain.shelf;

import fairgrain.finding.Caution;
import fairgrain.finding.Finding;
import fairgrain.finding.Outcome;
import fairgrain.finding.Reliability;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What {@link ShelfSag} says to a maker. */
final class ShelfWords {
    private final ShelfSag shelf;

    ShelfWords(ShelfSag shelf) {
        this.shelf = shelf;
    }

    Finding finding() {
        ShelfSag.Sag expected = shelf.answer();
        List<Outcome> outcomes = Reliability.outcomes(shelf, shelf.in().deviations());
        Length worstFirst = ShelfSag.sag(outcomes.get(0).planned().demand());
        Length worstLater = ShelfSag.sag(outcomes.get(1).planned().demand());
        Finding.Draft draft = Finding.about(
                        shelf.part(),
                        "will it sag",
                        Words.of(
                                "Under {} of " + shelf.load().said()
                                        + " it sags about {} on the first day, at most {} for 19 boards in 20, and"
                                        + " about {} after years, at most {}.",
                                Amount.of(shelf.load().expected(), Dimension.LINE_MASS),
                                expected.firstDay(),
                                worstFirst,
                                expected.afterYears(),
                                worstLater),
                        shelf.evidence())
                .outcomes(outcomes)
                .cautions(Caution.ASSUMED_CONTENTS, Caution.SHELF_IN_USE);
        if (expected.stress().isEmpty()) {
            draft.missing(
                    "how strong " + shelf.stock().name() + " is in bending",
                    "choose a wood or sheet whose strength is in the table, or enter it from its maker");
        }
        if (shelf.support() == Support.HOUSED) {
            draft.note("Its housed ends are reckoned as loose; a tight glued housing would take up to a quarter off the"
                    + " sag.");
        }
        ShelfLimits limits = new ShelfLimits(shelf);
        Optional<ShelfSag> longest = limits.longestSpan();
        Optional<ShelfSag> thinnest = limits.leastThickness();
        longest.ifPresent(s -> draft.size("longest span for this board and load", s.span()));
        thinnest.ifPresent(s -> draft.size("thinnest board for this span and load", s.thickness()));
        if (outcomes.stream().anyMatch(o -> o.verdict() == Verdict.FAILS)) {
            List<Remedy> cures = new ArrayList<>();
            thinnest.ifPresent(s -> cures.add(new Remedy(Words.of("Use a board {} thick.", s.thickness()), s)));
            longest.ifPresent(s -> cures.add(new Remedy(
                    Words.of(
                            "Shorten the span to {}, or stand a support under it so that no span is longer.", s.span()),
                    s)));
            draft.remedies(cures);
        }
        return draft.done();
    }
}
