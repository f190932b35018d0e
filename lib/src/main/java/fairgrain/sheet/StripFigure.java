package fairgrain.sheet;

import fairgrain.drawing.Drawing;
import fairgrain.drawing.Mark;
import fairgrain.drawing.Paper;
import fairgrain.drawing.Pen;
import fairgrain.drawing.Point;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** The named ends of the story sticks at true size, with a length to check the printer by. */
final class StripFigure {
    private static final double FROM = 2;
    private static final double REACH = 86; // mm of each stick that fits
    private static final double STRIP = 7;
    private static final double LINE = 4.5;

    private final ShopRule rule;
    private final Paper paper = new Paper();
    private final List<String> said = new ArrayList<>();
    private double y = 6;

    private StripFigure(ShopRule rule) {
        this.rule = rule;
    }

    static Block.Figure of(List<StoryStick> sticks, ShopRule rule) {
        StripFigure figure = new StripFigure(rule);
        Length check = rule.system() == UnitSystem.INCHES ? Length.inches(3) : Length.mm(80);
        figure.check(check);
        sticks.forEach(figure::stick);
        Drawing drawing = figure.paper.drawing(
                "the named ends of the story sticks, true size",
                "For print only: strips at true size. The length to check is " + rule.text(check) + ". "
                        + String.join(". ", figure.said) + ".",
                OnPaper.WIDTH,
                figure.y);
        return new Block.Figure(
                drawing,
                "True size on paper if the printer leaves it alone: print at 100 %, then measure the length above. If"
                        + " it is not " + rule.text(check) + ", do not mark from these strips.");
    }

    private void check(Length length) {
        paper.across(FROM, FROM + OnPaper.FULL_SIZE.mm(length), y, "must measure " + rule.text(length));
        y += 9;
    }

    /** What it is and where; only where, if there is no room for more. */
    private void label(String what, String at, double x, double foot) {
        boolean fits = x + 1 + Paper.width(what + " " + at) <= OnPaper.WIDTH;
        boolean right = x + 1 + Paper.width(at) <= OnPaper.WIDTH;
        paper.words(
                fits ? what + " " + at : at,
                new Point(right ? x + 1 : x - 1, foot),
                right ? Mark.Anchor.BEGINNING : Mark.Anchor.END);
    }

    /** One strip with the marks that lie on it. */
    private void stick(StoryStick stick) {
        List<StoryStick.Mark> near = stick.marks().stream()
                .filter(mark -> OnPaper.FULL_SIZE.mm(mark.at()) <= REACH)
                .toList();
        if (near.isEmpty()) {
            return;
        }
        paper.words(stick.said(), new Point(FROM, y), Mark.Anchor.BEGINNING);
        y += 1.5;
        paper.line(
                Pen.EDGE,
                new Point(FROM + REACH + 2, y),
                new Point(FROM, y),
                new Point(FROM, y + STRIP),
                new Point(FROM + REACH + 2, y + STRIP));
        List<String> words = new ArrayList<>();
        double below = y + STRIP + LINE * near.size();
        for (int i = 0; i < near.size(); i++) {
            StoryStick.Mark mark = near.get(i);
            double x = FROM + OnPaper.FULL_SIZE.mm(mark.at());
            double foot = below - LINE * i; // the first mark's words lowest: no line of another runs through them
            paper.line(Pen.EDGE, new Point(x, y), new Point(x, y + STRIP));
            paper.line(Pen.FINE, new Point(x, y + STRIP), new Point(x, foot));
            label(mark.what(), rule.text(mark.at()), x, foot);
            words.add(mark.what() + " " + rule.text(mark.at()));
        }
        said.add(stick.said() + ": " + String.join(", ", words));
        y = below + 8;
    }
}
