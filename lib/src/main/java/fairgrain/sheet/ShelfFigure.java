package fairgrain.sheet;

import fairgrain.drawing.Drawing;
import fairgrain.drawing.Mark;
import fairgrain.drawing.Paper;
import fairgrain.drawing.Pen;
import fairgrain.drawing.Point;
import fairgrain.finding.Check;
import fairgrain.finding.Outcome;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import fairgrain.shelf.ShelfSag;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A shelf from the front, in its longest bay: its sag drawn true, and again so many times larger, against a straight line. The
 * curve is that of an even load, drawn through the largest sag.
 */
final class ShelfFigure {
    private static final double MARGIN = 6;
    private static final double LONGEST = OnPaper.WIDTH - 2 * MARGIN;
    private static final double STEEPEST = 14; // mm on paper
    private static final int POINTS = 24;
    private static final int[] TIMES = {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};
    private static final double SAMPLE = 9;

    private final ShopRule rule;
    private final Paper paper = new Paper();
    private final OnPaper scale;
    private final Length bay;
    private double y = 5;

    private ShelfFigure(ShelfSag shelf, ShopRule rule) {
        this.rule = rule;
        bay = longestBay(shelf);
        scale = OnPaper.fitting(bay.metres(), LONGEST, 0, 1);
    }

    /**
     * The drawing.
     *
     * @param outcomes of its finding: first sag, then sag after years
     */
    static Block.Figure of(ShelfSag shelf, List<Outcome> outcomes, ShopRule rule) {
        ShelfFigure figure = new ShelfFigure(shelf, rule);
        Check first = outcomes.get(0).planned();
        Check later = outcomes.get(1).planned();
        Length expected = new Length(outcomes.get(1).expected().demand());
        double worst = Math.max(later.demand(), later.capacity());
        int times = figure.times(worst);
        figure.board(shelf.thickness(), later.demand());
        figure.enlarged(first.demand(), expected.metres(), later, times);
        List<String> said = List.of(
                "at most on the first day: " + rule.text(new Length(first.demand())),
                "expected after years: " + rule.text(expected),
                "at most after years: " + rule.text(new Length(later.demand())),
                "wanted after years, no more than: " + rule.text(new Length(later.capacity())));
        figure.key(said);
        Drawing drawing = figure.paper.drawing(
                shelf.part() + ", its sag",
                shelf.part() + ", " + rule.text(figure.bay) + " between two supports, against a straight line. "
                        + "Sag " + String.join("; ", said) + ".",
                OnPaper.WIDTH,
                figure.y);
        return new Block.Figure(
                drawing,
                "From the front, " + figure.scale.word() + ", its sag at most after years drawn true. Below it the same"
                        + " sags, drawn " + times + " times as large as they are at that scale. At most: for 19 boards"
                        + " in 20.");
    }

    private static Length longestBay(ShelfSag shelf) {
        double from = 0;
        double longest = 0;
        List<Length> stands = new ArrayList<>(shelf.supports().middle());
        stands.add(shelf.span());
        for (Length stand : stands) {
            longest = Math.max(longest, stand.metres() - from);
            from = stand.metres();
        }
        return new Length(longest);
    }

    /** The most by which the sag may be enlarged and still find room. */
    private int times(double sag) {
        int most = TIMES[0];
        for (int times : TIMES) {
            most = scale.mm(sag) * times <= STEEPEST ? times : most;
        }
        return most;
    }

    /** The board as it would look. */
    private void board(Length thickness, double sag) {
        double from = left();
        double to = from + scale.mm(bay);
        paper.across(from, to, y, rule.text(bay));
        double top = y + 4;
        double thick = scale.mm(thickness);
        List<Point> outline = new ArrayList<>(curve(top, scale.mm(sag)));
        List<Point> under = new ArrayList<>(curve(top + thick, scale.mm(sag)));
        Collections.reverse(under);
        outline.addAll(under);
        paper.area(Mark.Shade.WOOD, outline.toArray(Point[]::new));
        paper.line(Pen.DASHED, new Point(from, top), new Point(to, top));
        support(from, top + thick);
        support(to, top + thick);
        y = top + thick + 3 + Math.min(STEEPEST, scale.mm(sag)) + 6;
    }

    private void enlarged(double first, double expected, Check later, int times) {
        double from = left();
        double to = from + scale.mm(bay);
        paper.line(Pen.FINE, new Point(from, y), new Point(to, y));
        support(from, y);
        support(to, y);
        paper.line(Pen.DASHED, curve(y, times * scale.mm(first)));
        paper.line(Pen.EDGE, curve(y, times * scale.mm(expected)));
        paper.line(Pen.ACCENT, curve(y, times * scale.mm(later.demand())));
        double limit = y + times * scale.mm(later.capacity());
        double middle = (from + to) / 2;
        paper.line(Pen.FINE, new Point(middle - 14, limit), new Point(middle + 14, limit));
        paper.line(Pen.FINE, new Point(middle - 14, limit + 0.7), new Point(middle + 14, limit + 0.7));
        y += Math.max(times * scale.mm(later.demand()), times * scale.mm(later.capacity())) + 7;
    }

    /** What each line is. */
    private void key(List<String> said) {
        List<Pen> pens = List.of(Pen.DASHED, Pen.EDGE, Pen.ACCENT, Pen.FINE);
        for (int i = 0; i < said.size(); i++) {
            double line = y - Paper.LETTERS / 3;
            paper.line(pens.get(i), new Point(0, line), new Point(SAMPLE, line));
            if (pens.get(i) == Pen.FINE) {
                paper.line(Pen.FINE, new Point(0, line + 0.7), new Point(SAMPLE, line + 0.7));
            }
            paper.words(said.get(i), new Point(SAMPLE + 2, y), Mark.Anchor.BEGINNING);
            y += 5;
        }
        y -= 2;
    }

    private double left() {
        return (OnPaper.WIDTH - scale.mm(bay)) / 2;
    }

    /** An even load's curve, as deep in the middle as is said. */
    private List<Point> curve(double top, double sag) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= POINTS; i++) {
            double at = i / (double) POINTS;
            double part = 3.2 * at * (1 - 2 * at * at + at * at * at);
            points.add(new Point(left() + at * scale.mm(bay), top + sag * part));
        }
        return points;
    }

    private void support(double x, double top) {
        paper.line(
                Pen.EDGE,
                new Point(x, top),
                new Point(x - 1.6, top + 2.8),
                new Point(x + 1.6, top + 2.8),
                new Point(x, top));
    }
}
