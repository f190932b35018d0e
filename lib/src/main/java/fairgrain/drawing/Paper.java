package fairgrain.drawing;

import fairgrain.drawing.Mark.Anchor;
import java.util.ArrayList;
import java.util.List;

/** What a drawing is put together on: lines, areas, words and dimension lines, in millimetres of paper. */
public final class Paper {
    /** Height of dimension figures and of words [mm]. */
    public static final double LETTERS = 3.2;

    private static final double SMALLEST = 3; // mm, 8.5 points: letters that can still be read at arm's length

    private static final double TICK = 1.1; // mm: the slanting stroke at each end of a dimension line
    private static final double BEYOND = 1.2; // mm: how far it runs past
    private static final double WIDE = 0.56; // width of a letter in parts of its height, on average

    private final List<Mark> marks = new ArrayList<>();

    /** How wide words come out, about [mm]. */
    public static double width(String words) {
        return words.length() * WIDE * LETTERS;
    }

    public Paper line(Pen pen, Point... points) {
        marks.add(new Mark.Stroke(List.of(points), pen));
        return this;
    }

    public Paper line(Pen pen, List<Point> points) {
        marks.add(new Mark.Stroke(points, pen));
        return this;
    }

    public Paper area(Mark.Shade shade, Point... outline) {
        marks.add(new Mark.Area(List.of(outline), shade));
        return this;
    }

    /** An upright rectangle between two opposite corners. */
    public Paper box(Mark.Shade shade, Point one, Point other) {
        return area(shade, one, new Point(other.x(), one.y()), other, new Point(one.x(), other.y()));
    }

    public Paper words(String text, Point at, Anchor anchor) {
        marks.add(new Mark.Words(text, at, anchor, LETTERS));
        return this;
    }

    /**
     * A dimension line below (or above) two points, with its figure on it.
     *
     * @param y where the line runs [mm]
     */
    public Paper across(double x1, double x2, double y, String figure) {
        line(Pen.FINE, new Point(x1 - BEYOND, y), new Point(x2 + BEYOND, y));
        tick(x1, y);
        tick(x2, y);
        boolean inside = width(figure) < x2 - x1 - 2;
        return inside
                ? words(figure, new Point((x1 + x2) / 2, y - 0.8), Anchor.MIDDLE)
                : words(figure, new Point(x2 + BEYOND + 1, y + LETTERS / 3), Anchor.BEGINNING);
    }

    /** A dimension line between two heights, its figure beside it. */
    public Paper up(double x, double y1, double y2, String figure) {
        line(Pen.FINE, new Point(x, y1 - BEYOND), new Point(x, y2 + BEYOND));
        tick(x, y1);
        tick(x, y2);
        return words(figure, new Point(x + 1.2, (y1 + y2) / 2 + LETTERS / 3), Anchor.BEGINNING);
    }

    /** A thin line from an edge to its dimension line. */
    public Paper helper(double x, double from, double to) {
        return line(Pen.FINE, new Point(x, from), new Point(x, to));
    }

    private void tick(double x, double y) {
        line(Pen.EDGE, new Point(x - TICK / 2, y + TICK / 2), new Point(x + TICK / 2, y - TICK / 2));
    }

    public Drawing drawing(String name, String alt, double width, double height) {
        return new Drawing(
                name,
                alt,
                width,
                height,
                marks.stream().map(mark -> inside(mark, width)).toList());
    }

    /** Words too long for the paper are set smaller, and the longest cut short; the words for the blind keep all of them. */
    private static Mark inside(Mark mark, double width) {
        if (!(mark instanceof Mark.Words words)) {
            return mark;
        }
        double x = words.at().x();
        double room = switch (words.anchor()) {
            case BEGINNING -> width - x;
            case MIDDLE -> 2 * Math.min(x, width - x);
            case END -> x;
        };
        double letters = words.text().length();
        double height = Math.min(words.height(), Math.max(SMALLEST, room / (letters * WIDE)));
        int most = (int) Math.max(1, room / (height * WIDE));
        String text = letters <= most + 1e-9 ? words.text() : words.text().substring(0, most - 1) + "\u2026";
        return new Mark.Words(text, words.at(), words.anchor(), height);
    }
}
