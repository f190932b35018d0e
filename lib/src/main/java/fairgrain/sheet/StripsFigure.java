package fairgrain.sheet;

import fairgrain.design.Box;
import fairgrain.drawing.Drawing;
import fairgrain.drawing.Mark;
import fairgrain.drawing.Paper;
import fairgrain.drawing.Pen;
import fairgrain.drawing.Point;
import fairgrain.hanging.BevelledPair;
import fairgrain.hanging.BevelledRails;
import fairgrain.hanging.CaseScrews;
import fairgrain.hanging.Fixing;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.List;

/** Two bevelled strips hooked over each other, cut across and seen from the side: the wall to the left, the case to the right. */
final class StripsFigure {
    private static final double HIGHEST = 100;
    private static final double WIDEST = 60;
    private static final double WALL = 24; // mm from the left: the face that the wall strip lies on
    private static final double TOP = 6;
    private static final double HEAD = 1; // mm on paper, half of it

    private final Fixing fixing;
    private final BevelledPair pair;
    private final ShopRule rule;
    private final OnPaper scale;
    private final Paper paper = new Paper();
    private final Length depth;
    private final Length rise;
    private final Length behind;
    private final double foot;

    private StripsFigure(BevelledRails rails, Box box, ShopRule rule) {
        fixing = rails.hanging().fixing();
        pair = rails.pair();
        this.rule = rule;
        depth = fixing.rail().depth().orElseThrow();
        rise = fixing.rail().thickness().times(Math.tan(pair.bevel()));
        behind = pair.screws().member().thickness();
        Length across = fixing.rail().thickness().plus(behind).plus(box.backThickness());
        scale = OnPaper.fitting(across.metres(), WIDEST, high().metres(), HIGHEST);
        foot = TOP + scale.mm(high());
    }

    /** From the lower edge of the wall strip to the upper edge of the case strip. */
    private Length high() {
        return depth.minus(rise).plus(pair.caseDepth());
    }

    static Block.Figure of(BevelledRails rails, Box box, ShopRule rule) {
        StripsFigure figure = new StripsFigure(rails, box, rule);
        figure.wood();
        figure.screws();
        List<String> said = figure.sizes();
        Drawing drawing = figure.paper.drawing(
                rails.part() + ", its strips",
                "Two strips " + rule.text(figure.fixing.rail().thickness())
                        + " thick, their bevels on each other, that on the wall below and towards the wall: "
                        + String.join(", ", said) + ".",
                OnPaper.WIDTH,
                figure.foot + 18);
        return new Block.Figure(
                drawing,
                "Cut across, seen from the side, " + figure.scale.word()
                        + ": wall, wall strip below, case strip above it, and what it is screwed to.");
    }

    private void wood() {
        double thick = scale.mm(fixing.rail().thickness());
        double face = WALL + thick;
        paper.line(Pen.EDGE, new Point(WALL, TOP - 3), new Point(WALL, foot + 4));
        for (double y = TOP; y < foot + 4; y += 4) {
            paper.line(Pen.FINE, new Point(WALL, y), new Point(WALL - 3, y + 3));
        }
        paper.area(
                Mark.Shade.OTHER_WOOD,
                new Point(WALL, foot),
                new Point(face, foot),
                new Point(face, up(depth)),
                new Point(WALL, up(depth.minus(rise))));
        paper.area(
                Mark.Shade.WOOD,
                new Point(WALL, up(depth.minus(rise))),
                new Point(face, up(depth)),
                new Point(face, TOP),
                new Point(WALL, TOP));
        paper.box(Mark.Shade.PAPER, new Point(face, TOP), new Point(face + scale.mm(behind), up(depth.minus(rise))));
    }

    private void screws() {
        double face = WALL + scale.mm(fixing.rail().thickness());
        Length lower = WallBlocks.railAbove(fixing);
        for (Length height : WallFigure.heights(fixing)) {
            screw(face, -scale.mm(fixing.length()), up(height.minus(lower)));
        }
        CaseScrews own = pair.screws();
        double y = TOP + scale.mm(own.belowTop());
        boolean inside = own.driven() == CaseScrews.Driven.FROM_INSIDE;
        screw(inside ? face + scale.mm(behind) : WALL, (inside ? -1 : 1) * scale.mm(own.length()), y);
    }

    /** From under its head, to the left if it is of negative length. */
    private void screw(double head, double length, double y) {
        paper.line(Pen.ACCENT, new Point(head, y - HEAD), new Point(head, y + HEAD));
        paper.line(Pen.ACCENT, new Point(head, y), new Point(Math.max(0.5, head + length), y));
    }

    /** Dimension lines; gives what they say. */
    private List<String> sizes() {
        double face = WALL + scale.mm(fixing.rail().thickness());
        double right = face + scale.mm(behind);
        List<String> said = new ArrayList<>();
        double first = right + 4;
        paper.line(Pen.FINE, new Point(face, foot), new Point(first + 2, foot));
        paper.line(Pen.FINE, new Point(face, up(depth)), new Point(first + 2, up(depth)));
        paper.up(first, up(depth), foot, rule.text(depth));
        said.add("wall strip " + rule.text(depth) + " deep to its point");
        Length belowTop = pair.screws().belowTop();
        double screws = TOP + scale.mm(belowTop);
        paper.line(Pen.FINE, new Point(right, screws), new Point(first + 2, screws));
        paper.up(first, TOP, screws, rule.text(belowTop));
        said.add("screws of the case strip " + rule.text(belowTop) + " below its upper edge");
        double second = first + 18;
        paper.line(Pen.FINE, new Point(right, TOP), new Point(second + 2, TOP));
        paper.line(Pen.FINE, new Point(WALL, up(depth.minus(rise))), new Point(second + 2, up(depth.minus(rise))));
        paper.up(second, TOP, up(depth.minus(rise)), rule.text(pair.caseDepth()));
        said.add("case strip " + rule.text(pair.caseDepth()) + " deep to its point");
        double below = foot + 10;
        paper.helper(WALL, foot, below + 1);
        paper.helper(face, foot, below + 1);
        paper.across(WALL, face, below, rule.text(fixing.rail().thickness()));
        String bevel = "bevel " + Math.round(Math.toDegrees(pair.bevel())) + "\u00b0 from level";
        paper.words(bevel, new Point(WALL, below + 6), Mark.Anchor.BEGINNING);
        said.add(bevel);
        return said;
    }

    private double up(Length height) {
        return foot - scale.mm(height);
    }
}
