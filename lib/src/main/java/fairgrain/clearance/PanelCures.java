package fairgrain.clearance;

import fairgrain.finding.Remedy;
import fairgrain.finding.Words;
import fairgrain.part.Board;
import fairgrain.part.Groove;
import fairgrain.part.Opening;
import fairgrain.part.Panel;
import fairgrain.part.RingAngle;
import fairgrain.part.Tongue;
import fairgrain.quantity.Length;
import fairgrain.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What would open an empty window, in the order of least change: a pin, a deeper groove, quartersawn stock, a muntin. */
final class PanelCures {
    private static final Length DEEPEST = Length.mm(20); // judgement: deeper, and little of the frame is left
    private static final Length MUNTIN = Length.inches(2);
    private static final Length MUNTIN_METRIC = Length.mm(50);

    private PanelCures() {}

    /**
     * Cures of an empty window.
     *
     * @param thickest edge that is a slip fit; a thicker one is planed to it first
     */
    static List<Remedy> of(PanelFit uncut, Length thickest) {
        boolean binds =
                uncut.edge().filter(edge -> edge.compareTo(thickest) > 0).isPresent();
        PanelFit base = binds ? thinned(uncut, thickest) : uncut;
        String first = binds ? "Plane its edge to the thickness above, and: " : "";
        List<Remedy> alone = oneByOne(base, first);
        return alone.isEmpty() && !base.panel().pinned()
                ? oneByOne(pinned(base), first + "Pin it at its centre, and: ")
                : alone;
    }

    /**
     * Cures of a panel that is cut already: plane it; where no width at all will do, change the frame, best so that this panel still
     * serves. Where a wider one would do, another must be cut: that is no cure of this one.
     */
    static List<Remedy> asCut(PanelFit fit, Length thickest) {
        Optional<PanelFit> good = new PanelWidth(fit).cut().filter(PanelFit::holds);
        if (good.isPresent()) {
            return good.get().width().compareTo(fit.width()) > 0
                    ? List.of()
                    : List.of(new Remedy(
                            Words.of(
                                    "Plane it down to {} on a day as damp as the one it was measured on.",
                                    good.get().width()),
                            good.get()));
        }
        List<Remedy> all = of(fit, thickest);
        List<Remedy> stillServes = all.stream()
                .filter(cure -> cure.then() instanceof PanelFit then
                        && then.width().compareTo(fit.width()) <= 0
                        && then.panel()
                                .board()
                                .rings()
                                .equals(fit.panel().board().rings()))
                .toList();
        return stillServes.isEmpty() ? all : stillServes;
    }

    /** A thinner edge, or a longer tongue, where that alone mends it. */
    static List<Remedy> ofEdge(PanelFit fit, Length thickest) {
        if (fit.edge().filter(edge -> edge.compareTo(thickest) > 0).isEmpty()) {
            return longerTongue(fit);
        }
        PanelFit then = thinned(fit, thickest);
        return fit.holds() || !then.holds()
                ? List.of()
                : List.of(new Remedy(Words.of("Plane its edge to {} where it lies in the groove.", thickest), then));
    }

    private static PanelFit thinned(PanelFit fit, Length thickness) {
        Panel panel = fit.panel();
        Tongue tongue = panel.tongue();
        Board board = panel.board();
        return fit.panel(
                tongue == null
                        ? panel.board(new Board(board.wood(), board.shrinkage(), board.rings(), thickness))
                        : panel.tongue(new Tongue(thickness, tongue.length())));
    }

    private static List<Remedy> longerTongue(PanelFit fit) {
        Tongue tongue = fit.panel().tongue();
        if (tongue == null || fit.holds()) {
            return List.of();
        }
        Panel panel = fit.panel();
        Length length = fit.in().rule().up(fit.opening().groove().depth().plus(PanelWords.SHOULDER_CLEAR));
        PanelFit then = fit.panel(panel.tongue(new Tongue(tongue.thickness(), length)));
        return length.compareTo(tongue.length()) > 0 && then.holds()
                ? List.of(new Remedy(Words.of("Cut the tongue {} long, from its edge to the shoulder.", length), then))
                : List.of();
    }

    private static List<Remedy> oneByOne(PanelFit uncut, String before) {
        List<Remedy> cures = new ArrayList<>();
        if (!uncut.panel().pinned()) {
            new PanelWidth(pinned(uncut))
                    .cut()
                    .filter(PanelFit::holds)
                    .ifPresent(fit -> cures.add(new Remedy(
                            Words.of(
                                    before + "Pin it at the centre of its top and bottom edge and cut it {} wide.",
                                    fit.width()),
                            fit)));
        }
        deeper(uncut)
                .ifPresent(fit -> cures.add(new Remedy(
                        Words.of(
                                before + "Cut the grooves {} deep and the panel {} wide.",
                                fit.opening().groove().depth(),
                                fit.width()),
                        fit)));
        Board board = uncut.panel().board();
        if (!board.rings().equals(RingAngle.QUARTERSAWN)) {
            Board quartersawn = new Board(board.wood(), board.shrinkage(), RingAngle.QUARTERSAWN, board.thickness());
            new PanelWidth(uncut.panel(uncut.panel().board(quartersawn)))
                    .cut()
                    .filter(PanelFit::holds)
                    .ifPresent(fit -> cures.add(new Remedy(
                            Words.of(before + "Use quartersawn stock and cut the panel {} wide.", fit.width()), fit)));
        }
        divided(uncut)
                .ifPresent(fit -> cures.add(new Remedy(
                        Words.of(
                                before
                                        + "Divide the frame by a muntin {} wide, and cut each of the two panels {}"
                                        + " wide.",
                                muntin(uncut),
                                fit.width()),
                        fit)));
        return cures;
    }

    private static PanelFit pinned(PanelFit uncut) {
        return uncut.panel(uncut.panel().pinned(true));
    }

    private static Optional<PanelFit> deeper(PanelFit uncut) {
        boolean inches = uncut.in().rule().system() == UnitSystem.INCHES;
        Length step = inches ? Length.inches(1 / 16.0) : Length.mm(1);
        Groove groove = uncut.opening().groove();
        double next = Math.floor(groove.depth().metres() / step.metres() + 1e-6) + 1;
        for (double n = next; n * step.metres() <= DEEPEST.metres(); n++) {
            Opening deeper = uncut.opening().groove(new Groove(step.times(n), groove.width()));
            Optional<PanelFit> fit = new PanelWidth(uncut.opening(deeper)).cut().filter(PanelFit::holds);
            if (fit.isPresent()) {
                return fit;
            }
        }
        return Optional.empty();
    }

    private static Optional<PanelFit> divided(PanelFit uncut) {
        Length half = uncut.opening().across().minus(muntin(uncut)).times(0.5);
        return Opening.ACROSS.allow(half.metres())
                ? new PanelWidth(uncut.opening(uncut.opening().across(half)))
                        .cut()
                        .filter(PanelFit::holds)
                : Optional.empty();
    }

    private static Length muntin(PanelFit uncut) {
        return uncut.in().rule().system() == UnitSystem.INCHES ? MUNTIN : MUNTIN_METRIC;
    }
}
