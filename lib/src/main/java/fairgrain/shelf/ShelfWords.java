package fairgrain.shelf;

import fairgrain.finding.Caution;
import fairgrain.finding.Draw;
import fairgrain.finding.Finding;
import fairgrain.finding.Outcome;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Mass;
import fairgrain.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What {@link ShelfSag} says to a maker. */
final class ShelfWords {
    private static final double YEAR = 365.25 * 86_400;
    private static final double TIGHT_HOUSING = 0.76; // (5 - 4 f)/5 with a fixity f of 0.3
    private static final double CLAMPED = 0.2;
    private static final double SHORT =
            12; // spans by thickness: from here on shear adds more than the table's stiffness holds
    private static final double DEEP = 0.2; // m: a row of books is about 156 mm deep
    private static final double SHEAR = 0.96;
    private static final double SHEAR_IN_TABLE = 1.10;

    private final ShelfSag shelf;
    private final SagModel model;
    private final ShelfSag.Sag expected;
    private final List<Draw> worst;
    private final List<Outcome> outcomes;
    private final Length worstFirst;
    private final Length worstLater;

    ShelfWords(ShelfSag shelf) {
        this.shelf = shelf;
        model = new SagModel(shelf);
        expected = model.at(Draw.AS_PLANNED);
        worst = model.worst();
        outcomes = model.outcomes(worst);
        worstFirst = ShelfSag.sag(outcomes.get(0).planned().demand());
        worstLater = ShelfSag.sag(outcomes.get(1).planned().demand());
    }

    Finding finding() {
        Finding.Draft draft = draft();
        sags(draft);
        reach(draft);
        tests(draft);
        draft.note("Nearest to its limit: " + nearest(outcomes) + ".");
        Limits limits = limits(draft);
        cures(draft, limits);
        return draft.done();
    }

    /** Without cures and notes. */
    Finding brief() {
        Finding.Draft draft = draft();
        limits(draft);
        return draft.done();
    }

    private Finding.Draft draft() {
        return Finding.about(
                        shelf.part(),
                        "will it sag",
                        Words.of(
                                "Under {} of " + shelf.load().said() + things()
                                        + " it sags about {} on the first day, at most {} for 19 boards in 20, and"
                                        + " about {} after years, at most {}.",
                                Amount.of(shelf.load().expected(), Dimension.LINE_MASS),
                                expected.firstDay(),
                                worstFirst,
                                expected.afterYears(),
                                worstLater),
                        shelf.evidence())
                .outcomes(outcomes)
                .missing(new ShelfStrength(model.solved()).missing())
                .cautions(Caution.ASSUMED_CONTENTS, Caution.SHELF_IN_USE);
    }

    private String things() {
        return shelf.loads().things().isEmpty() ? "" : " and the single things on it,";
    }

    private void sags(Finding.Draft draft) {
        if (Bends.twists(shelf)) {
            draft.note(
                    "On the first day the front edge sags about {} at mid-span, the middle {} and the back edge {}.",
                    expected.front(),
                    expected.middle(),
                    expected.back());
        }
        double first = expected.firstDay().metres();
        if (first > 0) {
            draft.note(
                    "The first sag is 1/{} of the span. By the usual course of creep, for display only, it is {} after"
                            + " a year, at most {}, and {} after ten, at most {}.",
                    Amount.count(Math.floor(shelf.bay() / first)),
                    ShelfSag.sag(model.after(Draw.AS_PLANNED, YEAR)),
                    ShelfSag.sag(model.after(worst.get(1), YEAR)),
                    expected.afterYears(),
                    worstLater);
        }
    }

    /** Where the model is at its limits, and by how much it may be off. */
    private void reach(Finding.Draft draft) {
        Supports supports = shelf.supports();
        if (supports.ends() == Support.HOUSED) {
            draft.note(
                    "Its housed ends are reckoned as loose; a tight glued housing would take up to a quarter off the"
                            + " sag (to {} on the first day), and ends that could not turn at all, which no case has, four"
                            + " fifths (to {}).",
                    expected.firstDay().times(TIGHT_HOUSING),
                    expected.firstDay().times(CLAMPED));
        }
        boolean twists = Bends.twists(shelf);
        if (!twists && (!supports.middle().isEmpty() || supports.overhang() > 0)) {
            draft.note("Several bays and overhangs are reckoned as a beam, which is right on the average of the depth."
                    + " Between pins the board dips further: in two runs known the largest sag was 1.9 times that of the"
                    + " beam, though less than a quarter of a millimetre.");
        }
        if (!twists && !shelf.loads().things().isEmpty()) {
            draft.note("Single things count twice for the sag and three times for the stress here, because a beam does"
                    + " not show what they do near an edge.");
        }
        if (twists && !supports.middle().isEmpty()) {
            draft.note("The longest bay is reckoned alone, as if the shelf ended at its supports; the next bay takes"
                    + " sag off it.");
        }
        double slender = shelf.bay() / shelf.thickness().metres();
        double shear = 1 + SHEAR / shelf.stock().ratios().shearThrough() / (slender * slender);
        if (slender < SHORT && shear > SHEAR_IN_TABLE) {
            draft.note(
                    "So short a board gives in shear: it may sag up to {} times as much as is said here.",
                    Amount.ratio(shear / SHEAR_IN_TABLE));
        }
        if (shelf.loads().row() == null
                && shelf.load().expected() > 0
                && shelf.depth().metres() > DEEP) {
            draft.note("The load counts as spread over the depth. A row flush with an edge makes that edge sag more, on"
                    + " a deep board of solid wood by half and more: tell how deep the row is, and it is reckoned so.");
        }
        back(draft, supports);
        double inner = model.solved().heavy().inner();
        if (inner > 0) {
            draft.note(
                    (supports.brackets().isEmpty() ? "A middle support" : "A bracket")
                            + " bears up to {} under the heavy load, the shelf's own weight with it; use one that its"
                            + " maker declares for that.",
                    Force.newtons(inner));
        }
    }

    private void back(Finding.Draft draft, Supports supports) {
        switch (supports.back()) {
            case ON_CLEAT ->
                draft.note(
                        "The back only lies on its cleat, so its corners lift and the front sags a third more than if"
                                + " one screw near each end held it down.");
            case SCREWED_TO_CLEAT, SCREWED_TO_BACK ->
                draft.note("The back corners want to lift: it must be screwed down near both ends.");
            case FREE -> {}
        }
        EdgePiece front = shelf.section().front();
        EdgePiece back = shelf.section().back();
        if ((front != null && !front.glued()) || (back != null && !back.glued())) {
            draft.note("A strip that is not glued slips: it counts as a beam beside the board and no more.");
        }
    }

    private void tests(Finding.Draft draft) {
        SolvedShelf even = shelf.loads().isPlain() ? model.solved() : new SolvedShelf(shelf.evenly());
        double one = even.perKilogram().largest();
        List<Quantity> numbers = new ArrayList<>();
        List<String> parts = new ArrayList<>();
        for (TestLoad test : TestLoad.ALL) {
            double load =
                    test.perLength(shelf.supports().length(), shelf.depth().metres());
            parts.add(test.said() + " {} where {} is allowed");
            numbers.add(ShelfSag.sag(test.after(one * load, shelf.creep().expected())));
            numbers.add(new Length(test.limit(shelf.bay())));
            draft.evidence(test.source());
        }
        draft.note(new Words(
                "For comparison, under published test loads it would sag, on average: " + String.join("; ", parts)
                        + ".",
                numbers));
    }

    private static String nearest(List<Outcome> outcomes) {
        Outcome least = outcomes.get(0);
        for (Outcome outcome : outcomes) {
            if (outcome.planned().factor() < least.planned().factor()) {
                least = outcome;
            }
        }
        return least.planned().what();
    }

    /** The sizes that would just do. */
    private record Limits(
            ShelfLimits of, Optional<ShelfSag> longest, Optional<ShelfSag> thinnest, Optional<ShelfSag> heaviest) {}

    private Limits limits(Finding.Draft draft) {
        ShelfLimits of = new ShelfLimits(shelf, model, worst);
        Limits limits = new Limits(of, of.longestSpan(), of.leastThickness(), of.heaviestLoad());
        limits.longest().ifPresent(s -> draft.size("longest span for this board and load", s.span()));
        limits.thinnest().ifPresent(s -> draft.size("thinnest board for this span and load", s.thickness()));
        limits.heaviest().ifPresent(s -> {
            double perLength = s.load().expected();
            draft.size(
                    "most of " + s.load().said() + " that it carries, along the shelf",
                    Amount.of(perLength, Dimension.LINE_MASS));
            draft.size("the same in all", Mass.kilograms(perLength * filled()));
        });
        bearing(draft);
        return limits;
    }

    private void cures(Finding.Draft draft, Limits limits) {
        if (outcomes.stream().noneMatch(o -> o.verdict() == Verdict.FAILS)) {
            return;
        }
        Optional<ShelfSag> strip = limits.of().leastStrip();
        draft.remedies(
                new ShelfCures(shelf).all(limits.longest(), limits.thinnest(), limits.heaviest(), strip, outcomes));
        if (limits.of().takesStrip() && strip.isEmpty()) {
            draft.note("No front strip up to 150 mm deep is enough: it straightens the front, and the back goes on"
                    + " sagging. Hold or stiffen the back as well.");
        }
    }

    private double filled() {
        Loads.Filled filled = shelf.loads().filled();
        return filled == null
                ? shelf.supports().length()
                : filled.to().minus(filled.from()).metres();
    }

    /** How far the ends must lie on, where it was not said; at full depth, as on cleats and in housings. */
    private void bearing(Finding.Draft draft) {
        Double pressed = shelf.stock().strengths().bearing();
        if (pressed == null
                || shelf.supports().bearing() != null
                || shelf.supports().ends() == Support.PINS) {
            return;
        }
        double needed = model.solved().heavy().end() / (pressed * shelf.depth().metres());
        draft.size("least bearing of each end", shelf.in().rule().up(new Length(needed)));
    }
}
