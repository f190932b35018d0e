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
    private static final double REACH = 90; // mm of each stick that fits
    private static final double STRIP = 7;

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
        double below = y + STRIP;
        for (StoryStick.Mark mark : near) {
            double x = FROM + OnPaper.FULL_SIZE.mm(mark.at());
            String says = mark.what() + " " + rule.text(mark.at());
            below += 4.5;
            paper.line(Pen.EDGE, new Point(x, y), new Point(x, y + STRIP));
            boolean room = x + 2 + Paper.width(says) < OnPaper.WIDTH;
            paper.line(Pen.FINE, new Point(x, y + STRIP), new Point(x, below));
            paper.words(says, new Point(room ? x + 1 : x - 1, below), room ? Mark.Anchor.BEGINNING : Mark.Anchor.END);
            words.add(says);
        }
        said.add(stick.said() + ": " + String.join(", ", words));
        y = below + 8;
    }
}
