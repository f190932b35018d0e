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
import fairgrain.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What {@link HollowShelf} says to a maker. */
final class HollowShelfWords {
    private static final double LEAST_HOLLOW = 0.002; // m between the skins

    private final HollowShelf shelf;

    HollowShelfWords(HollowShelf shelf) {
        this.shelf = shelf;
    }

    Finding finding() {
        HollowShelf.Held expected = shelf.answer();
        List<Outcome> outcomes = Reliability.outcomes(shelf, shelf.in().deviations());
        Finding.Draft draft = Finding.about(
                        shelf.part(),
                        "will it sag",
                        Words.of(
                                "Under {} of " + shelf.load().said()
                                        + " it sags about {} on the first day, at most {} in 19 cases of 20, and about"
                                        + " {} after years, at most {}.",
                                Amount.of(shelf.load().expected(), Dimension.LINE_MASS),
                                expected.firstDay(),
                                ShelfSag.sag(outcomes.get(0).planned().demand()),
                                expected.afterYears(),
                                ShelfSag.sag(outcomes.get(1).planned().demand())),
                        shelf.evidence())
                .outcomes(outcomes)
                .cautions(Caution.ASSUMED_CONTENTS, Caution.SHELF_IN_USE);
        if (!shelf.isStrengthKnown()) {
            draft.missing(
                    "how strong its skins and ribs are",
                    "choose woods or sheets whose bending strength is in the table");
        }
        if (shelf.inside() instanceof Inside.Core) {
            draft.note("Wrinkling of thin skins and crushing of the core are not reckoned: let solid wood in over the"
                    + " supports and wherever something is screwed on.");
        } else {
            draft.note("It is reckoned as glued all along and closed at both ends; nails alone slip.");
        }
        Optional<HollowShelf> longest = longestSpan();
        Optional<HollowShelf> lowest = leastHeight();
        longest.ifPresent(s -> draft.size("longest span for this shelf and load", s.span()));
        lowest.ifPresent(s -> draft.size("least height for this span and load", s.height()));
        if (outcomes.stream().anyMatch(o -> o.verdict() == Verdict.FAILS)) {
            List<Remedy> cures = new ArrayList<>();
            lowest.ifPresent(s -> cures.add(
                    new Remedy(Words.of("Make it {} high over both skins, all else the same.", s.height()), s)));
            longest.ifPresent(s -> cures.add(new Remedy(
                    Words.of(
                            "Shorten the span to {}, or stand a support under it so that no span is longer.", s.span()),
                    s)));
            draft.remedies(cures);
        }
        return draft.done();
    }

    private Optional<HollowShelf> longestSpan() {
        double step = (inches() ? Length.inches(0.25) : Length.mm(5)).metres();
        return new HoldingSize(
                        span -> shelf.span(new Length(span)).plannedMargin(),
                        ShelfSag.SPAN.least(),
                        ShelfSag.SPAN.most(),
                        step)
                .greatest().stream()
                        .mapToObj(span -> shelf.span(new Length(span)))
                        .findFirst();
    }

    private Optional<HollowShelf> leastHeight() {
        double step = (inches() ? Length.inches(1 / 16.0) : Length.mm(1)).metres();
        double least = Math.max(
                HollowShelf.HEIGHT.least(), 2 * shelf.skin().thickness().metres() + LEAST_HOLLOW);
        return new HoldingSize(
                        height -> shelf.height(new Length(height)).plannedMargin(),
                        least,
                        HollowShelf.HEIGHT.most(),
                        step)
                .least().stream()
                        .mapToObj(height -> shelf.height(new Length(height)))
                        .findFirst();
    }

    private boolean inches() {
        return shelf.in().rule().system() == UnitSystem.INCHES;
    }
}
