package fairgrain.sheet;

import fairgrain.clearance.ClosingEdge;
import fairgrain.clearance.DoorGap;
import fairgrain.clearance.GapFit;
import fairgrain.clearance.HungDoor;
import fairgrain.drawing.Drawing;
import fairgrain.drawing.Mark;
import fairgrain.drawing.Paper;
import fairgrain.drawing.Pen;
import fairgrain.drawing.Point;
import fairgrain.finding.Outcome;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A door in its opening: from the front to scale, and its moving edge cut across at full size, at the dry end, on the day, at the
 * damp end. Both ends are drawn at the likely worst that the checks stand at.
 */
final class DoorFigure {
    private static final double EDGE_AT = 44; // mm from the left, where the moving edge stands on the day
    private static final double CASE = 16; // mm of the case that is drawn
    private static final double BREAK = 1.6;
    private static final double ROW_GAP = 9;
    private static final double WIDEST = 60;
    private static final double HIGHEST = 48;

    private final DoorGap asked;
    private final GapFit set;
    private final ShopRule rule;
    private final Paper paper = new Paper();
    private double top = 6;

    private DoorFigure(DoorGap asked, ShopRule rule) {
        this.asked = asked;
        this.set = asked.set();
        this.rule = rule;
    }

    /**
     * The drawing.
     *
     * @param outcomes of its finding: the least, then the most if one is wanted
     */
    static Block.Figure of(DoorGap asked, List<Outcome> outcomes, ShopRule rule) {
        DoorFigure figure = new DoorFigure(asked, rule);
        List<String> said = new ArrayList<>();
        String scale = "";
        if (asked.side() == DoorGap.Side.WIDTH) {
            OnPaper small = figure.front(said);
            scale = "From the front " + small.word() + ". ";
        }
        GapFit.Gap expected = figure.set.answer();
        boolean gap = figure.set.kind() == GapFit.Kind.GAP;
        Length least = figure.set
                .wanted()
                .least()
                .plus(new Length(outcomes.get(0).planned().margin()));
        Length most = figure.set.wanted().most() == null
                ? (gap ? expected.atDry() : expected.atDamp())
                : new Length(outcomes.get(1).planned().demand());
        boolean known = asked.in().day().known();
        said.add(figure.row("dry end", gap ? most : least, known ? expected.atDry() : null));
        said.add(figure.row("on the day", figure.set.today(), figure.set.today()));
        said.add(figure.row("damp end", gap ? least : most, known ? expected.atDamp() : null));
        Drawing drawing = figure.paper.drawing(
                asked.part() + " in its opening, " + figure.set.where(),
                asked.part() + ", " + figure.set.where() + ". " + String.join(". ", said) + ".",
                OnPaper.WIDTH,
                figure.top - ROW_GAP + 4);
        return new Block.Figure(
                drawing,
                scale
                        + "The edge that moves, cut across, full size when printed 92 mm wide; both ends of the year"
                        + " at the likely worst for 19 boards in 20.");
    }

    /** The opening and what closes it. */
    private OnPaper front(List<String> said) {
        HungDoor door = asked.door();
        boolean inset = door.hung() == HungDoor.Hung.INSET;
        int leaves = door.pair() ? 2 : 1;
        double gap = set.kind() == GapFit.Kind.GAP ? set.today().metres() : 0;
        double over = inset ? 0 : door.overlap().metres();
        OnPaper scale = OnPaper.fitting(
                door.width().metres() + 2 * over, WIDEST, door.height().metres() + 2 * over, HIGHEST);
        double width = scale.mm(door.width());
        double height = scale.mm(door.height());
        double side = Math.max(1.5, Math.min(4, scale.mm(0.02)));
        double left = side + 3;
        double y = 10 + side;
        paper.box(
                Mark.Shade.OTHER_WOOD,
                new Point(left - side, y - side),
                new Point(left + width + side, y + height + side));
        paper.box(Mark.Shade.PAPER, new Point(left, y), new Point(left + width, y + height));
        double leaf = scale.mm(asked.size());
        double between = scale.mm(gap);
        double upper = inset ? y + between : y - scale.mm(over);
        double lower = inset ? y + height - between : y + height + scale.mm(over);
        double x = inset ? left + between : left - scale.mm(over);
        for (int i = 0; i < leaves; i++) {
            leaf(scale, x, x + leaf, upper, lower);
            if (i == 0) {
                paper.across(x, x + leaf, 6, rule.text(asked.size()));
            }
            x += leaf + between;
        }
        double below = y + height + side + 5;
        paper.helper(left, y + height, below + 1);
        paper.helper(left + width, y + height, below + 1);
        paper.across(left, left + width, below, rule.text(door.width()));
        paper.up(left + width + side + 3, y, y + height, rule.text(door.height()));
        said.add((leaves == 1 ? "the door " : "each door ") + rule.text(asked.size()) + " wide in an opening "
                + rule.text(door.width()) + " wide and " + rule.text(door.height()) + " high");
        top = below + 9;
        return scale;
    }

    private void leaf(OnPaper scale, double x1, double x2, double y1, double y2) {
        double stile = scale.mm(asked.door().frame().stileWidth());
        double rail = scale.mm(asked.door().frame().railWidth());
        paper.box(Mark.Shade.WOOD, new Point(x1, y1), new Point(x2, y2));
        paper.line(Pen.FINE, new Point(x1 + stile, y1), new Point(x1 + stile, y2));
        paper.line(Pen.FINE, new Point(x2 - stile, y1), new Point(x2 - stile, y2));
        paper.line(Pen.FINE, new Point(x1 + stile, y1 + rail), new Point(x2 - stile, y1 + rail));
        paper.line(Pen.FINE, new Point(x1 + stile, y2 - rail), new Point(x2 - stile, y2 - rail));
    }

    /** One state; gives what it says. */
    private String row(String when, Length is, @Nullable Length expected) {
        String word = set.kind() == GapFit.Kind.GAP ? "gap" : "overlap";
        String size = is.metres() < 0
                ? (set.kind() == GapFit.Kind.GAP ? "binds, too big by " : "falls short by ") + rule.text(is.times(-1))
                : word + " " + rule.text(is);
        String says = expected == null || expected.equals(is) ? size : size + ", expected " + rule.text(expected);
        paper.words(when, new Point(0, top), Mark.Anchor.BEGINNING);
        paper.words(says, new Point(OnPaper.RIGHT, top), Mark.Anchor.END);
        double y = top + 2.5;
        double thick =
                Math.min(40, OnPaper.FULL_SIZE.mm(asked.door().frame().stile().thickness()));
        double gap = OnPaper.FULL_SIZE.mm(is);
        double bottom = set.kind() == GapFit.Kind.GAP ? gapRow(y, thick, gap) : overlapRow(y, thick, gap);
        top = bottom + ROW_GAP;
        return when + ": " + says;
    }

    private double gapRow(double y, double thick, double gap) {
        double still = EDGE_AT + OnPaper.FULL_SIZE.mm(set.today());
        double moving = still - Math.max(gap, 0);
        boolean pair = asked.side() == DoorGap.Side.WIDTH && asked.door().pair();
        double back = setBack();
        // the front of the door is the lower edge of the drawing
        piece(8, moving, y, y + thick, back);
        if (pair) {
            otherLeaf(still, y, y + thick, back);
        } else {
            paper.box(Mark.Shade.OTHER_WOOD, new Point(still, y - 1), new Point(still + CASE, y + thick));
            named("case", still, still + CASE, y + thick / 2);
        }
        if (gap > 0) {
            paper.helper(moving, y + thick, y + thick + 5);
            paper.helper(still, y + thick, y + thick + 5);
            paper.across(moving, still, y + thick + 4, rule.text(new Length(gap / 1000)));
        }
        return y + thick + 5;
    }

    private double overlapRow(double y, double thick, double overlap) {
        double inner = 50;
        paper.box(Mark.Shade.OTHER_WOOD, new Point(inner, y), new Point(inner + 19, y + CASE));
        named("case", inner, inner + 19, y + CASE / 2);
        double edge = inner + overlap;
        piece(8, edge, y + CASE, y + CASE + thick, 0);
        double below = y + CASE + thick;
        if (overlap > 0) {
            paper.helper(inner, below, below + 5);
            paper.helper(edge, below, below + 5);
            paper.across(inner, edge, below + 4, rule.text(new Length(overlap / 1000)));
        }
        return below + 5;
    }

    private double setBack() {
        ClosingEdge edge = set.edge();
        return edge == null ? 0 : OnPaper.FULL_SIZE.mm(edge.setBack());
    }

    /** The moving edge; its far end is broken off. */
    private void piece(double from, double to, double back, double front, double setBack) {
        double middle = (back + front) / 2;
        paper.area(
                Mark.Shade.WOOD,
                new Point(from, back),
                new Point(to - setBack, back),
                new Point(to, front),
                new Point(from, front),
                new Point(from + BREAK, middle));
        named(asked.side() == DoorGap.Side.WIDTH ? "stile" : "rail", from, to, middle);
    }

    private void named(String what, double from, double to, double middle) {
        paper.words(what, new Point((from + to) / 2, middle + Paper.LETTERS / 3), Mark.Anchor.MIDDLE);
    }

    private void otherLeaf(double from, double back, double front, double setBack) {
        double to = 90;
        double middle = (back + front) / 2;
        paper.area(
                Mark.Shade.WOOD,
                new Point(from + setBack, back),
                new Point(to, back),
                new Point(to - BREAK, middle),
                new Point(to, front),
                new Point(from, front));
        named("stile", from, to, middle);
    }
}
