package fairgrain.shelf;

import fairgrain.bending.ShelfPins;
import fairgrain.finding.Caution;
import fairgrain.finding.Draw;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Outcome;
import fairgrain.finding.Reliability;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.material.Glass;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What {@link GlassShelf} says to a maker. */
final class GlassShelfWords {
    private final GlassShelf shelf;

    GlassShelfWords(GlassShelf shelf) {
        this.shelf = shelf;
    }

    Finding finding() {
        GlassPlate plate = GlassPlate.of(shelf.glass(), shelf.rest());
        Model<GlassShelf.Held> model = shelf.model(plate);
        GlassShelf.Held held = model.at(Draw.AS_PLANNED);
        List<Outcome> outcomes =
                Reliability.outcomes(model, shelf.spreads(), shelf.in().deviations());
        Finding.Draft draft = Finding.about(shelf.part(), "does the glass hold", why(held), shelf.evidence())
                .outcomes(outcomes)
                .cautions(Caution.GLASS, Caution.SHARDS, Caution.ASSUMED_CONTENTS, Caution.SHELF_IN_USE);
        missing(draft);
        notes(draft, held);
        GlassLimits limits = new GlassLimits(shelf, plate);
        Optional<GlassShelf> thinnest = limits.leastThickness();
        Optional<GlassShelf> longest = limits.longestSpan();
        Optional<GlassShelf> heaviest = limits.heaviestLoad();
        thinnest.ifPresent(s -> draft.size("thinnest glass for this span and load", s.thickness()));
        longest.ifPresent(
                s -> draft.size("longest span for this glass and load", s.rest().span()));
        heaviest.ifPresent(s -> draft.size("heaviest load for this glass and span", heavy(s)));
        if (outcomes.stream().anyMatch(o -> o.verdict() == Verdict.FAILS)) {
            draft.remedies(cures(thinnest, longest, heaviest));
        }
        return draft.done();
    }

    private Words why(GlassShelf.Held held) {
        return Words.of(
                "Under {} of " + shelf.use().load().said()
                        + " at the heaviest and its own weight the glass is stressed to {}, and sags about {} under"
                        + " what is expected.",
                heavy(shelf),
                stress(Math.max(held.field(), held.overPins())),
                held.sag());
    }

    private void missing(Finding.Draft draft) {
        if (shelf.cut()) {
            draft.missing(
                    "how strong glass is beside a hole or a notch",
                    "have a glass maker size it, or hold the pane without holes and notches");
        }
        if (shelf.use().peopleNear() && shelf.glass().kind() == Glass.Kind.ANNEALED) {
            draft.missing(
                    "whether annealed glass may hang where people sit or sleep below or children reach",
                    "use laminated or toughened safety glass there");
        }
    }

    private void notes(Finding.Draft draft, GlassShelf.Held held) {
        draft.note(
                "Loads without factors: {} of all that stays, against {}. The checks set loads with their factors"
                        + " against the design strength; never compare the one with the other.",
                stress(Math.max(held.field(), held.overPins())),
                stress(shelf.glass().serviceStrength()));
        draft.note(
                "No standard found is written for glass shelves; the ones for window glass leave furniture out. Their"
                        + " strength is borrowed here.");
        if (shelf.rest().bearing().compareTo(shelf.goodBearing()) < 0) {
            draft.note("It should lie on each support by {} or more.", shelf.goodBearing());
        }
        if (shelf.rest().isOnPins()) {
            draft.note(
                    "Over the pins it is stressed to {}, if a soft sleeve lies between glass and pin.",
                    stress(held.overPins()));
            double rear = ShelfPins.rearPin(
                    shelf.mass() * Force.STANDARD_GRAVITY,
                    shelf.use().push().newtons(),
                    0,
                    shelf.rest().pinsIn().metres(),
                    shelf.rest().depth().minus(shelf.rest().pinsIn()).metres());
            if (rear < 0) {
                draft.note("Pushed at a front corner while it is empty, it lifts off the rear pin there.");
            }
        }
        if (shelf.glass().kind() == Glass.Kind.LAMINATED) {
            draft.note("Its sheets are reckoned as not bonded: what stays makes the layer between them creep.");
        }
    }

    private static List<Remedy> cures(
            Optional<GlassShelf> thinnest, Optional<GlassShelf> longest, Optional<GlassShelf> heaviest) {
        List<Remedy> cures = new ArrayList<>();
        thinnest.ifPresent(
                s -> cures.add(new Remedy(Words.of("Use glass {} thick, edges as they are.", s.thickness()), s)));
        longest.ifPresent(s -> cures.add(
                new Remedy(Words.of("Shorten the span to {}.", s.rest().span()), s)));
        heaviest.ifPresent(
                s -> cures.add(new Remedy(Words.of("Put no more than {} on it, at the heaviest.", heavy(s)), s)));
        return cures;
    }

    private static Amount heavy(GlassShelf shelf) {
        return Amount.of(shelf.use().load().heavy(), Dimension.LINE_MASS);
    }

    private static Amount stress(double pascals) {
        return Amount.of(pascals, Dimension.STRESS);
    }
}
