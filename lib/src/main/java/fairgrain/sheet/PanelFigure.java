package fairgrain.sheet;

import fairgrain.clearance.PanelFit;
import fairgrain.drawing.Drawing;
import fairgrain.drawing.Mark;
import fairgrain.drawing.Paper;
import fairgrain.drawing.Pen;
import fairgrain.drawing.Point;
import fairgrain.finding.Check;
import fairgrain.finding.Reliability;
import fairgrain.part.Tongue;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.List;

/**
 * A panel in its grooves, cut across: at the dry end, on the day, at the damp end. Full size, the middle left out; the two ends
 * at the likely worst case that the checks stand at.
 */
final class PanelFigure {
    private static final double WIDTH = 92; // mm: full size still fits the width of a phone
    private static final double SIDE =
            14; // mm of stile beyond its inner edge that is drawn, and more if the groove is deep
    private static final double CHEEK = 5; // mm of stile on either side of the groove
    private static final double ROW_GAP = 9;
    private static final double BREAK = 2.2;

    private final PanelFit fit;
    private final Paper paper = new Paper();
    private final double depth;
    private final double groove;
    private final double side;
    private double top = 6;

    private PanelFigure(PanelFit fit) {
        this.fit = fit;
        depth = mm(fit.opening().groove().depth());
        groove = mm(fit.opening().groove().width());
        side = Math.max(SIDE, depth + 4);
    }

    static Drawing of(PanelFit fit, ShopRule rule) {
        PanelFigure figure = new PanelFigure(fit);
        PanelFit.Fit expected = fit.answer();
        List<Check> planned = Reliability.outcomes(fit, fit.in().deviations()).stream()
                .map(outcome -> outcome.planned())
                .toList();
        Length left = new Length(planned.get(0).margin());
        Length hold = new Length(planned.get(1).capacity());
        Length gap = expected.room().minus(fit.width());
        List<String> said = new ArrayList<>();
        said.add(figure.row("dry end", figure.held(hold), "stays in the groove: " + rule.text(hold)));
        said.add(figure.row(
                "on the day",
                new double[] {mm(gap) / 2, mm(gap) / 2},
                "gap at each side: " + rule.text(rule.down(gap.times(0.5)))));
        said.add(figure.row(
                "damp end",
                fit.panel().pinned() ? new double[] {mm(left) / 2, mm(left) / 2} : new double[] {0, mm(left)},
                left.metres() < 0
                        ? "too wide by " + rule.text(new Length(-left.metres()))
                        : "gap still left in all: " + rule.text(left)));
        return figure.paper.drawing(
                fit.part() + " in its grooves",
                fit.part() + ", " + rule.text(fit.width()) + " wide when cut, in grooves "
                        + rule.text(fit.opening().groove().depth()) + " deep. " + String.join(". ", said) + ".",
                WIDTH,
                figure.top - ROW_GAP + 4);
    }

    /** Gaps at the floors of the left and right groove at the dry end [mm]. */
    private double[] held(Length hold) {
        double right = depth - mm(hold);
        return fit.panel().pinned() ? new double[] {right, right} : new double[] {0, right};
    }

    /** One state; gives what it says. */
    private String row(String when, double[] gaps, String says) {
        Tongue tongue = fit.panel().tongue();
        double full = mm(fit.panel().board().thickness());
        double edge = Math.min(tongue == null ? full : mm(tongue.thickness()), groove);
        double thick = tongue == null ? edge : full;
        double stile = Math.max(groove + 2 * CHEEK, thick + 2);
        paper.words(when, new Point(0, top), Mark.Anchor.BEGINNING);
        paper.words(says, new Point(OnPaper.RIGHT, top), Mark.Anchor.END);
        double y = top + 2;
        double middle = y + stile / 2;
        frame(y, stile, middle, 1);
        frame(y, stile, middle, -1);
        double left = side - depth + gaps[0];
        double right = WIDTH - side + depth - gaps[1];
        double shoulder = tongue == null ? 0 : mm(tongue.length());
        double back = middle - edge / 2;
        double face = middle + edge / 2;
        double front = tongue == null ? face : back + thick;
        half(left, WIDTH / 2 - BREAK, left + shoulder, back, face, front);
        half(right, WIDTH / 2 + BREAK, right - shoulder, back, face, front);
        paper.line(Pen.DASHED, new Point(side, y - 1), new Point(side, y + stile + 1));
        paper.line(Pen.DASHED, new Point(WIDTH - side, y - 1), new Point(WIDTH - side, y + stile + 1));
        top = y + Math.max(stile, front - y + 1) + ROW_GAP;
        return when + ": " + says;
    }

    /** One stile with its groove; to the left of the drawing if {@code hand} is 1. */
    private void frame(double y, double stile, double middle, int hand) {
        double outer = hand > 0 ? 0 : WIDTH;
        double inner = outer + hand * side;
        double floor = inner - hand * depth;
        paper.area(
                Mark.Shade.OTHER_WOOD,
                new Point(outer, y),
                new Point(inner, y),
                new Point(inner, middle - groove / 2),
                new Point(floor, middle - groove / 2),
                new Point(floor, middle + groove / 2),
                new Point(inner, middle + groove / 2),
                new Point(inner, y + stile),
                new Point(outer, y + stile));
    }

    /** Half of the panel, from its edge to the middle that is left out. */
    private void half(double edge, double cut, double shoulder, double back, double face, double front) {
        double middle = (back + front) / 2;
        double nick = edge < cut ? BREAK / 2 : -BREAK / 2;
        paper.area(
                Mark.Shade.WOOD,
                new Point(edge, back),
                new Point(cut, back),
                new Point(cut + nick, middle),
                new Point(cut, front),
                new Point(shoulder, front),
                new Point(shoulder, face),
                new Point(edge, face));
    }

    private static double mm(Length length) {
        return length.metres() * 1000;
    }
}
