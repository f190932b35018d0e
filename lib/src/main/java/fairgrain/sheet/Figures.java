package fairgrain.sheet;

import fairgrain.clearance.DoorGap;
import fairgrain.clearance.PanelFit;
import fairgrain.clearance.PanelWidth;
import fairgrain.clearance.StockReady;
import fairgrain.design.Asked;
import fairgrain.design.Box;
import fairgrain.design.Design;
import fairgrain.design.Review;
import fairgrain.design.Wall;
import fairgrain.drawing.Drawing;
import fairgrain.finding.Outcome;
import fairgrain.finding.Question;
import fairgrain.hanging.BevelledRails;
import fairgrain.hanging.Hanging;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import fairgrain.shelf.ShelfSag;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Which drawing goes with a question. One more kind of drawing is one more line in {@link #of(Asked, Review, ShopRule)}. */
final class Figures {
    private Figures() {}

    /** The drawing of what is asked about; empty where there is nothing to draw. */
    static Optional<Block.Figure> of(Asked<?> asked, Review review, ShopRule rule) {
        Question<?> question = asked.question();
        List<Outcome> outcomes = asked.findings().get(0).outcomes();
        if (question instanceof PanelWidth width) {
            return Optional.of(panel(width.chosen(), rule));
        }
        if (question instanceof PanelFit fit) {
            return Optional.of(panel(fit, rule));
        }
        if (question instanceof StockReady) {
            return year(review, rule);
        }
        if (question instanceof DoorGap gap) {
            return Optional.of(DoorFigure.of(gap, outcomes, rule));
        }
        if (question instanceof ShelfSag shelf) {
            return Optional.of(ShelfFigure.of(shelf, outcomes, rule));
        }
        return Optional.empty();
    }

    /** The case on its wall, and the strips it hooks over; they go with the marks. */
    static List<Block.Figure> wall(Review review, ShopRule rule) {
        Design design = review.design();
        if (design.box().isEmpty()) {
            return List.of();
        }
        Box box = design.box().get();
        List<Block.Figure> all = new ArrayList<>();
        for (Hanging hanging : Questions.of(review, Hanging.class)) {
            all.add(WallFigure.of(hanging, box, aboveFloor(design), rule));
        }
        for (BevelledRails rails : Questions.of(review, BevelledRails.class)) {
            all.add(WallFigure.hooked(rails.hanging(), box, aboveFloor(design), rule));
            all.add(StripsFigure.of(rails, box, rule));
        }
        return List.copyOf(all);
    }

    /** The year that the piece lives through, with its widest panel. */
    static Optional<Block.Figure> year(Review review, ShopRule rule) {
        return YearFigure.of(
                review.design().setting(), panels(review).stream().max(Comparator.comparing(PanelFit::width)), rule);
    }

    /** Every panel, as it is cut or to be cut. */
    static List<PanelFit> panels(Review review) {
        return review.asked().stream()
                .map(Asked::question)
                .filter(question -> question instanceof PanelWidth || question instanceof PanelFit)
                .map(question -> question instanceof PanelWidth width ? width.chosen() : (PanelFit) question)
                .toList();
    }

    static Length aboveFloor(Design design) {
        return design.parts(Wall.class).stream()
                .map(Wall::aboveFloor)
                .findFirst()
                .orElse(Length.ZERO);
    }

    private static Block.Figure panel(PanelFit fit, ShopRule rule) {
        Drawing drawing = PanelFigure.of(fit, rule);
        return new Block.Figure(
                drawing,
                "Cut across, full size when printed 92 mm wide; the middle is left out. Both ends of the year at the"
                        + " likely worst for 19 boards in 20.");
    }
}
